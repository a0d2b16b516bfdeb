package ridgeproof.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.record.ByteSource;

class HeaderFuzz {

  private static final int MAX_DEFECTS = 1_000;

  @FuzzTest(maxDuration = "24h")
  void aHeaderIsReadOrItsDamageIsTold(byte[] codestream) {
    ImageHeader header = ImageHeaders.read(ByteSource.of(codestream));
    if (header.width() < 0 || header.height() < 0 || header.extent().end() > codestream.length) {
      throw new AssertionError(header.format() + " " + header.extent());
    }
    if (header.defects().size() > MAX_DEFECTS) {
      throw new AssertionError(header.defects().size() + " defects of " + header.format());
    }
  }
}
