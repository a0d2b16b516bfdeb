package ridgeproof.corpus.finger;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.machinezoo.sourceafis.FingerprintImage;
import com.machinezoo.sourceafis.FingerprintImageOptions;
import com.machinezoo.sourceafis.FingerprintMatcher;
import com.machinezoo.sourceafis.FingerprintTemplate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.corpus.impression.FingerBox;
import ridgeproof.corpus.impression.Impression;
import ridgeproof.corpus.impression.ImpressionSettings;
import ridgeproof.corpus.impression.SlapComposer;
import ridgeproof.imagery.GrayImage;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.spec.layout.FingerPosition.Hand;

/** An independent matcher calls a score of 40 or more the same finger. */
class MatchingTest {

  private static final double SAME_FINGER = 40;

  @Test
  void theSameFingerMatchesRolledAndInASlapAndDifferentFingersDoNot() {
    List<FingerprintTemplate> rolled = new ArrayList<>();
    List<FingerprintTemplate> slapped = new ArrayList<>();
    for (Hand hand : Hand.values()) {
      long person = 31 + hand.ordinal();
      List<MasterFinger> fingers =
          hand.slapOrder().stream().map(digit -> MasterFinger.grow(person, digit)).toList();
      Impression slap = SlapComposer.fourFingers(fingers, hand, ImpressionSettings.natural(person));
      for (int i = 0; i < 4; i++) {
        FingerBox box = slap.boxes().get(i);
        slapped.add(
            template(
                PixelProbe.crop(slap.image(), box.left(), box.top(), box.right(), box.bottom()),
                500));
        ImpressionSettings settings = ImpressionSettings.natural(person * 100 + i);
        rolled.add(template(Impression.rolled(fingers.get(i), settings).image(), 500));
      }
    }
    for (int i = 0; i < rolled.size(); i++) {
      FingerprintMatcher matcher = new FingerprintMatcher(rolled.get(i));
      for (int j = 0; j < slapped.size(); j++) {
        double score = matcher.match(slapped.get(j));
        assertTrue(
            (score >= SAME_FINGER) == (i == j), "finger " + i + " against " + j + ": " + score);
      }
    }
  }

  @Test
  void theSameFingerMatchesAcrossResolutions() {
    MasterFinger finger = MasterFinger.grow(8, FingerPosition.LEFT_INDEX);
    ImpressionSettings settings = ImpressionSettings.natural(1);
    FingerprintTemplate fine =
        template(Impression.plain(finger, settings.withPpi(1000)).image(), 1000);
    FingerprintTemplate coarse =
        template(Impression.plain(finger, settings.withSeed(2)).image(), 500);
    assertTrue(new FingerprintMatcher(fine).match(coarse) >= SAME_FINGER);
  }

  @Test
  void aPrintLabelledWithTheWrongResolutionDoesNotMatch() {
    MasterFinger finger = MasterFinger.grow(8, FingerPosition.LEFT_INDEX);
    ImpressionSettings settings = ImpressionSettings.natural(1);
    FingerprintTemplate wrong =
        template(
            Impression.plain(finger, settings.withDefect(CaptureDefect.WRONG_RESOLUTION, 1))
                .image(),
            500);
    FingerprintTemplate right =
        template(Impression.plain(finger, settings.withSeed(2)).image(), 500);
    assertTrue(new FingerprintMatcher(wrong).match(right) < SAME_FINGER);
  }

  private static FingerprintTemplate template(GrayImage image, int ppi) {
    return new FingerprintTemplate(
        new FingerprintImage(
            image.width(),
            image.height(),
            image.toArray(),
            new FingerprintImageOptions().dpi(ppi)));
  }
}
