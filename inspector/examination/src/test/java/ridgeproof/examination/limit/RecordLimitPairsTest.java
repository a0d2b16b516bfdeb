package ridgeproof.examination.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ridgeproof.examination.SampleRecords.box;
import static ridgeproof.examination.SampleRecords.tagged;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleRecords;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.descriptive.Plausible;
import ridgeproof.spec.limit.CaptureDateLimit;
import ridgeproof.spec.limit.DisallowedCompression;
import ridgeproof.spec.limit.ImageSizeLimit;
import ridgeproof.spec.limit.ResolutionClass;
import ridgeproof.spec.table.Table;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

/** What is decided of records and of what is said of a person at each limit, and a step beyond. */
class RecordLimitPairsTest {

  private static final SpecTables TABLES = SampleCard.TABLES;
  private static final SampleCard CARD = SampleCard.rolled();
  private static final LocalDate TODAY = SampleCard.TODAY;
  private static final String NONE = "";

  /** Which of these rules are found, joined by blanks. */
  private static String found(SampleCard card, String... rules) {
    return SampleCard.examine(
            card.bytes(), ExaminationOptions.standard().withToday(TODAY).withDepth(Depth.STRUCTURE))
        .everyFinding()
        .stream()
        .map(finding -> finding.ruleId())
        .filter(Set.of(rules)::contains)
        .distinct()
        .sorted()
        .collect(Collectors.joining(" "));
  }

  private static String day(LocalDate date) {
    return date.format(DateTimeFormatter.BASIC_ISO_DATE);
  }

  private static DynamicTest test(String name, String expected, SampleCard card, String... rules) {
    return DynamicTest.dynamicTest(name, () -> assertEquals(expected, found(card, rules)));
  }

  @TestFactory
  Stream<DynamicTest> aCaptureDateIsAsOldAndAsNewAsItsRecordAllows() {
    return TABLES.agreements().captureDates().stream()
        .flatMap(
            limit -> {
              LocalDate last = TODAY.plusDays(limit.daysAfter());
              LocalDate first = TODAY.minusYears(limit.maxYears());
              return Stream.of(
                  captured(limit, last, NONE),
                  captured(limit, last.plusDays(1), "RP-TXN-033"),
                  captured(limit, first, NONE),
                  captured(limit, first.minusDays(1), "RP-TXN-034"));
            });
  }

  private static DynamicTest captured(CaptureDateLimit limit, LocalDate date, String expected) {
    RecordDraft record =
        record(limit.field().recordType(), Map.of(limit.field().field(), day(date)));
    return test(
        limit.field() + " " + date, expected, CARD.plus(record), "RP-TXN-033", "RP-TXN-034");
  }

  /** A tagged record of these fields and no more, which other rules object to. */
  private static RecordDraft record(int type, Map<Integer, String> fields) {
    List<FieldDraft> drafts =
        new ArrayList<>(List.of(SampleCard.text(type, 1, ""), SampleCard.text(type, 2, "77")));
    fields.keySet().stream()
        .sorted()
        .forEach(field -> drafts.add(SampleCard.text(type, field, fields.get(field))));
    return RecordDraft.tagged(type, drafts);
  }

  @TestFactory
  Stream<DynamicTest> anImageIsAsLargeAsItsPositionAllowsAndAPercentMoreIsNoted() {
    return TABLES.imageSizes().stream()
        .flatMap(
            limit ->
                limit.recordTypes().stream()
                    .filter(type -> type > 10)
                    .flatMap(type -> sizes(limit, type)));
  }

  private static Stream<DynamicTest> sizes(ImageSizeLimit limit, int type) {
    int width = pixels(limit.maxWidthMm());
    int height = pixels(limit.maxHeightMm());
    int wide = pixels(limit.maxWidthMm() * 1.01);
    int high = pixels(limit.maxHeightMm() * 1.01);
    return Stream.of(
        sized(limit, type, width, height, NONE),
        sized(limit, type, width + 1, height, "RP-IMG-010"),
        sized(limit, type, width, height + 1, "RP-IMG-010"),
        sized(limit, type, wide, high, "RP-IMG-010"),
        sized(limit, type, wide + 1, height, "RP-IMG-009"),
        sized(limit, type, width, high + 1, "RP-IMG-009"));
  }

  private static int pixels(double millimeters) {
    return (int) Math.floor(millimeters / 25.4 * 500 + 1e-6);
  }

