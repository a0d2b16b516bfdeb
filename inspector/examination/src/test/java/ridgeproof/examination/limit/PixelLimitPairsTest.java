package ridgeproof.examination.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ridgeproof.examination.limit.MeasuredImage.sound;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.examination.SampleCard;
import ridgeproof.imagery.measure.EdgePadding;
import ridgeproof.imagery.measure.EmptyBand;
import ridgeproof.imagery.measure.RidgePeriod;
import ridgeproof.imagery.measure.Wraparound;
import ridgeproof.spec.table.Table;

/** What is decided a step below each limit of pixel measures, at it, and a step above it. */
class PixelLimitPairsTest {

  /** Limits that need ridges, a comparison or another decoder, and the test of what they decide. */
  private static final Map<String, String> ELSEWHERE =
      Map.ofEntries(
          Map.entry("decoder-difference", "rules/image/SecondDecoderRuleTest"),
          Map.entry("finger-match", "rules/ridges/SequenceRuleTest"),
          Map.entry("segment-centre", "rules/ridges/RidgeRulesTest"),
          Map.entry("clear-print-score", "rules/ridges/SequenceRuleTest"),
          Map.entry("clear-print-minutiae", "rules/ridges/SequenceRuleTest"),
          Map.entry("unlike-fingers", "comparison/PersonDoubtTest"));

  /** The odds of a comparison: SequenceCheckTest of the ridges weighs them together. */
  private static final Set<String> ODDS =
      Set.of(
          "place-prior",
          "stranger-prior",
          "place-claim",
          "place-claim-alone",
          "place-confirmed",
          "place-lead");

  /**
   * A limit.
   *
   * @param found what is found a step below it, at it, and a step above it
   */
  private record Limit(
      String name, double step, List<String> found, DoubleFunction<List<MeasuredImage>> images) {}

  private static final String NONE = "";

  private static Limit limit(
      String name,
      double step,
      String below,
      String at,
      String above,
      DoubleFunction<List<MeasuredImage>> images) {
    return new Limit(name, step, List.of(below, at, above), images);
  }

  private static Limit single(
      String name,
      double step,
      String below,
      String at,
      String above,
      DoubleFunction<MeasuredImage> image) {
    return limit(name, step, below, at, above, value -> List.of(image.apply(value)));
  }

  private static Stream<Limit> limits() {
    return Stream.of(grays(), grounds(), ridges(), scans()).flatMap(List::stream);
  }

  private static List<Limit> grays() {
    return List.of(
        single("blank-share", 0.1, "RP-IMG-034", NONE, NONE, PixelLimitPairsTest::marked),
        single(
            "least-gray-range", 1, "RP-IMG-035", NONE, NONE, n -> sound().levels((int) n, 25_600)),
        single(
            "gray-level-pixels",
            1,
            "RP-IMG-035",
            NONE,
            NONE,
            n -> sound().levels(127, 25_400).rare((int) n)),
        single(
            "gray-range-pixels",
            1,
            NONE,
            "RP-IMG-035",
            "RP-IMG-035",
            n -> sound().levels(100, (int) n)),
        limit(
            "wanted-gray-range",
            1,
            "RP-IMG-036",
            NONE,
            NONE,
            n -> alike(10, sound().levels((int) n, 30_000))),
        limit(
            "wanted-gray-range-share", 10, "RP-IMG-036", NONE, NONE, PixelLimitPairsTest::reaching),
        limit(
            "gray-range-images",
            1,
            NONE,
            "RP-IMG-036",
            "RP-IMG-036",
            n -> alike((int) n, sound().levels(150, 30_000))));
  }

  private static MeasuredImage marked(double percent) {
    int marked = (int) Math.round(percent * 1000);
    return sound().levels(200, marked).bare(245, 100_000 - marked);
  }

  /** Ten prints, of which this share has 200 gray levels. */
  private static List<MeasuredImage> reaching(double percent) {
    int many = (int) Math.round(percent / 10);
    List<MeasuredImage> images = new ArrayList<>(alike(many, sound().levels(200, 30_000)));
    images.addAll(alike(10 - many, sound().levels(150, 30_000)));
    return images;
  }

  private static List<MeasuredImage> alike(int count, MeasuredImage image) {
    return Collections.nCopies(count, image);
  }

  private static List<Limit> grounds() {
    return List.of(
        single(
            "dark-ground",
            1,
            "RP-IMG-037",
            "RP-IMG-037",
            NONE,
            n -> negative((int) n, (int) n, 10, 50)),
        single("ground-share", 0.1, NONE, "RP-IMG-037", "RP-IMG-037", n -> negative(10, 10, 10, n)),
        single(
            "ground-nearness",
            1,
            "RP-IMG-037",
            "RP-IMG-037",
            NONE,
            n -> negative(10, 10 + (int) n, 10, 50)),
        single(
            "fading-share", 0.1, NONE, "RP-IMG-037", "RP-IMG-037", n -> negative(60, 60, n, 50)));
  }

