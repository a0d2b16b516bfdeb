package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.spec.agency.AgencyProfile;
import ridgeproof.spec.agency.AgencyProfileReader;
import ridgeproof.spec.agency.ProfileReading;
import ridgeproof.spec.agency.RelaxedRule;
import ridgeproof.spec.rule.Severity;

class AgencyProfileTest {

  private static final int PARTICULARS = 2;
  private static final String HEAD =
      """
      name = "tidewater"
      title = "Tidewater Harbour Pilots' licensing office"
      """;

  private static final ExaminationOptions OPTIONS =
      ExaminationOptions.standard().withToday(SampleCard.TODAY).withDepth(Depth.STRUCTURE);

  private static AgencyProfile profile(String body) {
    ProfileReading reading = AgencyProfileReader.read(HEAD + body, SampleCard.TABLES);
    return ((ProfileReading.Usable) reading).profile();
  }

  private static FindingsReport examine(SampleCard card, String body) {
    return SampleCard.examine(card.bytes(), OPTIONS.withAgency(profile(body)));
  }

  private static FindingsReport opened(SampleCard card, String body) {
    return SampleCard.examine(
        card.bytes(), OPTIONS.withDepth(Depth.IMAGES).withAgency(profile(body)));
  }

  private static FindingsReport examine(SampleCard card) {
    return SampleCard.examine(card.bytes(), OPTIONS);
  }

  private static List<Finding> of(String rule, FindingsReport report) {
    return report.everyFinding().stream().filter(f -> f.ruleId().equals(rule)).toList();
  }

  @Test
  void anEmptyProfileChangesNothingButTheName() {
    FindingsReport report = examine(SampleCard.rolled(), "");
    assertEquals(examine(SampleCard.rolled()).findings(), report.findings());
    assertEquals("tidewater", report.profile().orElseThrow().name());
    assertEquals(14, report.profile().orElseThrow().prints().size());
    assertTrue(report.profileNamed());
    assertEquals(List.of(), report.relaxed());
  }

  @Test
  void aBaseAndFurtherPrintsAreNeeded() {
    String prints =
        "base = \"identification-flats\"\n[[prints]]\nposition = 1\nkind = \"rolled\"\n";
    FindingsReport report = examine(SampleCard.rolled().without(3), prints);
    // Plain thumbs stand for position 15, and the card has both hands; the rolled thumb is gone.
    assertEquals(
        List.of(1),
        of("RP-TXN-004", report).stream().map(f -> f.location().position().getAsInt()).toList());
  }

  @Test
  void aFileThatImpliesNoPrintsIsHeldToTheAgencysOwn() {
    String prints = "[[prints]]\nposition = 15\nkind = \"slap\"\nor = [11, 12]\n";
    SampleCard card = SampleCard.rolled();
    for (int i = 0; i < 14; i++) {
      card = card.without(3);
    }
    assertEquals(1, of("RP-TXN-004", examine(card, prints)).size());
    // Without prints of the agency's own the type of transaction decides, which needs ten fingers.
    assertEquals(1, of("RP-TXN-041", examine(card, "")).size());
  }

  private static final String OFFICE_NUMBER =
      """
      [[fields]]
      field = "2.9101"
      name = "Submitting office number"
      condition = "mandatory if 1.004 in {FAUF}"
      values = "pattern TW[0-9]{4}"
      meaning = "TW and four digits"
      source = "letter, section 2"
      """;

  @Test
  void aFieldThatTheAgencyNeedsIsMissed() {
    Finding finding = of("RP-PTL-050", examine(SampleCard.rolled(), OFFICE_NUMBER)).get(0);
    assertEquals(Severity.BLOCKING, finding.severity());
    assertEquals("Submitting office number, TW and four digits", finding.required());
    assertEquals("Enter field 2.9101: " + finding.required() + ".", finding.remedy());
    assertEquals("PROFILE", finding.source().document());
    assertEquals("tidewater, letter, section 2", finding.source().place());
  }

  @Test
  void aFieldThatTheAgencyNeedsIsMissedInAFileWithoutItsRecord() {
    SampleCard card = SampleCard.rolled().without(PARTICULARS);
    assertEquals(1, of("RP-PTL-050", examine(card, OFFICE_NUMBER)).size());
  }

  @Test
  void aFieldNeededInAnotherCaseIsNotMissed() {
    String other = OFFICE_NUMBER.replace("FAUF", "NFUF");
    assertEquals(List.of(), of("RP-PTL-050", examine(SampleCard.rolled(), other)));
  }

  @Test
  void aValueThatTheAgencyDoesNotTakeIsReportedAndMasked() {
    SampleCard wrong = SampleCard.rolled().with(PARTICULARS, draft -> draft.with(9101, "TX0001"));
    Finding finding = of("RP-PTL-051", examine(wrong, OFFICE_NUMBER)).get(0);
    assertTrue(finding.observed().personal());
    assertFalse(finding.required().contains("TX0001"));
    SampleCard right = SampleCard.rolled().with(PARTICULARS, draft -> draft.with(9101, "TW0001"));
    assertEquals(examine(SampleCard.rolled()).findings(), examine(right, OFFICE_NUMBER).findings());
  }

