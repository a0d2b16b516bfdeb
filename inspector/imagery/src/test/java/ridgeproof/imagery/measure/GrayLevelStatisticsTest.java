package ridgeproof.imagery.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ridgeproof.imagery.GrayImage;

class GrayLevelStatisticsTest {

  private interface Painter {
    double grayAt(int x, int y);
  }

  private static GrayImage image(int width, int height, Painter painter) {
    byte[] pixels = new byte[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        pixels[y * width + x] = (byte) Math.round(painter.grayAt(x, y));
      }
    }
    return GrayImage.owning(width, height, pixels);
  }

  private static GrayImage ridges(double period, double degrees) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    return image(
        320, 320, (x, y) -> 128 + 100 * Math.sin(2 * Math.PI * (x * cos + y * sin + 0.3) / period));
  }

  @Test
  void theRidgePeriodIsMeasuredInEveryDirection() {
    for (double period : new double[] {4.5, 6, 9.2, 12, 18.4, 22}) {
      for (double degrees = 0; degrees < 180; degrees += 22.5) {
        RidgePeriod found = GrayLevelStatistics.of(ridges(period, degrees)).ridges().orElseThrow();
        assertEquals(period, found.pixels(), 0.04 * period, period + " at " + degrees);
        assertEquals(1, found.coherentShare(), 0.01);
        assertEquals(25, found.windows());
      }
    }
  }

  @Test
  void noiseHasNoRidges() {
    Random random = new Random(7);
    RidgePeriod none = new RidgePeriod(0, 0, 0, 0);
    GrayImage noise = image(640, 640, (x, y) -> random.nextInt(256));
    assertTrue(GrayLevelStatistics.of(noise).ridges().orElse(none).coherentShare() < 0.05);
  }

  @Test
  void anImageSmallerThanAWindowHasNoRidges() {
    GrayImage small = image(40, 40, (x, y) -> 128 + 100 * Math.sin(x * 0.7));
    assertEquals(Optional.empty(), GrayLevelStatistics.of(small).ridges());
  }

  @Test
  void everyPixelIsCountedOnceWhateverTheSize() {
    for (int width : new int[] {1, 15, 16, 17, 31, 33, 100}) {
      for (int height : new int[] {1, 15, 16, 17, 31, 33, 100}) {
        GrayLevelStatistics facts =
            GrayLevelStatistics.of(image(width, height, (x, y) -> (x * 7 + y * 3) % 256));
        assertEquals((long) width * height, facts.all().total());
        assertEquals(
            facts.all().total(), facts.marked().total() + facts.bare().total(), width + "x");
      }
    }
  }

  @Test
  void groundAndPrintAreToldApart() {
    GrayImage half =
        image(320, 320, (x, y) -> x < 160 ? 240 + (x + y) % 3 : 128 + 100 * Math.sin(y * 0.7));
    GrayLevelStatistics facts = GrayLevelStatistics.of(half);
    assertEquals(OptionalInt.of(241), facts.ground());
    assertEquals(0.5, facts.bareShare(), 0.01);
    assertEquals(0.5, facts.markedShare(), 0.01);
    assertEquals(28, facts.print().quantile(0), 1);
  }

  @Test
  void anImageWithoutBareGroundHasNone() {
    assertEquals(OptionalInt.empty(), GrayLevelStatistics.of(ridges(9, 30)).ground());
  }

  @Test
  void quantilesAndLevelsAreThoseOfTheGraysThatOccur() {
    GrayHistogram grays = GrayHistogram.of(image(10, 10, (x, y) -> y < 9 ? 50 : 200 + x));
    assertEquals(50, grays.quantile(0));
    assertEquals(50, grays.quantile(0.9));
    assertEquals(209, grays.quantile(1));
    assertEquals(11, grays.levels(1));
    assertEquals(1, grays.levels(2));
  }

  @Test
  void constantLinesBesideOtherPixelsArePadding() {
    GrayImage padded =
        image(200, 100, (x, y) -> y >= 90 || x >= 180 ? 0 : 200 + (x * 5 + y * 3) % 40);
    assertEquals(new EdgePadding(0, 10, 0, 20), GrayLevelStatistics.of(padded).padding());
  }

  @Test
  void aCleanGroundIsNoPadding() {
    GrayImage clean =
        image(200, 200, (x, y) -> Math.hypot(x - 100, y - 100) < 60 ? (x * 37) % 200 : 255);
    assertTrue(GrayLevelStatistics.of(clean).padding().isEmpty());
  }

  @Test
  void aConstantImageIsNotAllPadding() {
    assertTrue(GrayLevelStatistics.of(image(100, 100, (x, y) -> 255)).padding().isEmpty());
  }

  @Test
  void theDifferenceOfTwoImagesIsLargestAndMean() {
    GrayImage one = image(10, 10, (x, y) -> 100);
    GrayImage other = image(10, 10, (x, y) -> x == 0 ? 95 : 100);
    assertEquals(Optional.of(new PixelDifference(5, 0.5)), PixelDifference.between(one, other));
    assertEquals(Optional.empty(), PixelDifference.between(one, image(5, 20, (x, y) -> 100)));
  }

  @Test
  void anEmptyBandIsDarkFromEdgeToEdge() {
    GrayImage whole = ridges(9, 20);
    assertEquals(0, GrayLevelStatistics.of(whole).emptyBand().rows());
    GrayImage cut = image(320, 320, (x, y) -> y >= 100 && y < 180 ? 3 : whole.grayAt(x, y));
    assertEquals(new EmptyBand(100, 80, 3), GrayLevelStatistics.of(cut).emptyBand());
    GrayImage white = image(320, 320, (x, y) -> y >= 100 && y < 180 ? 250 : whole.grayAt(x, y));
    assertEquals(0, GrayLevelStatistics.of(white).emptyBand().rows());
  }

  @Test
  void anImageThatBeginsInItsMiddleContinuesBeyondItsEdges() {
    GrayImage wide = image(640, 320, (x, y) -> 128 + 100 * Math.sin((x * x / 900.0 + y) * 0.7));
    GrayImage wrapped = image(640, 320, (x, y) -> wide.grayAt((x + 300) % 640, y));
    assertTrue(GrayLevelStatistics.of(wrapped).wraparound().share() > 0.9);
    assertTrue(GrayLevelStatistics.of(wrapped).wraparound().vertical());
    assertTrue(GrayLevelStatistics.of(ridges(9.3, 30)).wraparound().share() < 0.6);
  }

  @Test
  void middleGrayIsMissingWhereThereAreTwoLevels() {
    assertTrue(GrayLevelStatistics.of(ridges(9, 20)).middleShare() > 0.25);
    GrayImage whole = ridges(9, 20);
    GrayImage two = image(320, 320, (x, y) -> whole.grayAt(x, y) < 128 ? 5 : 250);
    assertTrue(GrayLevelStatistics.of(two).middleShare() < 0.02);
  }
}
