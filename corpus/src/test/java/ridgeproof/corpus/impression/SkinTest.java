package ridgeproof.corpus.impression;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.corpus.finger.Skin;
import ridgeproof.corpus.paper.Paper;
import ridgeproof.spec.layout.FingerPosition;

class SkinTest {

  private static final MasterFinger SMOOTH = MasterFinger.grow(42, FingerPosition.RIGHT_INDEX);

  private static double mean(int age, ToDoubleFunction<Skin> trait) {
    return IntStream.range(0, 300)
        .mapToObj(person -> Skin.ofAge(age, new SeededRandom(person, 1)))
        .mapToDouble(trait)
        .average()
        .orElseThrow();
  }

  private static double meanGray(Impression impression) {
    byte[] gray = impression.image().toArray();
    long sum = 0;
    for (byte pixel : gray) {
      sum += pixel & 0xFF;
    }
    return (double) sum / gray.length;
  }

  private static byte[] pixels(MasterFinger finger, ImpressionSettings settings) {
    return Impression.rolled(finger, settings).image().toArray();
  }

  @Test
  void smoothSkinOnABarePlatenIsWhatItWasBefore() {
    ImpressionSettings settings = ImpressionSettings.natural(9);
    assertArrayEquals(
        pixels(SMOOTH, settings),
        pixels(
            MasterFinger.grow(42, FingerPosition.RIGHT_INDEX, Skin.smooth()),
            settings.withTraces(Traces.none()).withPaper(Paper.none())));
  }

  @Test
  void theOldHaveMoreCreasesAndMoreWearThanTheYoung() {
    assertTrue(mean(75, Skin::creases) > 2 * mean(25, Skin::creases));
    assertTrue(mean(75, Skin::wear) > 3 * mean(25, Skin::wear));
  }

  @Test
  void creasesWearAndScarsTakeInkAway() {
    double before = meanGray(Impression.rolled(SMOOTH, ImpressionSettings.natural(9)));
    for (Skin skin :
        new Skin[] {new Skin(40, 0, 0, 0.34), new Skin(0, 1, 0, 0.34), new Skin(0, 0, 4, 0.34)}) {
      MasterFinger aged = MasterFinger.grow(42, FingerPosition.RIGHT_INDEX, skin);
      double after = meanGray(Impression.rolled(aged, ImpressionSettings.natural(9)));
      assertTrue(after > before + 0.1, skin + ": " + before + " to " + after);
    }
  }

  @Test
  void skinBelowTheCreaseShowsOnARoll() {
    MasterFinger whole = MasterFinger.grow(42, FingerPosition.RIGHT_INDEX, new Skin(0, 0, 0, 1.2));
    double before =
        Impression.rolled(SMOOTH, ImpressionSettings.natural(9)).truth().mask().areaPx();
    double after = Impression.rolled(whole, ImpressionSettings.natural(9)).truth().mask().areaPx();
    assertTrue(after > 1.05 * before, before + " to " + after);
  }

  @Test
  void eachTraceChangesThePrint() {
    ImpressionSettings settings = ImpressionSettings.natural(9);
    byte[] bare = pixels(SMOOTH, settings);
    for (Traces traces :
        new Traces[] {
          new Traces(0.5, 0, 0, 0), new Traces(0, 0.5, 0, 0), new Traces(0, 0, 0.5, 0)
        }) {
      byte[] marked = pixels(SMOOTH, settings.withTraces(traces));
      long changed = IntStream.range(0, bare.length).filter(i -> bare[i] != marked[i]).count();
      assertTrue(changed > 0.01 * bare.length, traces + ": " + changed);
    }
  }

  @Test
  void aLightPlainPrintIsNarrower() {
    ImpressionSettings settings = ImpressionSettings.natural(9);
    var usual = Impression.plain(SMOOTH, settings).boxes().get(0);
    var light =
        Impression.plain(SMOOTH, settings.withTraces(new Traces(0, 0, 0, 1))).boxes().get(0);
    assertTrue(light.right() - light.left() < 0.8 * (usual.right() - usual.left()));
  }

  @Test
  void valuesOutOfRangeAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Skin(61, 0, 0, 0.34));
    assertThrows(IllegalArgumentException.class, () -> new Skin(0, 0, 0, 0.2));
    assertThrows(IllegalArgumentException.class, () -> new Traces(1.1, 0, 0, 0));
  }
}