  private static DynamicTest sized(
      ImageSizeLimit limit, int type, int width, int height, String expected) {
    int version =
        IntStream.of(500, 502, 400, 300, 200)
            .filter(limit.versions()::contains)
            .findFirst()
            .orElseThrow();
    RecordDraft image =
        record(
            type,
            Map.of(
                6,
                Integer.toString(width),
                7,
                Integer.toString(height),
                8,
                "1",
                9,
                "500",
                10,
                "500",
                13,
                limit.position()));
    SampleCard card =
        CARD.plus(image)
            .with(1, header -> header.with(2, String.format(Locale.ROOT, "%04d", version)));
    String name = type + " position " + limit.position() + " " + width + "x" + height;
    return test(name, expected, card, "RP-IMG-009", "RP-IMG-010");
  }

  @TestFactory
  Stream<DynamicTest> aResolutionIsWithinThePercentOfAClassOfItsRecord() {
    return IntStream.of(13, 14, 15, 19)
        .boxed()
        .flatMap(
            type -> TABLES.resolutionsOf(type).stream().flatMap(one -> resolutions(type, one)));
  }

  private static Stream<DynamicTest> resolutions(int type, ResolutionClass one) {
    int lowest = (int) Math.ceil(one.ppi() * (1 - one.tolerancePercent() / 100) - 1e-9);
    int highest = (int) Math.floor(one.ppi() * (1 + one.tolerancePercent() / 100) + 1e-9);
    return Stream.of(
        resolved(type, lowest, NONE),
        resolved(type, lowest - 1, "RP-IMG-008"),
        resolved(type, highest, NONE),
        resolved(type, highest + 1, "RP-IMG-008"));
  }

  private static DynamicTest resolved(int type, int ppi, String expected) {
    String number = Integer.toString(ppi);
    RecordDraft image =
        record(type, Map.of(6, "32", 7, "24", 8, "1", 9, number, 10, number, 13, position(type)));
    return test(type + " " + ppi, expected, CARD.plus(image), "RP-IMG-008");
  }

  private static String position(int type) {
    return switch (type) {
      case 15 -> "25";
      case 19 -> "62";
      default -> "1";
    };
  }

  @TestFactory
  Stream<DynamicTest> aCompressionBelongsToAResolution() {
    Map<String, String> codes = Map.of("WSQ", "WSQ20", "JPEG_2000", "JP2", "JPEG", "JPEGB");
    return TABLES.agreements().printCompressions().stream()
        .flatMap(
            limit -> {
              String code = codes.get(limit.format());
              List<DynamicTest> tests = new ArrayList<>();
              if (limit.abovePpi() > 0) {
                tests.add(coded(limit, code, (int) limit.abovePpi(), NONE));
                tests.add(coded(limit, code, (int) limit.abovePpi() + 1, limit.rule()));
              }
              if (!Double.isInfinite(limit.upToPpi())) {
                tests.add(coded(limit, code, (int) limit.upToPpi(), limit.rule()));
                tests.add(coded(limit, code, (int) limit.upToPpi() + 1, NONE));
              }
              if (limit.atAnyResolution()) {
                tests.add(coded(limit, code, 500, limit.rule()));
                tests.add(coded(limit, "NONE", 500, NONE));
              }
              return tests.stream();
            });
  }

  private static DynamicTest coded(
      DisallowedCompression limit, String code, int ppi, String expected) {
    String number = Integer.toString(ppi);
    return test(
        code + " at " + ppi,
        expected,
        tagged(3, draft -> draft.with(9, number).with(10, number).with(11, code)),
        limit.rule());
  }

  @TestFactory
  Stream<DynamicTest> anAgeIsLikelyOrAtLeastPossible() {
    Map<String, String> types =
        Map.of(
            "applicant", "FAUF",
            "criminal", "CAR",
            "identification", "RPIS",
            "miscellaneous", "AMN",
            "latent", "LFS",
            "other", "FIS");
    return types.entrySet().stream()
        .flatMap(
            kind -> {
              Plausible age = plausible("age", kind.getKey());
              Plausible possible = plausible("possible-age", kind.getKey());
              Set<Integer> ages = new TreeSet<>();
              for (Plausible limit : List.of(age, possible)) {
                ages.addAll(
                    List.of(
                        (int) limit.least() - 1,
                        (int) limit.least(),
                        (int) limit.most(),
                        (int) limit.most() + 1));
              }
              return ages.stream()
                  .filter(years -> years >= 0)
                  .map(years -> aged(kind.getValue(), years, age, possible));
            });
  }

  private static Plausible plausible(String measure, String kind) {
    return TABLES.particulars().plausible(measure, kind).orElseThrow();
  }

  private static DynamicTest aged(String type, int years, Plausible age, Plausible possible) {
    boolean impossible = years < possible.least() || years > possible.most();
    boolean unlikely = years < age.least() || years > age.most();
    SampleCard card =
        CARD.with(1, header -> header.with(4, type))
            .with(2, draft -> draft.with(22, day(TODAY.minusYears(years))));
    return test(
        type + " of " + years,
        impossible ? "RP-TXN-070" : unlikely ? "RP-PTL-023" : NONE,
        card,
        "RP-TXN-070",
        "RP-PTL-023");
  }

