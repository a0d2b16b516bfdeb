package ridgeproof.archive.question;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.apache.spark.sql.Row;
import org.junit.jupiter.api.Test;
import ridgeproof.ledger.health.HealthFinding;
import ridgeproof.ledger.health.StationFault;
import ridgeproof.ledger.report.LedgerReport;

/** Questions on tables whose answers are known. */
class QuestionTest {

  private static final LocalDate DAY = KnownTables.DAY;

  private final KnownTables tables = new KnownTables();

  private List<String> ask(Question question) {
    tables.views();
    return tables.spark().sql(question.sql()).collectAsList().stream().map(Row::toString).toList();
  }

  @Test
  void theFirstFileOfAPersonDecides() {
    tables.file("a1", "A", DAY, "HOLD", "1", false);
    tables.file("a2", "A", DAY.plusDays(1), "READY", "1", false);
    tables.file("a2", "A", DAY.plusDays(1), "READY", "1", true);
    tables.file("b1", "B", DAY, "READY", "1", false);
    tables.file("c1", "C", DAY.plusMonths(1), "READY", "1", false);
    tables.file("d1", "D", DAY, "UNREADABLE", "1", false);
    tables.file("e1", "E", DAY, "REVIEW", "2", false);
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
    tables.file("a1", "A", DAY, "READY", "1", false);
    tables.file("a2", "A", DAY, "READY", "1", false);
    tables.file("b1", "B", DAY.plusDays(1), "READY", "1", false);
    tables.finger("a1", DAY, 3, 80, "same", 100);
    tables.finger("b1", DAY.plusDays(1), 8, 70, "same", 100);
    tables.finger("a1", DAY, 4, 75, "own", 100);
    tables.finger("a2", DAY, 4, 75, "own", 100);
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
      tables.finding(found[0], found[1]);
    }
    assertEquals(List.of("[RP-X,NOTE,2,4]", "[RP-Y,NOTE,1,4]"), ask(Question.COMMONEST_FINDINGS));
  }

  @Test
  void aStationWhoseContrastFallsDriftsAndTheOtherDoesNot() {
    tables.addStationThatDrifts();
    tables.views();
    ArchiveAnswers answers = ArchiveAnswers.of(tables.spark(), DAY.plusYears(1));
    List<HealthFinding> found = answers.health().findings();
    assertEquals(1, found.size(), found.toString());
    assertEquals(StationFault.CONTRAST, found.get(0).fault());
    assertEquals("TIDEWATER PIER 1", found.get(0).station());
    long late = found.get(0).since().orElseThrow().toEpochDay() - DAY.plusDays(75).toEpochDay();
    assertTrue(Math.abs(late) <= 3, "days from the fall: " + late);

    LedgerReport.Names names = KnownTables.names();
    String page = ArchivePage.render(answers, names);
    for (String part :
        List.of("Contrast of the prints changed", "TIDEWATER PIER 2", "600 of 600", "<svg")) {
      assertTrue(page.contains(part), part);
    }
    assertFalse(page.contains("<script"));
    assertTrue(ArchiveText.render(answers, names).contains("TIDEWATER PIER 1: Contrast"));
  }
}
