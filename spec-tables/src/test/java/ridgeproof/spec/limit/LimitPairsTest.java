package ridgeproof.spec.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;
import ridgeproof.spec.table.TableError;

/** Both sides of each numeric limit of the tables. */
class LimitPairsTest {

  /** Opened anew for each test, so that a changed reader of rows is noticed. */
  private final SpecTables tables = SpecTables.open();

  private static final Source AGENCY = new Source("AGENCY", "", Source.Knowledge.COMMON_PRACTICE);

  @Test
  void everyBoundOfRidgesIsKeptByItselfAndBrokenBeyond() {
    List<RidgeLimit> limits = tables.ridgeLimits();
    assertTrue(limits.size() > 20, limits.toString());
    for (RidgeLimit limit : limits) {
      assertTrue(limit.least().isPresent() || limit.most().isPresent(), limit.toString());
      limit.least().ifPresent(least -> isLowest(limit, least));
      limit.most().ifPresent(most -> isHighest(limit, most));
    }
  }

  private static void isLowest(RidgeLimit limit, double least) {
    assertFalse(limit.isBrokenBy(least), limit.toString());
    assertTrue(limit.isBrokenBy(Math.nextDown(least)), limit.toString());
  }

  private static void isHighest(RidgeLimit limit, double most) {
    assertFalse(limit.isBrokenBy(most), limit.toString());
    assertTrue(limit.isBrokenBy(Math.nextUp(most)), limit.toString());
  }

  @Test
  void everyClassOfResolutionAdmitsOnePercentAndNoMore() {
    assertEquals(5, tables.resolutionClasses().size());
    for (ResolutionClass resolution : tables.resolutionClasses()) {
      double ppi = resolution.ppi();
      for (double side : new double[] {-1, 1}) {
        assertTrue(resolution.admits(ppi + side * ppi * 0.01), resolution.name());
        assertFalse(resolution.admits(ppi + side * (ppi * 0.01 + 0.001)), resolution.name());
      }
      ResolutionClass asked = resolution.askedBy(AGENCY);
      assertEquals(AGENCY, asked.source());
      assertEquals(ppi, asked.ppi());
    }
  }

  @Test
  void aCompressionMayExceedItsRatioByTheTolerance() {
    CompressionLimit wsq = tables.compressionCeilings().get(0);
    assertEquals("WSQ", wsq.format());
    assertEquals(18.75, wsq.most());
    assertEquals(0.6, wsq.leastBitsPerPixel().orElseThrow(), 1e-12);
    CompressionLimit asked = wsq.askedBy(12, AGENCY);
    assertEquals(12, asked.most());
    assertEquals(0.9375, asked.bitsPerPixel().orElseThrow());
    assertEquals(0.9375, asked.leastBitsPerPixel().orElseThrow());
    assertEquals(AGENCY, asked.source());
  }

  @Test
  void aCompressionWithoutASettingHasNoneForAnAgencyEither() {
    CompressionLimit jpeg = new CompressionLimit("JPEG", 15, OptionalDouble.empty(), 25, AGENCY);
    assertEquals(OptionalDouble.empty(), jpeg.leastBitsPerPixel());
    assertEquals(OptionalDouble.empty(), jpeg.askedBy(10, AGENCY).bitsPerPixel());
  }

  @Test
  void aDisallowedCompressionIsOfResolutionsAboveOneUpToAnother() {
    DisallowedCompression between = disallowed(500, 1000);
    assertFalse(between.covers(500));
    assertTrue(between.covers(Math.nextUp(500.0)));
    assertTrue(between.covers(1000));
    assertFalse(between.covers(Math.nextUp(1000.0)));
    assertFalse(between.atAnyResolution());
    assertFalse(disallowed(500, Double.POSITIVE_INFINITY).atAnyResolution());
    assertFalse(disallowed(0, 500).atAnyResolution());
    assertTrue(disallowed(0, Double.POSITIVE_INFINITY).atAnyResolution());
  }

  private static DisallowedCompression disallowed(double above, double upTo) {
    return new DisallowedCompression("WSQ", above, upTo, "RP-IMG-012", "JPEG 2000", AGENCY);
  }

  @Test
  void anImageSizeIsReadInInchesAndKeptInMillimeters() {
    ImageSizeLimit thumb =
        tables.imageSizes().stream()
            .filter(limit -> limit.position().equals("1") && limit.recordTypes().contains(14))
            .findFirst()
            .orElseThrow();
    assertEquals(40.64, thumb.maxWidthMm(), 1e-9);
    assertEquals(38.1, thumb.maxHeightMm(), 1e-9);
  }

  @Test
  void theNumbersOfPixelsAreReadByTheirNames() {
    assertEquals(45, tables.pixelLimits().value("clear-print-score"));
    assertEquals(30, tables.pixelLimits().value("clear-print-minutiae"));
    assertTrue(tables.matchLikelihoods().size() > 5);
  }

  @Test
  void similaritiesRiseAndTheirWeightsNeverFall() {
    assertEquals(List.of(1.0, 1.0), weights("1,1", "2,1"));
    assertEquals(List.of(1.0, 1.5), weights("1,1", "2,1.5"));
    for (String second : List.of("1,2", "0.5,2", "2,0.9")) {
      TableError error = assertThrows(TableError.class, () -> weights("1,1", second));
      assertEquals(
          "x.csv: row 2: a greater similarity never weighs less", error.getMessage(), second);
    }
  }

  private static List<Double> weights(String first, String second) {
    String rows =
        String.format(
            Locale.ROOT,
            "similarity,weight,source,known%n%s,DESIGN,common practice%n%s,DESIGN,common practice%n",
            first,
            second);
    return MatchLikelihood.read(Table.read("x.csv", rows)).stream()
        .map(MatchLikelihood::weight)
        .toList();
  }
}
