package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.writer.RecordDraft;

class ParticularsRulesTest {

  private static final int HEADER = 1;
  private static final int PARTICULARS = 2;
  private static final String REPEATED = "RP-PTL-054";

  private static SampleCard card() {
    return SampleCard.rolled();
  }

  private static SampleCard with(int field, String value) {
    return card().with(PARTICULARS, draft -> draft.with(field, value));
  }

  private static SampleCard withEach(int field, String... values) {
    List<List<String>> subfields = Stream.of(values).map(List::of).toList();
    return card().with(PARTICULARS, draft -> draft.with(field, subfields));
  }

  private static SampleCard without(int... fields) {
    return card()
        .with(
            PARTICULARS,
            draft -> {
              RecordDraft rest = draft;
              for (int field : fields) {
                rest = rest.without(field);
              }
              return rest;
            });
  }

  private static SampleCard ofType(String type, SampleCard card) {
    return card.with(HEADER, draft -> draft.with(4, type));
  }

  private static List<Finding> findings(SampleCard card) {
    return card.examine().findings().stream()
        .filter(finding -> finding.rule().area().equals("PTL"))
        .toList();
  }

  private static List<String> ids(SampleCard card) {
    return findings(card).stream().map(Finding::ruleId).toList();
  }

  private static Finding only(SampleCard card) {
    List<Finding> findings = findings(card);
    assertEquals(1, findings.size(), findings.toString());
    return findings.get(0);
  }

  @Test
  void aCompleteCardHasNoFindingOfTheArea() {
    assertEquals(List.of(), findings(card()));
  }

  @Test
  void eachMissingParticularIsAFindingOfItsOwn() {
    List<Finding> findings = findings(without(20, 73));
    assertEquals(
        List.of("RP-PTL-001 2.020", "RP-PTL-001 2.073"),
        findings.stream().map(f -> f.ruleId() + " " + f.location().field().get()).toList());
    assertTrue(findings.stream().allMatch(f -> f.severity() == Severity.BLOCKING));
  }

  @Test
  void anEmptyParticularIsMissing() {
    Finding finding = only(with(20, ""));
    assertEquals("RP-PTL-001", finding.ruleId());
    assertEquals("empty", finding.observed().text());
  }

  @Test
  void aParticularNeededInSomeCaseOnlyIsLikely() {
    SampleCard request = ofType("IRQ", SampleCard.rolled());
    assertTrue(ids(request).contains("RP-PTL-002"), ids(request).toString());
    SampleCard answered = request.with(PARTICULARS, draft -> draft.with(85, "C1"));
    assertFalse(ids(answered).contains("RP-PTL-002"), ids(answered).toString());
  }

  @Test
  void aRecordWithoutAnyParticularIsReportedOnce() {
    SampleCard placeholder =
        without(5, 18, 20, 22, 24, 25, 27, 29, 31, 32, 37, 38, 73)
            .with(PARTICULARS, draft -> draft.with(3, "PLACEHOLDER"));
    Finding finding = only(placeholder);
    assertEquals("RP-PTL-003", finding.ruleId());
    assertEquals(Severity.LIKELY, finding.severity());
    assertEquals("the 13 fields required for FAUF", finding.required());
  }

  @Test
  void aFileWithoutTypeTwoRecordIsReportedOnce() {
    Finding finding = only(card().without(PARTICULARS));
    assertEquals("RP-PTL-003", finding.ruleId());
    assertEquals("no Type-2 record", finding.observed().text());
  }

  @Test
  void anUnknownTypeOfTransactionIsToBeReviewed() {
    Finding finding = only(ofType("QQQ", card()));
    assertEquals("RP-PTL-004", finding.ruleId());
    assertEquals(Severity.LIKELY, finding.severity());
  }

  @Test
  void aTypeOfTransactionWithoutListIsNoted() {
    assertEquals("RP-PTL-005", only(ofType("LSMQ", card())).ruleId());
  }

  @Test
  void aParticularOfAnotherTypeOfTransactionIsAdvice() {
    Finding finding = only(with(45, "20260101"));
    assertEquals("RP-PTL-006", finding.ruleId());
    assertEquals(Severity.ADVICE, finding.severity());
    assertEquals("2.045", finding.location().field().get().toString());
  }

  @Test
  void aFieldThatRepeatsMoreThanItsTypeOfTransactionAllowsIsReportedOnce() {
    String[] ten = new String[10];
    Arrays.fill(ten, "GE");
    String[] eleven = Arrays.copyOf(ten, 11);
    eleven[10] = "US";
    assertFalse(ids(withEach(21, ten)).contains(REPEATED));
    Finding finding = only(withEach(21, eleven));
    assertEquals(REPEATED, finding.ruleId());
    assertEquals("11 entries", finding.observed().text());
    assertEquals("at most 10 entries", finding.required());
  }

