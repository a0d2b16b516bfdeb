package ridgeproof.imagery.wsq;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.TestImages.Content;
import ridgeproof.imagery.wsq.codestream.CodestreamDefect;
import ridgeproof.imagery.wsq.codestream.WsqFrame;
import ridgeproof.imagery.wsq.codestream.WsqLimits;
import ridgeproof.transaction.record.ByteSource;

class WsqDamageTest {

  private static final long ENOUGH_NANOS = 60_000_000_000L;

  @Test
  void everyTruncationEndsInADefect() {
    byte[] whole = encoded(60, 50, 2.25);
    long lastRecovered = 0;
    for (int length = 0; length < whole.length; length++) {
      WsqDecoding decoding = decode(Arrays.copyOf(whole, length));
      assertFalse(decoding.defects().isEmpty(), "cut to " + length + " bytes");
      if (decoding.recoveredCoefficients() > 0) {
        assertTrue(decoding.image().isPresent(), "cut to " + length + " bytes");
      }
      lastRecovered = decoding.recoveredCoefficients();
    }
    assertTrue(lastRecovered > 0);
  }

  @Test
  void twentyThousandFlippedBitsEndInAResultOrADefect() {
    byte[] whole = encoded(64, 48, 2.25);
    Random random = new Random(20);
    int complete = 0;
    for (int flip = 0; flip < 20_000; flip++) {
      byte[] damaged = whole.clone();
      int bit = random.nextInt(8 * whole.length);
      damaged[bit / 8] ^= (byte) (1 << (bit % 8));
      complete += check(decode(damaged)) ? 1 : 0;
    }
    assertTrue(complete > 1000 && complete < 19_000, complete + " of 20000 complete");
  }

  @Test
  void manyFlippedBitsAtOnceEndInAResultOrADefect() {
    byte[] whole = encoded(64, 48, 0.75);
    Random random = new Random(21);
    for (int attempt = 0; attempt < 5000; attempt++) {
      byte[] damaged = whole.clone();
      for (int flips = 1 + random.nextInt(40); flips > 0; flips--) {
        damaged[2 + random.nextInt(whole.length - 2)] = (byte) random.nextInt(256);
      }
      check(decode(damaged));
    }
  }

  @Test
  void markersInARandomOrderEndInAResultOrADefect() {
    Random random = new Random(22);
    for (int attempt = 0; attempt < 3000; attempt++) {
      byte[] bytes = new byte[random.nextInt(600)];
      random.nextBytes(bytes);
      for (int i = 0; i + 3 < bytes.length; i += 1 + random.nextInt(40)) {
        bytes[i] = (byte) 0xFF;
        bytes[i + 1] = (byte) (0xA0 + random.nextInt(9));
        bytes[i + 2] = 0;
        bytes[i + 3] = (byte) random.nextInt(40);
      }
      check(decode(bytes));
    }
  }

  @Test
  void damagedReferenceImagesEndInAResultOrADefect() {
    ByteSource source = ReferenceCodestreams.all().get(0).source();
    Random random = new Random(23);
    for (int attempt = 0; attempt < 300; attempt++) {
      byte[] damaged = source.toArray();
      int bit = random.nextInt(8 * damaged.length);
      damaged[bit / 8] ^= (byte) (1 << (bit % 8));
      check(decode(damaged));
    }
  }

  private static boolean check(WsqDecoding decoding) {
    assertTrue(
        decoding.image().isPresent() || !decoding.defects().isEmpty(),
        "neither an image nor a defect");
    assertTrue(decoding.recoveredCoefficients() <= decoding.codedCoefficients());
    if (decoding.image().isPresent()) {
      WsqFrame frame = decoding.codestream().frame().orElseThrow();
      assertEquals(frame.width(), decoding.image().get().width());
    }
    assertTrue(
        decoding.defects().stream().noneMatch(d -> d.kind() == CodestreamDefect.Kind.TIME_LIMIT));
    return decoding.isComplete();
  }

  private static WsqDecoding decode(byte[] bytes) {
    return WsqDecoder.decode(
        ByteSource.of(bytes),
        WsqLimits.standard().withMaxPixels(200_000).withTimeLimit(ENOUGH_NANOS));
  }

  private static byte[] encoded(int width, int height, double rate) {
    GrayImage image = TestImages.of(Content.RIDGES, width, height, 9);
    return WsqEncoder.encode(image, new WsqEncoding(rate, 500, 0));
  }
}
