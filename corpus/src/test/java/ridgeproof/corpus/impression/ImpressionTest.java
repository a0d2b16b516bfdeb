package ridgeproof.corpus.impression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.PixelProbe;
import ridgeproof.corpus.finger.Skeleton;
import ridgeproof.corpus.finger.TrueMinutia;
import ridgeproof.corpus.finger.TrueSingularPoint;
import ridgeproof.spec.layout.FingerPosition;

class ImpressionTest {

  private static final MasterFinger INDEX = MasterFinger.grow(42, FingerPosition.RIGHT_INDEX);

  @Test
  void theSameSeedGivesTheSamePixelsOnEveryMachine() {
    ImpressionSettings settings = ImpressionSettings.natural(9);
    assertEquals("f0e446d74215e835", PixelProbe.digest(Impression.rolled(INDEX, settings).image()));
    assertEquals("d69dbca02de1db1d", PixelProbe.digest(Impression.plain(INDEX, settings).image()));
  }

  @Test
  void threadsMakeNoDifference() {
    String alone =
        PixelProbe.digest(Impression.rolled(INDEX, ImpressionSettings.natural(3)).image());
    IntStream.range(0, 8)
        .parallel()
        .forEach(
            i -> {
              MasterFinger again = MasterFinger.grow(42, FingerPosition.RIGHT_INDEX);
              assertEquals(
                  alone,
                  PixelProbe.digest(
                      Impression.rolled(again, ImpressionSettings.natural(3)).image()));
            });
  }

  @Test
  void noTwoImpressionsOfOneFingerAreEqual() {
    assertNotEquals(
        PixelProbe.digest(Impression.rolled(INDEX, ImpressionSettings.natural(1)).image()),
        PixelProbe.digest(Impression.rolled(INDEX, ImpressionSettings.natural(2)).image()));
  }

  @Test
  void aRolledPrintIsWiderThanAPlainOne() {
    Impression rolled = Impression.rolled(INDEX, ImpressionSettings.natural(1));
    Impression plain = Impression.plain(INDEX, ImpressionSettings.natural(1));
    FingerBox wide = rolled.boxes().get(0);
    FingerBox narrow = plain.boxes().get(0);
    assertTrue(wide.right() - wide.left() > 1.35 * (narrow.right() - narrow.left()));
    assertTrue(rolled.truth().mask().areaPx() > 1.4 * plain.truth().mask().areaPx());
  }

  @Test
  void framesHaveTheUsualSizes() {
    ImpressionSettings settings = ImpressionSettings.natural(1);
    Impression rolled = Impression.rolled(INDEX, settings);
    assertEquals(800, rolled.image().width());
    assertEquals(750, rolled.image().height());
    Impression thumb = Impression.plain(MasterFinger.grow(1, FingerPosition.LEFT_THUMB), settings);
    assertEquals(500, thumb.image().width());
    assertEquals(1000, thumb.image().height());
    Impression other = Impression.plain(INDEX, settings.withFrame(new FrameSize(320, 400)));
    assertEquals(320, other.image().width());
    assertEquals(400, other.image().height());
  }

  @Test
  void a1000PpiImageShowsTheSamePrintAtTwiceTheSize() {
    ImpressionSettings settings = ImpressionSettings.natural(4);
    Impression coarse = Impression.rolled(INDEX, settings);
    Impression fine = Impression.rolled(INDEX, settings.withPpi(1000));
    assertEquals(1600, fine.image().width());
    assertEquals(1500, fine.image().height());
    assertEquals(1000, fine.ppi());
    double coarsePeriod = PixelProbe.ridgePeriod(coarse.image(), coarse.truth().mask());
    double finePeriod = PixelProbe.ridgePeriod(fine.image(), fine.truth().mask());
    assertEquals(2, finePeriod / coarsePeriod, 0.25);
    for (TrueSingularPoint point : coarse.truth().singularPoints()) {
      assertTrue(
          fine.truth().singularPoints().stream()
              .anyMatch(
                  p -> Math.abs(p.x() - 2 * point.x()) < 1 && Math.abs(p.y() - 2 * point.y()) < 1));
    }
  }

