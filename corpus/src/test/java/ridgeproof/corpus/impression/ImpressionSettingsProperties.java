package ridgeproof.corpus.impression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class ImpressionSettingsProperties {

  @Property
  void everySeedGivesNaturalSettings(@ForAll long seed) {
    ImpressionSettings settings = ImpressionSettings.natural(seed);
    assertEquals(settings, ImpressionSettings.natural(seed));
    assertTrue(Math.abs(settings.rotationDegrees()) <= 12);
    assertTrue(settings.defects().isEmpty());
  }

  @Property
  void aStrengthOutsideZeroToOneIsRefused(
      @ForAll CaptureDefect defect, @ForAll @DoubleRange(min = 1.01, max = 1e9) double strength) {
    ImpressionSettings settings = ImpressionSettings.natural(1);
    assertThrows(IllegalArgumentException.class, () -> settings.withDefect(defect, strength));
    assertThrows(IllegalArgumentException.class, () -> settings.withDefect(defect, -strength));
    assertThrows(IllegalArgumentException.class, () -> settings.withDefect(defect, Double.NaN));
  }

  @Property
  void witherKeepsWhatItDoesNotName(
      @ForAll long seed, @ForAll @DoubleRange(min = -45, max = 45) double degrees) {
    ImpressionSettings settings = ImpressionSettings.natural(seed);
    ImpressionSettings turned = settings.withRotation(degrees);
    assertEquals(degrees, turned.rotationDegrees());
    assertEquals(settings, turned.withRotation(settings.rotationDegrees()));
  }
}
