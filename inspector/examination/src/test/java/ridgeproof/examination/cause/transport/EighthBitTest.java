package ridgeproof.examination.cause.transport;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.RuleExamples;
import ridgeproof.examination.SampleCard;

/**
 * A way that carries seven bits only is told by images that begin or look as without the eighth.
 */
class EighthBitTest {

  private static final int PIXELS = 10_000;

  /** A card of images without an eighth bit, the first of which is this. */
  private static boolean isTold(byte[] image) {
    SampleCard card = SampleCard.rolledTagged();
    for (int record = 4; record <= 16; record++) {
      card = card.with(record, draft -> RuleExamples.data(draft, new byte[100]));
    }
    return isTold(card.with(3, draft -> RuleExamples.data(draft, image)));
  }

  private static boolean isTold(SampleCard card) {
    return isTold(card.bytes(), 0xFF);
  }

  private static boolean isTold(byte[] file, int mask) {
    byte[] masked = file.clone();
    for (int i = 0; i < masked.length; i++) {
      masked[i] &= (byte) mask;
    }
    return SampleCard.examine(masked).everyFinding().stream()
        .anyMatch(finding -> finding.ruleId().equals("RP-STR-032"));
  }

  private static byte[] beginning(int... first) {
    byte[] image = new byte[200];
    for (int i = 0; i < first.length; i++) {
      image[i] = (byte) first[i];
    }
    return image;
  }

  @Test
  void eachFormatIsKnownByItsFirstBytes() {
    List<byte[]> begun =
        List.of(
            beginning(0x7F, 0x20, 0x7F),
            beginning(0x7F, 0x58, 0x7F),
            beginning(0x09, 'P', 'N', 'G'),
            beginning(0, 0, 0, 0x0C, 'j', 'P', ' ', ' ', 0x0D, 0x0A, 0x07),
            beginning(0x7F, 0x4F, 0x7F, 0x51));
    for (byte[] image : begun) {
      assertTrue(isTold(image), Arrays.toString(Arrays.copyOf(image, 12)));
    }
    assertFalse(isTold(beginning(0x7F, 0x21, 0x7F)));
    assertFalse(isTold(new byte[200]));
  }

  @Test
  void oneByteWithItsHighestBitClearsTheFile() {
    byte[] image = beginning(0x7F, 0x20, 0x7F);
    image[199] = (byte) 0x80;
    assertFalse(isTold(image));
  }

  /** Gray levels from 127 so far down and back, as often as that. */
  private static byte[] folded(int pixels, int highest, int apart, int jumps) {
    byte[] image = new byte[pixels];
    for (int i = 0; i < pixels; i++) {
      int jumped = Math.min(jumps, i / 100);
      image[i] = (byte) (jumped % 2 == 0 ? highest : highest - apart);
    }
    return image;
  }

  @Test
  void rawPixelsAreFoldedWhereMoreThanOneInTwoHundredIsFarFromTheNext() {
    assertTrue(isTold(folded(PIXELS, 0x7F, 96, 51)));
    assertFalse(isTold(folded(PIXELS, 0x7F, 96, 50)));
    assertFalse(isTold(folded(PIXELS, 0x7F, 95, 99)));
    assertFalse(isTold(folded(PIXELS - 1, 0x7F, 96, 99)));
    assertFalse(isTold(folded(PIXELS, 0x7E, 96, 99)));
  }

  @Test
  void unusedPositionsOfBinaryRecordsTellIt() {
    assertTrue(isTold(SampleCard.rolled().bytes(), 0x7F));
    assertFalse(isTold(SampleCard.rolled().bytes(), 0xFF));
  }
}