  @Test
  void minutiaeAreAsManyAsOnRealPrints() {
    int[] rolled = new int[40];
    int[] plain = new int[40];
    for (int i = 0; i < 40; i++) {
      MasterFinger finger = MasterFinger.grow(i / 10, FingerPosition.values()[i % 10]);
      ImpressionSettings settings = ImpressionSettings.natural(i);
      rolled[i] = Impression.rolled(finger, settings).truth().minutiae().size();
      plain[i] = Impression.plain(finger, settings).truth().minutiae().size();
    }
    Arrays.sort(rolled);
    Arrays.sort(plain);
    // 75 to 175 on a roll: Lee and Gaensslen, Advances in Fingerprint Technology (from memory).
    assertTrue(rolled[4] >= 75 && rolled[35] <= 175, Arrays.toString(rolled));
    assertTrue(rolled[20] >= 100 && rolled[20] <= 160, Arrays.toString(rolled));
    assertTrue(plain[4] >= 40 && plain[35] <= 130, Arrays.toString(plain));
    // 20 to 70 are published of what is seen; the skin has half as many again.
    assertTrue(plain[20] >= 60 && plain[20] <= 100, Arrays.toString(plain));
  }

  @Test
  void groundTruthLiesInsideTheMaskAndTheImage() {
    for (int seed = 0; seed < 5; seed++) {
      Impression print = Impression.rolled(INDEX, ImpressionSettings.natural(seed));
      assertTrue(print.truth().minutiae().size() > 30);
      for (TrueMinutia minutia : print.truth().minutiae()) {
        assertTrue(print.truth().mask().contains(minutia.x(), minutia.y()));
        assertTrue(minutia.x() < print.image().width() && minutia.y() < print.image().height());
      }
    }
  }

  @Test
  void thinningFindsTheMinutiaeWhereTheGroundTruthSaysTheyAre() {
    int found = 0;
    int foundAsOther = 0;
    int all = 0;
    for (int seed = 0; seed < 6; seed++) {
      MasterFinger finger = MasterFinger.grow(seed, FingerPosition.LEFT_MIDDLE);
      Impression print =
          Impression.rolled(finger, ImpressionSettings.natural(seed).withSkin(0.5, 0.6));
      Skeleton skeleton =
          new Skeleton(
              PixelProbe.ridges(print.image()), print.image().width(), print.image().height());
      for (TrueMinutia m : print.truth().minutiae()) {
        TrueMinutia.Kind other =
            m.kind() == TrueMinutia.Kind.ENDING
                ? TrueMinutia.Kind.BIFURCATION
                : TrueMinutia.Kind.ENDING;
        all++;
        found += skeleton.shows(m.kind(), m.x(), m.y(), 8) ? 1 : 0;
        foundAsOther += skeleton.shows(other, m.x(), m.y(), 8) ? 1 : 0;
      }
    }
    assertTrue(found > 0.8 * all, found + " of " + all);
    assertTrue(foundAsOther < 0.6 * found, foundAsOther + " against " + found);
  }

  @Test
  void ridgesAreDarkOnALightPlaten() {
    Impression print = Impression.rolled(INDEX, ImpressionSettings.natural(8));
    long inside = 0;
    long insideCount = 0;
    long outside = 0;
    long outsideCount = 0;
    for (int y = 0; y < print.image().height(); y++) {
      for (int x = 0; x < print.image().width(); x++) {
        if (print.truth().mask().contains(x, y)) {
          inside += print.image().grayAt(x, y);
          insideCount++;
        } else {
          outside += print.image().grayAt(x, y);
          outsideCount++;
        }
      }
    }
    assertTrue(inside / insideCount < 190);
    assertTrue(outside / outsideCount > 215);
  }

  @Test
  void moistureAndPressureDarkenThePrint() {
    ImpressionSettings settings = ImpressionSettings.natural(5);
    double dry = PixelProbe.mean(Impression.plain(INDEX, settings.withSkin(0.2, 0.2)).image());
    double good = PixelProbe.mean(Impression.plain(INDEX, settings.withSkin(0.5, 0.5)).image());
    double wet = PixelProbe.mean(Impression.plain(INDEX, settings.withSkin(0.9, 0.9)).image());
    assertTrue(dry > good && good > wet, dry + " " + good + " " + wet);
  }

  @Test
  void theFingerBeforeLeavesAFaintGhost() {
    ImpressionSettings settings = ImpressionSettings.natural(5);
    double clean = PixelProbe.mean(Impression.plain(INDEX, settings).image());
    double after =
        PixelProbe.mean(
            Impression.plain(
                    INDEX, settings.withPrevious(MasterFinger.grow(3, FingerPosition.LEFT_INDEX)))
                .image());
    assertTrue(after < clean - 0.5 && after > clean - 10, clean + " " + after);
  }
}
