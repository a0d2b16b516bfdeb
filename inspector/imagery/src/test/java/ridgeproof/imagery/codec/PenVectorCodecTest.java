package ridgeproof.imagery.codec;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageCodec.StatedSize;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.transaction.record.ByteSource;

class PenVectorCodecTest {

  private static final StatedSize NOTHING_STATED = new StatedSize(0, 0, 1);

  @Test
  void theStrokeIsDrawnUpwardsFromTheLowerLeft() {
    GrayImage image = decode(points(0, 0, 0, 2000, 1000, 200)).image().orElseThrow();
    assertEquals(1021, image.width());
    assertEquals(521, image.height());
    assertTrue(image.grayAt(10, 510) < 128, "starts at the lower left");
    assertTrue(image.grayAt(1010, 10) < 128, "ends at the upper right");
    assertTrue(image.grayAt(10, 10) > 200, "the upper left is bare");
  }

  @Test
  void aLiftedPenDrawsNothing() {
    GrayImage image = decode(points(0, 0, 0, 1000, 0, 0, 1000, 1000, 90)).image().orElseThrow();
    assertTrue(image.grayAt(500, 1010) > 200, "lifted along the bottom");
    assertTrue(image.grayAt(1010, 500) < 128, "written along the right");
  }

  @Test
  void partOfAPointIsDamage() {
    Decoding decoding = decode(new byte[7]);
    assertTrue(decoding.image().isEmpty());
    assertEquals(ImageDefect.Kind.DAMAGE, decoding.defects().get(0).kind());
    assertEquals(1, decode(new byte[0]).defects().size());
  }

  @Test
  void anyPointsAreDrawn() {
    Random random = new Random(8);
    for (int points = 1; points < 200; points++) {
      byte[] bytes = new byte[points * 5];
      random.nextBytes(bytes);
      assertTrue(decode(bytes).image().isPresent());
    }
  }

  private static Decoding decode(byte[] bytes) {
    return new PenVectorCodec()
        .decode(ByteSource.of(bytes), NOTHING_STATED, DecodingLimits.standard());
  }

  private static byte[] points(int... numbers) {
    ByteBuffer bytes = ByteBuffer.allocate(numbers.length / 3 * 5);
    for (int i = 0; i < numbers.length; i += 3) {
      bytes
          .putShort((short) numbers[i])
          .putShort((short) numbers[i + 1])
          .put((byte) numbers[i + 2]);
    }
    return bytes.array();
  }
}
