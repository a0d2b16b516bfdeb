package ridgeproof.archive.question;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.StructType;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import ridgeproof.archive.store.ArchiveTable;
import ridgeproof.ledger.health.HealthFinding;
import ridgeproof.ledger.health.StationFault;
import ridgeproof.ledger.report.LedgerReport;
import ridgeproof.ledger.response.Reasons;
import ridgeproof.spec.SpecTables;

/** Questions on tables whose answers are known. */
class QuestionTest {

  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  private final SparkSession spark =
      SparkSession.builder()
          .master("local[2]")
          .config("spark.ui.enabled", "false")
          .config("spark.sql.shuffle.partitions", "2")
          .config("spark.sql.session.timeZone", "UTC")
          .config("spark.sql.datetime.java8API.enabled", "true")
          .getOrCreate();

  private final List<Row> files = new ArrayList<>();
  private final List<Row> findings = new ArrayList<>();
  private final List<Row> fingers = new ArrayList<>();

  @BeforeEach
  void sessionKnowsJavaTime() {
    spark.conf().set("spark.sql.datetime.java8API.enabled", "true");
  }

  private static Row row(ArchiveTable table, Map<String, Object> values) {
    StructType schema = table.schema();
    Object[] all = new Object[schema.size()];
    values.forEach((name, value) -> all[schema.fieldIndex(name)] = value);
    return RowFactory.create(all);
  }

  private void file(
      String hash, String control, LocalDate day, String verdict, String serial, boolean repeat) {
    files.add(
        row(
            ArchiveTable.FILES,
            Map.ofEntries(
                Map.entry("input", hash + files.size()), Map.entry("file_hash", hash),
                Map.entry("repeat", repeat), Map.entry("verdict", verdict),
                Map.entry("images", 1), Map.entry("control", control),
                Map.entry("make", "TIDEWATER"), Map.entry("model", "PIER"),
                Map.entry("serial", serial), Map.entry("depth", "ridges"),
                Map.entry("program", "1"), Map.entry("tables", "1"),
                Map.entry("examined", Instant.EPOCH), Map.entry("day", day))));
  }

  private void finger(
      String hash, LocalDate day, int position, int score, String image, double contrast) {
    fingers.add(
        row(
            ArchiveTable.FINGERS,
            Map.ofEntries(
                Map.entry("file_hash", hash), Map.entry("record", 3),
                Map.entry("position", position), Map.entry("finger", position),
                Map.entry("rolled", true), Map.entry("score", score),
                Map.entry("image_hash", image), Map.entry("encoder", "WSQ"),
                Map.entry("contrast", contrast), Map.entry("day", day))));
  }

  private List<String> ask(Question question) {
    views();
    return spark.sql(question.sql()).collectAsList().stream().map(Row::toString).toList();
  }

  private void views() {
    view(ArchiveTable.FILES, files);
    view(ArchiveTable.FINDINGS, findings);
    view(ArchiveTable.FINGERS, fingers);
    view(ArchiveTable.QUARANTINE, List.of());
  }

  private void view(ArchiveTable table, List<Row> rows) {
    spark.createDataFrame(rows, table.schema()).createOrReplaceTempView(table.folder());
  }

  @Test
  void theFirstFileOfAPersonDecides() {
    file("a1", "A", DAY, "HOLD", "1", false);
    file("a2", "A", DAY.plusDays(1), "READY", "1", false);
    file("a2", "A", DAY.plusDays(1), "READY", "1", true);
    file("b1", "B", DAY, "READY", "1", false);
    file("c1", "C", DAY.plusMonths(1), "READY", "1", false);
    file("d1", "D", DAY, "UNREADABLE", "1", false);
    file("e1", "E", DAY, "REVIEW", "2", false);
    assertEquals(
        List.of(
            "[TIDEWATER PIER 1,2026-03-01,1,2]",
            "[TIDEWATER PIER 1,2026-04-01,1,1]",
            "[TIDEWATER PIER 2,2026-03-01,0,1]"),
        ask(Question.FIRST_TIME_READY));
    assertEquals(List.of("[a2,2,2026-03-03,2026-03-03]"), ask(Question.FILES_SENT_AGAIN));
  }