  @Test
  void theLayoutsOwnLimitIsNotReportedASecondTime() {
    SampleCard card = withEach(73, "MDTHP0001", "A1", "A2", "A3");
    assertFalse(ids(card).contains(REPEATED));
  }

  @Test
  void anAgencysOwnFieldIsLetPass() {
    assertEquals(List.of(), ids(with(9101, "TW0001")));
  }

  @Test
  void anotherDomainIsNotHeldToTheParticularsOfThisOne() {
    SampleCard elsewhere =
        without(20, 73).with(HEADER, draft -> draft.with(13, List.of(List.of("PILOTS", ""))));
    Finding finding = only(elsewhere);
    assertEquals("RP-PTL-060", finding.ruleId());
    assertEquals(Severity.LIKELY, finding.severity());
  }

  @Test
  void anAgeThatNobodyHasIsMoreThanUnlikely() {
    for (String born : List.of("20250101", "19000101")) {
      List<String> rules =
          with(22, born).examine().findings().stream().map(Finding::ruleId).toList();
      assertEquals(List.of("RP-TXN-070"), rules, born);
    }
    assertEquals(List.of(), ids(with(22, "19300101")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"THP00001", "thp000001", "THP-00001", "THP 00001", "THP0000011"})
  void anAgencyIdentifierOfAnotherFormIsCommonlyRejected(String identifier) {
    Finding finding =
        SampleCard.rolled()
            .with(HEADER, draft -> draft.with(8, identifier))
            .examine()
            .findings()
            .stream()
            .filter(found -> found.ruleId().equals("RP-PTL-030"))
            .findFirst()
            .orElseThrow();
    assertEquals(Severity.LIKELY, finding.severity());
    assertEquals("1.008", finding.location().field().orElseThrow().toString());
  }

  @Test
  void everyRowOfTheAreaInTheCatalogueIsReportedByARule() {
    Set<String> catalogue = new TreeSet<>();
    SampleCard.TABLES.catalogue().rules().stream()
        .filter(rule -> rule.area().equals("PTL"))
        .forEach(rule -> catalogue.add(rule.id()));
    Set<String> rules = new TreeSet<>(Examiner.ruleIds());
    rules.removeIf(id -> !id.startsWith("RP-PTL"));
    assertEquals(catalogue, rules);
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "18, ADA SPECIMEN",
    "20, US",
    "20, NE",
    "21, MD",
    "22, 20260303",
    "22, 20190101",
    "16, 666121234",
    "29, 060",
    "27, N20",
    "38, 20250301",
    "17, QQ-1234"
  })
  void whatTellsOfAPersonIsMarkedAndStandsInNoOtherText(int field, String value) {
    for (Finding finding : findings(with(field, value))) {
      assertTrue(finding.observed().personal(), finding.toString());
      String texts = finding.required() + finding.explanation() + finding.remedy();
      assertFalse(texts.contains("\"" + value), texts);
      assertEquals(List.of(), finding.evidence());
    }
    assertFalse(findings(with(field, value)).isEmpty());
  }

  @Test
  void theDayOfTheExaminationLimitsDatesWithADayForTimeZones() {
    byte[] bytes = card().bytes();
    ExaminationOptions options = ExaminationOptions.standard().withDepth(Depth.IMAGES);
    assertEquals(List.of(), ids(bytes, options.withToday(SampleCard.TODAY.minusDays(1))));
    assertEquals(
        List.of("RP-PTL-021"), ids(bytes, options.withToday(SampleCard.TODAY.minusDays(2))));
  }

  private static List<String> ids(byte[] bytes, ExaminationOptions options) {
    // A card that is all in the future has a cause, of which these are consequences.
    return SampleCard.examine(bytes, options).everyFinding().stream()
        .map(Finding::ruleId)
        .filter(id -> id.startsWith("RP-PTL"))
        .toList();
  }

  @Test
  void anEntryThatBreaksItsLayoutIsNotReportedASecondTime() {
    assertEquals(List.of(), ids(with(16, "66612123")));
    assertEquals(List.of(), ids(with(73, "12")));
    assertEquals(List.of(), ids(with(22, "20261301")));
  }

  @Test
  void someoneBornAbroadWithTheCitizenshipOfTheCountryIsNotAskedForTheState() {
    SampleCard born = with(20, "NE").with(PARTICULARS, draft -> draft.with(21, "NE"));
    assertEquals(List.of(), ids(born));
  }
}
