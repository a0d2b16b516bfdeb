package ridgeproof.examination.cause.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.examination.ControlNumbers;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.spec.rule.Severity;
import ridgeproof.testing.ReferenceFiles;

class DateCausesTest {

  private static final LocalDate TODAY = SampleCard.TODAY;

  private static String day(LocalDate date) {
    return date.format(DateTimeFormatter.BASIC_ISO_DATE);
  }

  /** A card with its dates of transaction, Greenwich, printing and capture. */
  private static SampleCard dated(
      LocalDate made, LocalDate greenwich, LocalDate printed, LocalDate captured) {
    SampleCard card =
        SampleCard.rolledTagged()
            .with(1, r -> r.with(5, day(made)).with(14, day(greenwich) + "101500Z"))
            .with(2, r -> r.with(38, day(printed)));
    for (int record = 3; record <= 16; record++) {
      card = card.with(record, r -> r.with(5, day(captured)));
    }
    return card;
  }

  private static List<String> rules(FindingsReport report) {
    return report.findings().stream()
        .filter(finding -> finding.severity() != Severity.NOTE)
        .map(Finding::ruleId)
        .toList();
  }

  private static List<String> rules(SampleCard card) {
    return rules(card.examine());
  }

  @Test
  void datesOfOneDayAreInOrder() {
    assertEquals(List.of(), rules(dated(TODAY, TODAY, TODAY, TODAY)));
  }

  /** In the west it is still yesterday, in the east already tomorrow. */
  @Test
  void aTimeZoneIsNoFault() {
    LocalDate tomorrow = TODAY.plusDays(1);
    assertEquals(List.of(), rules(dated(TODAY, tomorrow, TODAY, TODAY)));
    assertEquals(List.of(), rules(dated(tomorrow, TODAY, TODAY, TODAY)));
  }

  @Test
  void aWrongClockOfTheStationIsOneFinding() {
    for (LocalDate wrong : List.of(TODAY.plusDays(40), LocalDate.of(2099, 1, 1))) {
      FindingsReport report = dated(wrong, wrong, wrong, wrong).examine();
      assertEquals(List.of("RP-TXN-062"), rules(report), wrong.toString());
      assertTrue(report.findings().get(0).explains().orElse(0) > 0);
    }
  }

  @Test
  void aTransactionOfTheYear2099WasNotCapturedLongAgo() {
    FindingsReport report = dated(LocalDate.of(2099, 1, 1), TODAY, TODAY, TODAY).examine();
    assertEquals(List.of("RP-TXN-061"), rules(report));
    assertTrue(
        report.everyFinding().stream().anyMatch(f -> f.ruleId().equals("RP-TXN-034")),
        "the rule that sees the consequence");
  }

  @Test
  void aTransactionEarlierThanAllItsOtherDatesIsOneFinding() {
    FindingsReport report = dated(LocalDate.of(1970, 1, 1), TODAY, TODAY, TODAY).examine();
    assertEquals(List.of("RP-TXN-064"), rules(report));
  }

  @Test
  void oneDateThatDisagreesIsNotExplainedAway() {
    assertEquals(List.of("RP-TXN-063"), rules(dated(TODAY, TODAY.plusDays(3), TODAY, TODAY)));
    assertEquals(List.of("RP-TXN-063"), rules(dated(TODAY, TODAY.minusYears(9), TODAY, TODAY)));
    assertEquals(List.of(), rules(dated(TODAY, TODAY.minusDays(60), TODAY, TODAY)));
    List<String> captured = rules(dated(TODAY, TODAY, TODAY, TODAY.plusDays(9)));
    assertEquals(List.of("RP-TXN-033"), captured);
    List<String> printed = rules(dated(TODAY, TODAY, TODAY.plusDays(9), TODAY));
    assertEquals(List.of("RP-PTL-021"), printed);
  }

  @Test
  void aWrongDateOfBirthStaysBesideAWrongClock() {
    LocalDate wrong = TODAY.plusDays(40);
    SampleCard card =
        dated(wrong, wrong, wrong, wrong).with(2, r -> r.with(22, day(wrong.plusDays(9))));
    assertEquals(List.of("RP-TXN-062", "RP-PTL-020"), rules(card));
  }

  @Test
  void theDayOfTheExaminationIsChosenByTheUser() {
    byte[] card = dated(TODAY, TODAY, TODAY, TODAY).bytes();
    ExaminationOptions options = ExaminationOptions.standard().withDepth(Depth.STRUCTURE);
    LocalDate before = TODAY.minusDays(2);
    FindingsReport report = SampleCard.examine(card, options.withToday(before));
    assertEquals(before, report.asOf());
    assertEquals(List.of("RP-TXN-062"), rules(report));
    assertEquals(List.of(), rules(SampleCard.examine(card, options.withToday(TODAY.plusYears(9)))));
  }

  @Test
  void withoutADateOfTheTransactionCaptureIsComparedWithTheDayOfTheExamination() {
    SampleCard card =
        dated(TODAY, TODAY, TODAY, TODAY.plusDays(9)).with(1, record -> record.without(5));
    assertTrue(rules(card).contains("RP-TXN-033"));
  }

  @Test
  void theSecondFileWithAControlNumberIsReported() {
    ControlNumbers numbers = new ControlNumbers();
    FindingsReport report = SampleCard.rolled().examine();
    FindingsReport other =
        SampleCard.rolled().with(1, record -> record.with(9, "PILOT-0002")).examine();
    FindingsReport elsewhere =
        SampleCard.rolled().with(1, record -> record.with(8, "THP000009")).examine();
    assertEquals(List.of(), rules(numbers.check("a.an2", report)));
    assertEquals(List.of(), rules(numbers.check("b.an2", other)));
    assertEquals(List.of(), rules(numbers.check("c.an2", elsewhere)));
    FindingsReport again = numbers.check("d.an2", report);
    assertEquals(List.of("RP-TXN-060"), rules(again));
    assertEquals(Verdict.REVIEW, again.verdict());
    assertEquals(OptionalInt.empty(), again.findings().get(0).explains());
    assertTrue(again.findings().get(0).observed().text().contains("a.an2"));
    assertFalse(again.actions().isEmpty());
  }

  @TestFactory
  Stream<DynamicTest> noReferenceFileHasDatesThatDisagree() {
    return ReferenceFiles.all().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(),
                    () -> {
                      byte[] bytes = Files.readAllBytes(file);
                      List<String> found = rules(SampleCard.examine(bytes));
                      assertTrue(
                          found.stream().noneMatch(id -> id.startsWith("RP-TXN-06")),
                          found.toString());
                    }));
  }
}