  private static String agencyField(String field, String condition, String further) {
    return "[[fields]]\nfield = \"%s\"\nname = \"Field\"\ncondition = \"%s\"\n%s"
        .formatted(field, condition, further);
  }

  private static List<String> told(SampleCard card, String field) {
    return examine(card, field).everyFinding().stream()
        .filter(finding -> finding.ruleId().matches("RP-PTL-05[0-3]"))
        .map(f -> f.ruleId() + " " + f.observed().text() + (f.observed().personal() ? " *" : ""))
        .toList();
  }

  @Test
  void aValueOfAPublicFieldIsMaskedOnlyWhereTheAgencySaysThatItTellsOfAPerson() {
    String values = "values = \"pattern TW.*\"\n";
    assertEquals(
        List.of("RP-PTL-051 \"PILOT-0001\""),
        told(SampleCard.rolled(), agencyField("1.009", "optional", values)));
    assertEquals(
        List.of("RP-PTL-051 \"PILOT-0001\" *"),
        told(SampleCard.rolled(), agencyField("1.009", "optional", values + "personal = true\n")));
  }

  @Test
  void anAgencyMayAskForACodeOfATable() {
    String sex = agencyField("2.037", "optional", "values = \"table sex\"\n");
    SampleCard coded = SampleCard.rolled().with(PARTICULARS, draft -> draft.with(37, "F"));
    assertEquals(List.of(), told(coded, sex));
    assertEquals(List.of("RP-PTL-051 \"PILOT LICENCE\" *"), told(SampleCard.rolled(), sex));
  }

  @Test
  void eachEntryOfAFieldIsHeldToTheValuesOfTheAgency() {
    SampleCard card =
        SampleCard.rolled()
            .with(
                PARTICULARS,
                draft ->
                    draft.with(9101, List.of(List.of("TW0001"), List.of(""), List.of("TX0002"))));
    assertEquals(List.of("RP-PTL-051 \"TX0002\" *"), told(card, OFFICE_NUMBER));
  }

  @Test
  void aFieldWithoutAnyValueIsAsGoodAsMissing() {
    SampleCard card = SampleCard.rolled().with(PARTICULARS, draft -> draft.with(9101, ""));
    assertEquals(List.of("RP-PTL-050 missing"), told(card, OFFICE_NUMBER));
    assertEquals(List.of(), told(card, agencyField("2.9101", "forbidden", "")));
  }

  @Test
  void anImageThatTheAgencyNeedsHasBytes() {
    String needed = agencyField("14.999", "mandatory", "");
    assertEquals(List.of(), told(SampleCard.rolledTagged(), needed));
    SampleCard empty = RuleExamples.tagged(print -> RuleExamples.data(print, new byte[0]));
    assertEquals(List.of("RP-PTL-050 missing"), told(empty, needed));
  }

  @Test
  void aFieldThatTheAgencyRefusesIsReported() {
    String refused =
        "[[fields]]\nfield = \"2.037\"\nname = \"Reason\"\ncondition = \"forbidden\"\n";
    assertEquals(1, of("RP-PTL-052", examine(SampleCard.rolled(), refused)).size());
    String unwanted = refused.replace("forbidden", "deprecated");
    assertEquals(1, of("RP-PTL-053", examine(SampleCard.rolled(), unwanted)).size());
  }

  @Test
  void aRaisedSeverityWorsensTheVerdict() {
    SampleCard card = SampleCard.rolled().with(PARTICULARS, draft -> draft.with(45, "20260101"));
    assertEquals(Verdict.READY, examine(card).verdict());
    FindingsReport report = examine(card, "[severities]\nRP-PTL-006 = \"BLOCKING\"\n");
    assertEquals(Verdict.HOLD, report.verdict());
    assertEquals(List.of(), report.relaxed());
  }

  @Test
  void aLoweredSeverityBettersTheVerdictAndIsListed() {
    SampleCard card = SampleCard.rolled().with(PARTICULARS, draft -> draft.without(20));
    FindingsReport report = examine(card, "[severities]\nRP-PTL-001 = \"ADVICE\"\n");
    assertEquals(Verdict.HOLD, examine(card).verdict());
    assertEquals(Verdict.READY, report.verdict());
    assertEquals(List.of(new RelaxedRule("RP-PTL-001", "BLOCKING", "ADVICE")), report.relaxed());
  }

  @Test
  void aShorterAgeOfPrintsAddsAFinding() {
    SampleCard card = SampleCard.rolled().with(PARTICULARS, draft -> draft.with(38, "20251101"));
    assertEquals(List.of(), of("RP-PTL-024", examine(card)));
    Finding finding = of("RP-PTL-024", examine(card, "[limits]\nprint_age_days = 90\n")).get(0);
    assertEquals("at most 90 days", finding.required());
  }