  @TestFactory
  Stream<DynamicTest> printsAreNoOlderThanAYear() {
    int most = (int) plausible("print-age", "applicant").most();
    return Stream.of(
        printed("FAUF", most, NONE),
        printed("FAUF", most + 1, "RP-PTL-024"),
        printed("CAR", most, NONE),
        printed("CAR", most + 1, "RP-PTL-024"),
        printed("LFS", most + 1, NONE));
  }

  private static DynamicTest printed(String type, int days, String expected) {
    return test(
        type + " " + days,
        expected,
        CARD.with(1, header -> header.with(4, type))
            .with(2, draft -> draft.with(38, day(TODAY.minusDays(days)))),
        "RP-PTL-024");
  }

  /** At 5 feet 7 inches 11 kg/m2 are 70.2 pounds, and 75 are 478.9. */
  @TestFactory
  Stream<DynamicTest> weightGoesWithHeight() {
    return Stream.of(
        weighing("070", "RP-PTL-036"),
        weighing("071", NONE),
        weighing("478", NONE),
        weighing("479", "RP-PTL-036"));
  }

  private static DynamicTest weighing(String pounds, String expected) {
    return test(pounds, expected, CARD.with(2, draft -> draft.with(29, pounds)), "RP-PTL-036");
  }

  @TestFactory
  Stream<DynamicTest> eachThresholdIsKeptOnItsOwnSide() {
    return Stream.of(
        test("minimum 19.50", NONE, header("19.50", "19.50"), "RP-TXN-017"),
        test("minimum 19.49", "RP-TXN-017", header("19.49", "19.49"), "RP-TXN-017"),
        test("resolution-tolerance in", NONE, header("19.69", "19.88"), "RP-TXN-016"),
        test("resolution-tolerance out", "RP-TXN-016", header("19.69", "19.89"), "RP-TXN-016"),
        test("frame-tolerance finer in", NONE, framed("510"), "RP-TXN-031"),
        test("frame-tolerance finer out", "RP-TXN-031", framed("511"), "RP-TXN-031"),
        test("frame-tolerance coarser in", NONE, framed("491"), "RP-TXN-031"),
        test("frame-tolerance coarser out", "RP-TXN-031", framed("490"), "RP-TXN-031"),
        test("feature-margin in", NONE, core("01670060"), "RP-TXN-028"),
        test("feature-margin out", "RP-TXN-028", core("01680060"), "RP-TXN-028"),
        test("segment-overlap in", NONE, overlapping(12), "RP-IMG-021"),
        test("segment-overlap out", "RP-IMG-021", overlapping(11), "RP-IMG-021"),
        test("greenwich-before-date in", NONE, greenwich(365), "RP-TXN-063"),
        test("greenwich-before-date out", "RP-TXN-063", greenwich(366), "RP-TXN-063"));
  }

  private static SampleCard header(String scanned, String sent) {
    return CARD.with(1, header -> header.with(11, scanned).with(12, sent));
  }

  /** Features whose record states this resolution for the pixels of its image. */
  private static SampleCard framed(String ppi) {
    return SampleCard.rolledTagged()
        .plus(SampleRecords.pixelFeatures(3, 3).with(131, ppi).with(132, ppi));
  }

  private static SampleCard core(String place) {
    return CARD.plus(SampleRecords.standardFeatures(3, 3).with(8, place));
  }

  /** Two boxes, of which the second, of 8 columns, begins at this one; the first ends at 16. */
  private static SampleCard overlapping(int left) {
    return tagged(
        SampleRecords.RIGHT_SLAP,
        draft -> draft.with(21, List.of(box(2, 0, 16, 0, 20), box(3, left, left + 8, 0, 20))));
  }

  private static SampleCard greenwich(int daysBefore) {
    return CARD.with(1, header -> header.with(14, day(TODAY.minusDays(daysBefore)) + "101500Z"));
  }

  @Test
  void everyThresholdOfTheTableIsOneOfThese() {
    List<String> tested =
        eachThresholdIsKeptOnItsOwnSide().map(DynamicTest::getDisplayName).toList();
    for (Table.Row row : Table.resource("limits/thresholds.csv").rows()) {
      String name = row.required("name");
      assertEquals(
          Set.of("in", "out"),
          tested.stream()
              .filter(test -> test.startsWith(name + " "))
              .map(test -> test.substring(test.lastIndexOf(' ') + 1))
              .collect(Collectors.toSet()),
          name);
    }
    assertTrue(tested.size() > 10);
  }
}
