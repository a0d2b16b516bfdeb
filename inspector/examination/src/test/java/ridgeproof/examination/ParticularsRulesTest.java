package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
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

  static Stream<Arguments> offendingAndConforming() {
    return Stream.of(
        Arguments.of("RP-PTL-010", with(20, "US"), with(20, "MD")),
        Arguments.of("RP-PTL-011", with(20, "ZQ"), with(20, "GE")),
        Arguments.of("RP-PTL-011", with(21, "ZQ"), with(21, "GE")),
        Arguments.of("RP-PTL-012", with(20, "NE"), with(20, "NB")),
        Arguments.of("RP-PTL-013", with(21, "MD"), with(21, "US")),
        Arguments.of("RP-PTL-020", with(22, "20260303"), with(22, "19260303")),
        Arguments.of("RP-PTL-020", with(22, "20260400"), with(22, "19900200")),
        Arguments.of("RP-PTL-021", with(38, "20260303"), with(38, "20260302")),
        Arguments.of("RP-PTL-022", arrest("20260303"), arrest("20260302")),
        Arguments.of("RP-PTL-022", offence("20260303"), offence("20260302")),
        Arguments.of("RP-PTL-023", with(22, "20190101"), with(22, "20080101")),
        Arguments.of("RP-PTL-023", with(22, "19200101"), with(22, "00000000")),
        Arguments.of("RP-PTL-024", with(38, "20250301"), with(38, "20250302")),
        Arguments.of("RP-PTL-030", with(73, "123456789"), with(73, "MDTHP0001")),
        Arguments.of("RP-PTL-030", with(15, "12345678"), with(15, "MD123456")),
        Arguments.of("RP-PTL-031", with(14, "ABC"), with(14, "123456A7")),
        Arguments.of("RP-PTL-032", with(16, "666121234"), with(16, "212121234")),
        Arguments.of("RP-PTL-032", with(16, "212001234"), with(16, "212010001")),
        Arguments.of("RP-PTL-032", with(14, "0000000"), with(14, "1000000")),
        Arguments.of("RP-PTL-033", with(16, "111111111"), with(16, "111111112")),
        Arguments.of("RP-PTL-033", with(37, "n/a"), with(37, "PILOT LICENCE")),
        Arguments.of("RP-PTL-033", with(73, "MD0000000"), with(73, "MD0000001")),
        Arguments.of("RP-PTL-034", with(27, "N20"), with(27, "N67")),
        Arguments.of("RP-PTL-035", latent(30, "180120"), latent(30, "120180")),
        Arguments.of("RP-PTL-035", latent(28, "N70507"), latent(28, "507N70")),
        Arguments.of("RP-PTL-035", latent(23, "4030"), latent(23, "3040")),
        Arguments.of("RP-PTL-036", with(29, "060"), with(29, "000")),
        Arguments.of("RP-PTL-036", with(29, "480"), with(29, "180")),
        Arguments.of("RP-PTL-037", with(17, "QQ-1234"), with(17, "PP-1234")),
        Arguments.of("RP-PTL-040", with(18, "ADA SPECIMEN"), with(18, "SPECIMEN,ADA")),
        Arguments.of("RP-PTL-040", with(18, "SPECIMEN, ADA"), with(18, "SPECIMEN,ADA MARIA")),
        Arguments.of("RP-PTL-040", with(18, "Specimen,Ada"), with(18, "SPECIMEN-ADA,EVE")),
        Arguments.of("RP-PTL-040", with(19, "ADA"), with(19, "SPECIMEN,EVE")),
        Arguments.of(
            "RP-PTL-041", with(18, "SPECIMEN,ADA M."), with(18, "SPECIMEN-O'ROCK,ADA MAY")),
        Arguments.of("RP-PTL-041", with(18, "SPECIMEN,ADA,MAY"), with(18, "VON SPECIMEN,ADA JR")),
        Arguments.of("RP-PTL-042", with(18, "SPECIMEN JR,ADA"), with(18, "SPECIMEN,ADA JR")),
        Arguments.of("RP-PTL-042", with(18, "SPECIMEN,III ADA"), with(18, "JR,ADA")),
        Arguments.of(
            "RP-PTL-043", withEach(19, "SPECIMEN,EVE", "SPECIMEN, ADA"), with(19, "SPECIMEN,EVE")));
  }

  private static SampleCard arrest(String date) {
    return criminal().with(PARTICULARS, draft -> draft.with(45, date));
  }

  private static SampleCard offence(String date) {
    return criminal()
        .with(PARTICULARS, draft -> draft.with(47, List.of(List.of(date, "SMUGGLING"))));
  }

  private static SampleCard criminal() {
    return ofType("CAR", card())
        .with(
            PARTICULARS,
            draft ->
                draft
                    .without(37)
                    .with(45, "20260302")
                    .with(47, List.of(List.of("20260301", "SMUGGLING"))));
  }

  private static SampleCard latent(int field, String value) {
    return ofType("LFS", card()).with(PARTICULARS, draft -> draft.with(field, value));
  }

  @ParameterizedTest(name = "{0}, {index}")
  @MethodSource("offendingAndConforming")
  void eachRuleTellsAnOffendingEntryFromAConformingOne(
      String rule, SampleCard offending, SampleCard conforming) {
    assertEquals(
        1, ids(offending).stream().filter(rule::equals).count(), ids(offending).toString());
    assertFalse(ids(conforming).contains(rule), ids(conforming).toString());
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
  void everyRuleOfTheAreaHasAnExample() {
    Set<String> tested = new TreeSet<>();
    offendingAndConforming().forEach(example -> tested.add((String) example.get()[0]));
    Set<String> area = new TreeSet<>();
    Examiner.ruleIds().stream().filter(id -> id.startsWith("RP-PTL")).forEach(area::add);
    Set<String> elsewhere = new HashSet<>();
    for (String number : List.of("001", "002", "003", "004", "005", "006", "054")) {
      elsewhere.add("RP-PTL-" + number);
    }
    area.removeAll(elsewhere);
    area.removeIf(id -> id.compareTo("RP-PTL-050") >= 0);
    assertEquals(area, tested);
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