  @Test
  void aNarrowedResolutionAddsAFinding() {
    SampleCard card = SampleCard.rolledTagged();
    assertEquals(List.of(), of("RP-IMG-008", examine(card)));
    FindingsReport narrowed = examine(card, "[limits]\nresolutions = [1000]\n");
    assertEquals(14 + 1, of("RP-IMG-008", narrowed).size());
    List<Finding> shown =
        narrowed.findings().stream().filter(f -> f.ruleId().equals("RP-IMG-008")).toList();
    assertEquals(1, shown.size(), "what all images share is one finding");
    assertEquals(
        Set.of("tidewater"),
        narrowed.everyFinding().stream()
            .filter(f -> f.ruleId().equals("RP-IMG-008"))
            .map(f -> f.source().place())
            .collect(Collectors.toSet()),
        "of the file as of each image");
    assertEquals(List.of(), of("RP-IMG-008", examine(card, "[limits]\nresolutions = [500]\n")));
  }

  @Test
  void aLowerCompressionCeilingAddsAFinding() {
    SampleCard card = RuleExamples.wsqCard(RidgeImage.usual(), 0.75);
    assertEquals(List.of(), of("RP-IMG-016", opened(card, "")));
    assertEquals(List.of(), of("RP-IMG-016", opened(card, "[limits.compression]\nWSQ = 15\n")));
    Finding finding = of("RP-IMG-016", opened(card, "[limits.compression]\nWSQ = 10\n")).get(0);
    assertEquals("10 : 1, a setting of at least 1.13 bit per pixel", finding.required());
  }

  @Test
  void aHigherCompressionCeilingDropsTheFindingAndIsListed() {
    SampleCard card = RuleExamples.wsqCard(RidgeImage.usual(), 0.5);
    assertEquals(1, of("RP-IMG-016", opened(card, "")).size());
    FindingsReport report = opened(card, "[limits.compression]\nWSQ = 30\n");
    assertEquals(List.of(), of("RP-IMG-016", report));
    assertEquals(
        List.of("RP-IMG-016"), report.relaxed().stream().map(RelaxedRule::ruleId).toList());
  }

  @Test
  void whatReadingFindsIsJudgedByTheProfileToo() {
    byte[] card = SampleCard.rolled().bytes();
    byte[] longer = Arrays.copyOf(card, card.length + 5);
    AgencyProfile stricter = profile("[severities]\nRP-STR-013 = \"BLOCKING\"\n");
    FindingsReport plain = SampleCard.examine(longer, OPTIONS);
    FindingsReport judged = SampleCard.examine(longer, OPTIONS.withAgency(stricter));
    assertEquals(Severity.LIKELY, of("RP-STR-013", plain).get(0).severity());
    assertEquals(Severity.BLOCKING, of("RP-STR-013", judged).get(0).severity());
  }

  private static String accepted(String station, String lastDay) {
    return "[[accepted]]\nrule = \"RP-TXN-004\"\n"
        + (station.isEmpty() ? "" : "station = \"" + station + "\"\n")
        + "reason = \"the scanner of the pier is in repair\"\n"
        + "last_day = \""
        + lastDay
        + "\"\n";
  }

  @Test
  void whatTheAgencyAcceptsForAWhileIsANoteAndIsListedUntilItsLastDay() {
    SampleCard card = SampleCard.rolled().without(3);
    Severity published = of("RP-TXN-004", examine(card)).get(0).severity();
    FindingsReport lastDay = examine(card, accepted("", "2026-03-02"));
    assertEquals(Severity.NOTE, of("RP-TXN-004", lastDay).get(0).severity());
    assertEquals(
        List.of(
            new RelaxedRule(
                "RP-TXN-004",
                published.name(),
                "accepted until 2026-03-02: the scanner of the pier is in repair")),
        lastDay.relaxed());
    FindingsReport after = examine(card, accepted("", "2026-03-01"));
    assertEquals(published, of("RP-TXN-004", after).get(0).severity());
    assertEquals(List.of(), after.relaxed());
  }

  @Test
  void whatIsAcceptedOfOneStationIsNotAcceptedOfAnother() {
    FindingsReport report =
        examine(SampleCard.rolled().without(3), accepted("HARBORLIGHT", "2026-12-31"));
    assertEquals(Severity.BLOCKING, of("RP-TXN-004", report).get(0).severity());
    assertEquals(List.of(), report.relaxed());
  }

  @Test
  void nothingIsListedAsAcceptedThatTheFileDoesNotHave() {
    assertEquals(List.of(), examine(SampleCard.rolled(), accepted("", "2026-12-31")).relaxed());
  }

  @Test
  void anAcceptanceNeedsAReasonAndADay() {
    for (String body :
        List.of(
            "[[accepted]]\nrule = \"RP-TXN-004\"\nlast_day = \"2026-12-31\"\n",
            "[[accepted]]\nrule = \"RP-TXN-004\"\nreason = \"repair\"\n",
            "[[accepted]]\nrule = \"RP-TXN-004\"\nreason = \"x\"\nlast_day = \"soon\"\n",
            accepted("", "2026-12-31").replace("TXN-004", "TXN-999"))) {
      assertTrue(
          AgencyProfileReader.read(HEAD + body, SampleCard.TABLES)
              instanceof ProfileReading.Unusable,
          body);
    }
  }
}
