package ridgeproof.corpus.impression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.spec.layout.FingerPosition;

class PlacementProperties {

  private static final MasterFinger FINGER = MasterFinger.grow(1, FingerPosition.LEFT_MIDDLE);

  @Property(tries = 300)
  void aPlaceOnTheSkinIsFoundAgainInTheImage(
      @ForAll long seed,
      @ForAll @DoubleRange(min = -45, max = 45) double degrees,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double across,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double down) {
    ImpressionSettings settings =
        ImpressionSettings.natural(seed).withRotation(degrees).withDistortion(1);
    SeededRandom dice = new SeededRandom(seed, 1);
    CaptureParameters conditions = CaptureParameters.of(settings, dice);
    Placement.Pose pose = Placement.Pose.of(conditions, settings, FrameSize.ROLLED);
    SkinContact contact = new SkinContact(SkinContact.Manner.ROLLED, FINGER, conditions, dice);
    Placement placement =
        new Placement(pose, new Placement.Anchor(0, 0, 0), contact, conditions, dice);
    double x = across * FINGER.anatomy().widthPx();
    double y = down * FINGER.anatomy().lengthPx();
    double[] image = new double[2];
    double[] skin = new double[2];
    assertTrue(placement.toImage(x, y, image));
    placement.toSkin(image[0], image[1], skin);
    assertEquals(x, skin[0], 0.2);
    assertEquals(y, skin[1], 0.2);
  }
}
