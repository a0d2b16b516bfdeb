package ridgeproof.examination.cause.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.Established.finding;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.Established;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;

/** From which dates on one date is called the wrong one, and what it explains. */
class DateCauseLimitsTest {

  private static final LocalDate TODAY = SampleCard.TODAY;

  private static String day(LocalDate date) {
    return date.format(DateTimeFormatter.BASIC_ISO_DATE);
  }

  /** A card made on that day, with one print and no other date. */
  private static SampleCard made(LocalDate made) {
    SampleCard card = SampleCard.rolledTagged();
    for (int record = 16; record > 3; record--) {
      card = card.without(record);
    }
    return card.with(1, draft -> draft.with(5, day(made)).without(14))
        .with(2, draft -> draft.without(38))
        .with(3, draft -> draft.without(5));
  }

  private static SampleCard greenwich(SampleCard card, String text) {
    return card.with(1, draft -> draft.with(14, text));
  }

  private static SampleCard printed(SampleCard card, LocalDate date) {
    return card.with(2, draft -> draft.with(38, day(date)));
  }

  private static SampleCard captured(SampleCard card, LocalDate date) {
    return card.with(3, draft -> draft.with(5, day(date)));
  }

  private static List<String> causes(SampleCard card, Finding... found) {
    return Established.by(new DateCauses(), card.examine().transaction(), found);
  }

  private static Finding required(String rule, String required) {
    FindingLog log = new FindingLog(SampleCard.TABLES, 1);
    log.add(rule, Location.file(), Observed.of("observed"), required);
    return log.findings().get(0);
  }

  @Test
  void theSecondDayAfterTheExaminationIsInTheFuture() {
    assertEquals(List.of(), causes(made(TODAY.plusDays(1))));
    assertEquals(
        List.of("RP-TXN-061 record 1 1.005: RP-TXN-033, RP-TXN-034, RP-TXN-063, RP-PTL-024"),
        causes(
            made(TODAY.plusDays(2)),
            finding("RP-TXN-033"),
            finding("RP-TXN-034"),
            finding("RP-TXN-063"),
            finding("RP-PTL-024"),
            finding("RP-PTL-021"),
            finding("RP-PTL-023")));
  }

  @Test
  void aClockIsWrongWhereEveryDateIsInTheFuture() {
    LocalDate later = TODAY.plusDays(2);
    assertEquals(
        List.of("RP-TXN-062 record 1 1.005: RP-TXN-034, RP-PTL-021, RP-PTL-023"),
        causes(
            printed(made(later), later),
            finding("RP-TXN-034"),
            finding("RP-PTL-021"),
            finding("RP-PTL-023"),
            finding("RP-PTL-022")));
    for (SampleCard card :
        List.of(
            printed(made(later), TODAY),
            captured(made(later), TODAY),
            greenwich(made(later), day(TODAY) + "101500Z"))) {
      assertEquals(List.of("RP-TXN-061 record 1 1.005: nothing"), causes(card));
    }
  }

  @Test
  void aDateIsTheOddOneWhereOthersOfTwoFieldsAgreeWithinAWeek() {
    LocalDate early = LocalDate.of(2020, 1, 1);
    assertEquals(List.of(), causes(captured(made(early), TODAY)));
    assertEquals(
        List.of("RP-TXN-064 record 1 1.005: nothing"),
        causes(captured(printed(made(early), TODAY), TODAY.minusDays(7))));
    assertEquals(List.of(), causes(captured(printed(made(early), TODAY), TODAY.minusDays(8))));
    assertEquals(List.of(), causes(captured(printed(made(early), TODAY), early.plusDays(1))));
  }

  @Test
  void anOddDateExplainsOnlyWhatIsComparedWithIt() {
    SampleCard card = captured(printed(made(LocalDate.of(2020, 1, 1)), TODAY), TODAY);
    assertEquals(
        List.of("RP-TXN-064 record 1 1.005: RP-TXN-033, RP-PTL-020"),
        causes(
            card,
            finding("RP-TXN-033"),
            required("RP-PTL-020", "no later than 1.005"),
            required("RP-PTL-020", "no later than 2.038"),
            required("RP-TXN-061", "no later than 1.005")));
  }

  @Test
  void whatIsFoundNamesBothDaysAndHowFarTheyAreApart() {
    assertEquals(
        "2026-03-04, 2 days after 2026-03-02: no later than 2026-03-02",
        found(made(TODAY.plusDays(2))));
    assertEquals(
        "2025-03-02, 365 days before 2026-03-02: "
            + "a date close to the other dates in the file, 2026-03-02",
        found(captured(printed(made(TODAY.minusDays(365)), TODAY), TODAY)));
  }

  /** What the first cause of dates found and requires. */
  private static String found(SampleCard card) {
    FindingsReport report = card.examine();
    return report.findings().stream()
        .filter(finding -> finding.ruleId().startsWith("RP-TXN-06"))
        .map(finding -> finding.observed().text() + ": " + finding.required())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aDateThatIsTooShortIsNone() {
    assertEquals(List.of(), causes(greenwich(made(TODAY), "2026")));
  }

  @Test
  void withoutGreenwichTimeNoOtherDateStandsForIt() {
    SampleCard card = captured(made(TODAY), TODAY.minusYears(9));
    assertEquals(Optional.empty(), dates(card).greenwich());
    assertEquals(
        Optional.of(TODAY.minusDays(1)),
        dates(greenwich(card, day(TODAY.minusDays(1)) + "101500Z")).greenwich());
  }

  private static StationDates dates(SampleCard card) {
    return StationDates.of(Established.examinee(card.examine().transaction()));
  }
}