  @Test
  void anImageUnderTwoControlNumbersIsToldByItsHash() {
    file("a1", "A", DAY, "READY", "1", false);
    file("a2", "A", DAY, "READY", "1", false);
    file("b1", "B", DAY.plusDays(1), "READY", "1", false);
    finger("a1", DAY, 3, 80, "same", 100);
    finger("b1", DAY.plusDays(1), 8, 70, "same", 100);
    finger("a1", DAY, 4, 75, "own", 100);
    finger("a2", DAY, 4, 75, "own", 100);
    assertEquals(
        List.of("[same,2,2,3, 8,2026-03-02,2026-03-03]"),
        ask(Question.IMAGES_UNDER_SEVERAL_CONTROL_NUMBERS));
    assertEquals(
        List.of("[TIDEWATER PIER,70,3]", "[TIDEWATER PIER,80,1]"), ask(Question.QUALITY_BY_DEVICE));
  }

  @Test
  void theCommonestFindingIsTheOneInMostFiles() {
    for (String[] found :
        new String[][] {{"a", "RP-X"}, {"b", "RP-X"}, {"a", "RP-Y"}, {"a", "RP-Y"}}) {
      findings.add(
          row(
              ArchiveTable.FINDINGS,
              Map.of("file_hash", found[0], "rule", found[1], "severity", "NOTE", "places", 2)));
    }
    assertEquals(List.of("[RP-X,NOTE,2,4]", "[RP-Y,NOTE,1,4]"), ask(Question.COMMONEST_FINDINGS));
  }

  /**
   * Two stations of 300 people; the contrast of the first falls by 30 gray levels in the middle.
   */
  @Test
  void aStationWhoseContrastFallsDriftsAndTheOtherDoesNot() {
    Random random = new Random(11);
    for (int person = 0; person < 300; person++) {
      LocalDate day = DAY.plusDays(person / 2);
      for (String serial : List.of("1", "2")) {
        String hash = serial + "-" + person;
        file(hash, hash, day, "READY", serial, false);
        double fall = serial.equals("1") && person >= 150 ? 30 : 0;
        for (int position = 1; position <= 4; position++) {
          finger(hash, day, position, 70, hash + position, 120 - fall + random.nextGaussian() * 5);
        }
      }
    }
    views();
    ArchiveAnswers answers = ArchiveAnswers.of(spark, DAY.plusYears(1));
    List<HealthFinding> found = answers.health().findings();
    assertEquals(1, found.size(), found.toString());
    assertEquals(StationFault.CONTRAST, found.get(0).fault());
    assertEquals("TIDEWATER PIER 1", found.get(0).station());
    long late = found.get(0).since().orElseThrow().toEpochDay() - DAY.plusDays(75).toEpochDay();
    assertTrue(Math.abs(late) <= 3, "days from the fall: " + late);

    SpecTables tables = SpecTables.open();
    LedgerReport.Names names = new LedgerReport.Names(Map.of(), new Reasons(tables), tables);
    String page = ArchivePage.render(answers, names);
    for (String part :
        List.of("Contrast of the prints changed", "TIDEWATER PIER 2", "600 of 600", "<svg")) {
      assertTrue(page.contains(part), part);
    }
    assertFalse(page.contains("<script"));
    assertTrue(ArchiveText.render(answers, names).contains("TIDEWATER PIER 1: Contrast"));
    writePage(page);
  }

  private static void writePage(String page) {
    try {
      java.nio.file.Path shots = java.nio.file.Path.of("target", "archive-report.html");
      java.nio.file.Files.createDirectories(shots.getParent());
      java.nio.file.Files.writeString(shots, page);
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
