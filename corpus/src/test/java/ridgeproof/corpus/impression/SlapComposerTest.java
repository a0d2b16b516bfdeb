package ridgeproof.corpus.impression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ridgeproof.corpus.finger.Digit;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.PixelProbe;
import ridgeproof.imagery.GrayImage;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.spec.layout.FingerPosition.Hand;

class SlapComposerTest {

  private static final ImpressionSettings UPRIGHT =
      ImpressionSettings.natural(3).withRotation(0).withShift(0, 0);

  private static List<MasterFinger> fingers(Hand hand) {
    return hand.slapOrder().stream().map(digit -> MasterFinger.grow(12, digit)).toList();
  }

  @ParameterizedTest
  @EnumSource(Hand.class)
  void theFourFingersLieSideBySideInTheOrderOfTheHand(Hand hand) {
    Impression slap = SlapComposer.fourFingers(fingers(hand), hand, UPRIGHT);
    assertEquals(1600, slap.image().width());
    assertEquals(1500, slap.image().height());
    assertEquals(hand.slapOrder(), slap.boxes().stream().map(FingerBox::digit).toList());
    for (int i = 1; i < 4; i++) {
      assertTrue(slap.boxes().get(i - 1).right() < slap.boxes().get(i).left());
    }
  }

  @ParameterizedTest
  @EnumSource(Hand.class)
  void theMiddleFingerReachesHighestAndTheLittleOneLowest(Hand hand) {
    Impression slap = SlapComposer.fourFingers(fingers(hand), hand, UPRIGHT);
    int little = top(slap, Digit.LITTLE);
    int middle = top(slap, Digit.MIDDLE);
    for (FingerBox box : slap.boxes()) {
      assertTrue(box.top() >= middle && box.top() <= little, box.toString());
    }
  }

  private static int top(Impression slap, Digit kind) {
    return slap.boxes().stream()
        .filter(box -> Digit.of(box.digit()) == kind)
        .mapToInt(FingerBox::top)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void boxesFitThePrintsTightly() {
    Impression slap = SlapComposer.fourFingers(fingers(Hand.RIGHT), Hand.RIGHT, UPRIGHT);
    for (FingerBox box : slap.boxes()) {
      GrayImage print =
          PixelProbe.crop(slap.image(), box.left(), box.top(), box.right(), box.bottom());
      assertTrue(darkIn(print, 0.0, 0.04) > 0, "left edge of " + box);
      assertTrue(darkIn(print, 0.96, 1.0) > 0, "right edge of " + box);
      GrayImage beside =
          PixelProbe.crop(
              slap.image(), Math.max(0, box.left() - 14), box.top(), box.left() - 10, box.bottom());
      assertTrue(darkIn(beside, 0, 1) < 0.03 * beside.width() * beside.height());
    }
  }

  private static int darkIn(GrayImage image, double from, double to) {
    int dark = 0;
    for (int x = (int) (from * image.width()); x < (int) (to * image.width()); x++) {
      for (int y = 0; y < image.height(); y++) {
        dark += image.grayAt(x, y) < 150 ? 1 : 0;
      }
    }
    return dark;
  }

  @Test
  void aMissingFingerLeavesItsPlaceEmpty() {
    List<MasterFinger> all = fingers(Hand.RIGHT);
    List<MasterFinger> three = List.of(all.get(0), all.get(1), all.get(3));
    Impression whole = SlapComposer.fourFingers(all, Hand.RIGHT, UPRIGHT);
    Impression slap = SlapComposer.fourFingers(three, Hand.RIGHT, UPRIGHT);
    assertEquals(3, slap.boxes().size());
    assertEquals(whole.boxes().get(3), slap.boxes().get(2));
    FingerBox gone = whole.boxes().get(2);
    assertTrue(
        PixelProbe.mean(
                PixelProbe.crop(slap.image(), gone.left(), gone.top(), gone.right(), gone.bottom()))
            > 215);
  }

  @Test
  void theHandMayBeTurned() {
    Impression slap =
        SlapComposer.fourFingers(fingers(Hand.LEFT), Hand.LEFT, UPRIGHT.withRotation(40));
    for (FingerBox box : slap.boxes()) {
      assertEquals(40, box.rotationDegrees(), 10);
    }
  }

  @Test
  void aFingerOfTheOtherHandIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> SlapComposer.fourFingers(fingers(Hand.LEFT), Hand.RIGHT, UPRIGHT));
    assertThrows(
        IllegalArgumentException.class,
        () -> SlapComposer.fourFingers(List.of(), Hand.RIGHT, UPRIGHT));
  }

  @Test
  void twoThumbsLieSideBySide() {
    MasterFinger left = MasterFinger.grow(12, FingerPosition.LEFT_THUMB);
    MasterFinger right = MasterFinger.grow(12, FingerPosition.RIGHT_THUMB);
    Impression thumbs = TwoThumbs.of(left, right, UPRIGHT);
    assertEquals(2, thumbs.boxes().size());
    assertTrue(thumbs.boxes().get(0).right() < thumbs.boxes().get(1).left());
    assertTrue(thumbs.truth().minutiae().size() > 50);
    assertThrows(IllegalArgumentException.class, () -> TwoThumbs.of(right, left, UPRIGHT));
  }

  @Test
  void aSlapIsTheSameOnEveryMachine() {
    assertEquals(
        "eba73aab634c518e",
        PixelProbe.digest(
            SlapComposer.fourFingers(fingers(Hand.RIGHT), Hand.RIGHT, UPRIGHT).image()));
  }
}
