package ridgeproof.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import ridgeproof.imagery.wsq.WsqDecoder;
import ridgeproof.imagery.wsq.WsqDecoding;
import ridgeproof.imagery.wsq.codestream.WsqLimits;
import ridgeproof.transaction.record.ByteSource;

class WsqFuzz {

  private static final long PIXELS = 4_096;

  @FuzzTest(maxDuration = "24h")
  void anImageIsDecodedWithinTheLimitOrItsDamageIsTold(byte[] codestream) {
    WsqDecoding decoding =
        WsqDecoder.decode(ByteSource.of(codestream), WsqLimits.standard().withMaxPixels(PIXELS));
    if (decoding.image().isEmpty() && decoding.defects().isEmpty()) {
      throw new AssertionError("neither an image nor a defect");
    }
    if (decoding.image().stream().anyMatch(image -> image.width() * image.height() > PIXELS)) {
      throw new AssertionError("more pixels than the limit");
    }
  }
}