  /**
   * Light ridges on dark ground.
   *
   * @param fading percent of what is marked
   * @param bare percent of the image
   */
  private static MeasuredImage negative(int ground, int fadingAt, double fading, double bare) {
    int image = 100_000;
    int bareOnes = (int) Math.round(image * bare / 100);
    int fadingOnes = (int) Math.round((image - bareOnes) * fading / 100);
    return sound()
        .levels(170, image - bareOnes - fadingOnes)
        .fading(fadingAt, fadingOnes)
        .bare(ground, bareOnes);
  }

  private static List<Limit> ridges() {
    return List.of(
        single(
            "shortest-ridge-period", 0.001, "RP-IMG-039", NONE, NONE, n -> ridges(n, 0.1, 20, 0.9)),
        single(
            "longest-ridge-period", 0.001, NONE, NONE, "RP-IMG-039", n -> ridges(n, 0.1, 20, 0.9)),
        single(
            "ridge-windows",
            1,
            NONE,
            "RP-IMG-039",
            "RP-IMG-039",
            n -> ridges(1, 0.1, (int) n, 0.9)),
        limit(
            "ridge-windows-shared",
            1,
            NONE,
            "RP-IMG-040",
            "RP-IMG-040",
            n -> alike(3, ridges(1, 0.1, (int) n, 0.9))),
        single(
            "ridge-share", 1, NONE, "RP-IMG-039", "RP-IMG-039", n -> ridges(1, 0.1, 20, n / 100)),
        single(
            "ridge-spread", 1, "RP-IMG-039", "RP-IMG-039", NONE, n -> ridges(1, n / 100, 20, 0.9)),
        limit(
            "ridge-images",
            1,
            "RP-IMG-039",
            "RP-IMG-040",
            "RP-IMG-040",
            n -> alike((int) n, ridges(1, 0.1, 20, 0.9))),
        limit(
            "ridge-agreement",
            10,
            "RP-IMG-039",
            "RP-IMG-040",
            "RP-IMG-040",
            PixelLimitPairsTest::agreeing));
  }

  private static final double PIXELS_PER_MM = 500 / 25.4;

  /** Ridges so many millimeters apart at 500 ppi, with a spread as a part of that. */
  private static MeasuredImage ridges(double mm, double spread, int windows, double share) {
    double pixels = mm * PIXELS_PER_MM;
    return sound().ridges(new RidgePeriod(pixels, spread * pixels, windows, share));
  }

  private static List<MeasuredImage> agreeing(double percent) {
    int wide = (int) Math.round(percent / 10);
    List<MeasuredImage> images = new ArrayList<>(alike(wide, ridges(1, 0.1, 20, 0.9)));
    images.addAll(alike(10 - wide, ridges(0.46, 0.1, 20, 0.9)));
    return images;
  }

  private static List<Limit> scans() {
    return List.of(
        single(
            "padding-lines",
            1,
            NONE,
            "RP-IMG-038",
            "RP-IMG-038",
            n -> sound().padding(new EdgePadding(0, (int) n, 0, 0))),
        single(
            "lost-lines",
            1,
            NONE,
            NONE,
            "RP-IMG-047",
            n -> sound().band(new EmptyBand(7, (int) n, 0))),
        single(
            "two-level-middle",
            1,
            "RP-IMG-044",
            NONE,
            NONE,
            n -> sound().levels(200, 30_000).slopes(n / 100)),
        single(
            "wrapped-pieces",
            1,
            NONE,
            "RP-IMG-048",
            "RP-IMG-048",
            n -> sound().edges(new Wraparound((int) n, (int) n, true))),
        single(
            "wrapped-share",
            1,
            NONE,
            "RP-IMG-048",
            "RP-IMG-048",
            n -> sound().edges(new Wraparound(100, (int) n, false))));
  }

  @TestFactory
  Stream<DynamicTest> eachLimitIsKeptOnItsOwnSide() {
    return limits()
        .flatMap(
            limit ->
                IntStream.rangeClosed(-1, 1)
                    .mapToObj(
                        side ->
                            DynamicTest.dynamicTest(
                                limit.name() + " " + "below at above".split(" ")[side + 1],
                                () -> keeps(limit, side))));
  }

  private static void keeps(Limit limit, int side) {
    double value = SampleCard.TABLES.pixelLimits().value(limit.name()) + side * limit.step();
    String expected = limit.found().get(side + 1);
    assertEquals(
        expected.isEmpty() ? Set.of() : Set.of(expected),
        MeasuredImage.found(limit.images().apply(value)));
  }

  @Test
  void everyLimitOfTheTableIsOneOfThese() throws Exception {
    Set<String> table = new TreeSet<>();
    Table.resource("limits/pixel-measures.csv")
        .rows()
        .forEach(row -> table.add(row.required("name")));
    Set<String> tested = new TreeSet<>(ODDS);
    limits().forEach(limit -> tested.add(limit.name()));
    tested.addAll(ELSEWHERE.keySet());
    assertEquals(table, tested);
    for (String test : ELSEWHERE.values()) {
      Path file = Path.of("src/test/java/ridgeproof/examination", test + ".java");
      assertTrue(Files.exists(file), file.toString());
    }
  }
}
