package ridgeproof.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.time.Duration;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageCodec.StatedSize;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.codec.ImageCodecs;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.record.ByteSource;

class CodecFuzz {

  private static final StatedSize STATED = new StatedSize(48, 60, 8);
  private static final DecodingLimits LIMITS = new DecodingLimits(10_000, Duration.ofSeconds(20));

  @FuzzTest(maxDuration = "24h")
  void anImageIsDecodedOrItsDamageIsTold(byte[] codestream) {
    ByteSource source = ByteSource.of(codestream);
    check(ImageCodecs.standard().decode(source, ImageHeaders.read(source), STATED, LIMITS));
  }

  @FuzzTest(maxDuration = "24h")
  void codedLinesOfWhichTheRecordTellsTheSize(byte[] codestream) {
    check(ImageCodecs.standard().decodeGroup4(ByteSource.of(codestream), STATED, LIMITS));
  }

  @FuzzTest(maxDuration = "24h")
  void pointsOfAPen(byte[] points) {
    check(ImageCodecs.standard().decodePenVectors(ByteSource.of(points), STATED, LIMITS));
  }

  private static void check(Decoding decoding) {
    if (decoding.image().isEmpty() && decoding.defects().isEmpty()) {
      throw new AssertionError("neither an image nor a defect");
    }
    for (ImageDefect defect : decoding.defects()) {
      if (defect.detail().contains(" ms")) {
        throw new AssertionError("hangs: " + defect.detail());
      }
    }
  }
}
