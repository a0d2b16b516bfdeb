package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

/**
 * Every finger that the type of transaction needs is accounted for, whatever the set looks like.
 */
class WholeSetTest {

  private static final String LEFT_HAND = "whole left hand: thumb, index, middle, ring, little";
  private static final String LEFT_FINGERS =
      "left thumb, left index finger, left middle finger, left ring finger, left little finger";

  @ParameterizedTest
  @ValueSource(
      strings = {"FAUF", "CAR", "CNA", "CPDR", "CPNU", "AMN", "DEK", "DEU", "MAP", "NFUF", "NNDR"})
  void anApplicantOrArrestWithoutAnyImageIsHeld(String type) {
    Finding finding = only(SampleCard.ofType(type), "RP-TXN-041");
    assertEquals(Severity.BLOCKING, finding.severity());
    assertEquals("no image of any finger", finding.observed().text());
  }

  @Test
  void bothSlapsWithoutThumbsLackBothThumbsInOneFinding() {
    SampleCard card = SampleCard.ofType("FAUF", 13, 14);
    Finding finding = only(card, "RP-TXN-040");
    assertEquals("both thumbs", finding.observed().text());
    assertTrue(finding.remedy().contains("right thumb, left thumb"), finding.remedy());
    assertEquals(Verdict.HOLD, card.examine().verdict());
    assertEquals("identification-flats", profile(card));
  }

  @Test
  void oneRolledFingerLacksTheOtherNineByHand() {
    List<Finding> findings = completeness(SampleCard.ofType("FAUF", 1));
    assertEquals(List.of("RP-TXN-040", "RP-TXN-040"), ids(findings));
    assertEquals("right hand: index, middle, ring, little", findings.get(0).observed().text());
    assertEquals(LEFT_HAND, findings.get(1).observed().text());
    assertTrue(findings.get(1).remedy().contains(LEFT_FINGERS), findings.get(1).remedy());
  }

  @Test
  void oneSlapLacksTheThumbAndTheOtherHand() {
    List<Finding> findings = completeness(SampleCard.ofType("FAUF", 13));
    assertEquals(List.of("RP-TXN-004", "RP-TXN-040"), ids(findings));
    assertEquals(OptionalInt.of(1), findings.get(0).location().position());
    assertEquals(LEFT_HAND, findings.get(1).observed().text());
  }

  @Test
  void fiveRollsOfAHandLackTheOtherHandAndThePlainPrints() {
    List<Finding> findings = completeness(SampleCard.ofType("FAUF", 1, 2, 3, 4, 5));
    assertEquals(List.of("RP-TXN-040", "RP-TXN-042"), ids(findings));
    assertEquals(LEFT_HAND, findings.get(0).observed().text());
    assertEquals(
        "not in the file: plain right thumb, plain right four fingers",
        findings.get(1).observed().text());
  }

  @Test
  void tenRollsWithoutPlainPrintsAreToBeReviewed() {
    SampleCard card = SampleCard.ofType("FAUF", IntStream.rangeClosed(1, 10).toArray());
    Finding finding = only(card, "RP-TXN-042");
    assertEquals(Severity.LIKELY, finding.severity());
    assertEquals(
        "plain right thumb, plain left thumb, plain right four fingers,"
            + " plain left four fingers (rolled tenprint card)",
        finding.required());
    assertEquals(Verdict.REVIEW, card.examine().verdict());
  }

  @Test
  void everyFingerInCombinationsIsNoAcceptedSet() {
    Finding finding = only(SampleCard.ofType("FAUF", 11, 12, 40, 42, 43, 45), "RP-TXN-042");
    assertEquals(
        "not in the file: plain right four fingers, plain left four fingers",
        finding.observed().text());
  }

  @Test
  void aRolledCardOrFlatsWithThumbsTogetherOrSingleAreWhole() {
    assertEquals(
        List.of(), completeness(SampleCard.ofType("FAUF", IntStream.rangeClosed(1, 14).toArray())));
    assertEquals(List.of(), completeness(SampleCard.ofType("FAUF", 13, 14, 15)));
    assertEquals(List.of(), completeness(SampleCard.ofType("FAUF", 11, 12, 13, 14)));
    SampleCard inTheirRolledBoxes =
        SampleCard.ofType("FAUF", 13, 14)
            .plus(SampleCard.taggedPrint(1, 1, 0))
            .plus(SampleCard.taggedPrint(6, 6, 0));
    assertEquals(List.of(), completeness(inTheirRolledBoxes));
  }

  @Test
  void aRollThatIsNotThereIsNamedThoughAPlainPrintIs() {
    int[] positions = IntStream.rangeClosed(1, 14).filter(p -> p != 7).toArray();
    Finding finding = only(SampleCard.ofType("FAUF", positions), "RP-TXN-004");
    assertEquals(Severity.BLOCKING, finding.severity());
    assertEquals(OptionalInt.of(7), finding.location().position());
  }

  @Test
  void anAnnotatedFingerIsAccountedForWhereverItIsAnnotated() {
    SampleCard flats = SampleCard.ofType("FAUF", 13, 14, 11);
    assertEquals(List.of("RP-TXN-004"), ids(completeness(flats)));
    assertEquals(List.of(), completeness(annotated(flats, "06", "XX")));
    SampleCard inTheRecord =
        flats.plus(
            SampleCard.taggedPrint(12, 12, 0).with(18, List.of(List.of("6", "UP"))).without(999));
    assertEquals(List.of(), completeness(inTheRecord));
  }

  @Test
  void aRecordWithoutImageAccountsOnlyForTheFingersThatItAnnotates() {
    SampleCard card =
        SampleCard.ofType("FAUF", 13, 15)
            .plus(
                SampleCard.taggedPrint(14, 14, 0)
                    .with(18, List.of(List.of("7", "XX")))
                    .without(999));
    Finding finding = only(card, "RP-TXN-040");
    assertEquals("left hand: middle, ring, little", finding.observed().text());
  }

  @Test
  void whatIsLeftOfAHandMayBePrintedOtherwise() {
    SampleCard card = annotated(SampleCard.ofType("FAUF", 13, 15, 44, 10), "07", "XX");
    SampleCard plain =
        annotated(SampleCard.ofType("FAUF", 13, 15, 44), "07", "XX")
            .plus(SampleCard.taggedPrint(10, 10, 0));
    assertEquals(List.of(), completeness(plain));
    assertEquals(List.of("RP-TXN-042"), ids(completeness(card)));
  }

  @Test
  void aLatentIsNoPrintOfTheSet() {
    SampleCard card = SampleCard.ofType("FAUF", 13, 14).plus(SampleCard.taggedPrint(15, 15, 4));
    assertEquals(List.of("RP-TXN-040"), ids(completeness(card)));
  }

  @ParameterizedTest
  @CsvSource({"FVR,RP-TXN-043", "FNCC,RP-TXN-043", "FDSP,RP-TXN-043"})
  void whereSourcesDoNotSettleTheNeedTheFileIsReviewedAndNotHeld(String type, String rule) {
    Finding finding = only(SampleCard.ofType(type, 1, 2), rule);
    assertEquals(Severity.LIKELY, finding.severity());
    assertTrue(finding.required().endsWith("left little finger"));
  }

  @Test
  void aFileWithNoneOfTheFieldsOfItsTypeIsReviewedForThatAndNotHeld() {
    SampleCard card =
        SampleCard.ofType("FAUF")
            .with(
                2,
                draft ->
                    RecordDraft.tagged(
                        2,
                        List.of(
                            SampleCard.text(2, 1, ""),
                            SampleCard.text(2, 2, "00"),
                            SampleCard.text(2, 3, "PLACEHOLDER"))));
    assertEquals(List.of("RP-TXN-051"), ids(completeness(card)));
    assertEquals(Verdict.REVIEW, card.examine().verdict());
    assertEquals(
        "the file has none of the fields required for its type of transaction",
        report(card).completenessGap().orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(strings = {"SRE", "ERRT", "IRQ", "TXTSRCH", "RBMNT", "LPNQ", "ISR"})
  void responsesAndTextQueriesAreNotAskedForPrints(String type) {
    assertEquals(List.of(), completeness(SampleCard.ofType(type)));
    assertFalse(report(SampleCard.ofType(type)).completenessGap().isPresent());
  }

  @Test
  void aLatentTransactionNeedsALatent() {
    assertEquals(Severity.BLOCKING, only(SampleCard.ofType("LFIS"), "RP-TXN-044").severity());
    assertEquals(Severity.BLOCKING, only(SampleCard.ofType("LFS"), "RP-TXN-044").severity());
    assertEquals(Severity.LIKELY, only(SampleCard.ofType("ELR"), "RP-TXN-045").severity());
    assertEquals(Severity.LIKELY, only(SampleCard.ofType("LFS", 1), "RP-TXN-046").severity());
    SampleCard latent = SampleCard.ofType("LFS").plus(SampleCard.taggedPrint(1, 0, 4));
    assertEquals(List.of(), completeness(latent));
  }

  @Test
  void aFacialSearchNeedsAFaceAndAFeatureSearchFeatures() {
    assertEquals(Severity.BLOCKING, only(SampleCard.ofType("FRS"), "RP-TXN-050").severity());
    Finding features = only(SampleCard.ofType("LFFS"), "RP-TXN-050");
    assertEquals("0 Type-9 records", features.observed().text());
    assertEquals("at least 1 in LFFS", features.required());
  }

  @Test
  void aRapidSearchNeedsSomePrintAndNoSet() {
    assertEquals(Severity.BLOCKING, only(SampleCard.ofType("RPIS"), "RP-TXN-044").severity());
    assertEquals(List.of(), completeness(SampleCard.ofType("RPIS", 2)));
  }

  @Test
  void moreRecordsThanListedAreToBeReviewedAndOthersNoted() {
    SampleCard card = SampleCard.rolled();
    for (int i = 0; i < 3; i++) {
      card = card.plus(SampleCard.binaryPrint(15 + i, 15, 0));
    }
    Finding finding = only(card, "RP-TXN-048");
    assertEquals(Severity.LIKELY, finding.severity());
    assertEquals("17 Type-4 records", finding.observed().text());
    assertEquals("at most 14 in FAUF", finding.required());
    assertEquals(OptionalInt.of(17), finding.location().record());
  }

  @Test
  void aTypeWithoutKnownNeedsSaysSo() {
    SampleCard card = SampleCard.ofType("IIDS");
    assertEquals(Severity.NOTE, only(card, "RP-TXN-051").severity());
    assertEquals(
        "no published list says which records IIDS needs",
        report(card).completenessGap().orElseThrow());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fauf|FAUF (codes are in capital letters, without spaces)",
        "FAUG|a published type of transaction; similar codes: FAUF",
        "FUAF|a published type of transaction; similar codes: FAUF",
        "NFUFF|a published type of transaction; similar codes: NFUF",
        "XYZ123|a published type of transaction"
      })
  void aTypeInNoListIsReviewedWithNearMisses(String type, String required) {
    SampleCard card = SampleCard.ofType(type, IntStream.rangeClosed(1, 14).toArray());
    List<Finding> findings =
        card.examine().findings().stream().filter(f -> f.ruleId().equals("RP-PTL-004")).toList();
    assertEquals(1, findings.size());
    assertEquals(required, findings.get(0).required());
    assertEquals(Verdict.REVIEW, card.examine().verdict());
    assertEquals(
        "the type of transaction is not in any published list",
        report(card).completenessGap().orElseThrow());
  }

  @Test
  void aNamedProfileOverridesTheTypeOfTransaction() {
    SubmissionProfile flats = SampleCard.TABLES.profile("identification-flats");
    ExaminationOptions options =
        ExaminationOptions.standard()
            .withToday(SampleCard.TODAY)
            .withDepth(Depth.IMAGES)
            .withProfile(flats);
    FindingsReport whole =
        SampleCard.examine(SampleCard.ofType("IRQ", 13, 14, 15).bytes(), options);
    assertEquals(List.of(), ids(completeness(whole)));
    FindingsReport lacking = SampleCard.examine(SampleCard.ofType("IRQ", 13, 15).bytes(), options);
    assertEquals(List.of("RP-TXN-040"), ids(completeness(lacking)));
    assertFalse(lacking.completenessGap().isPresent());
  }

  @ParameterizedTest
  @CsvSource({
    "ZIP99,00", // no such code
    "'',00", // no code
    "WSQ20,FFA0FFA4", // cut after the first marker
    "PNG,89504E470D0A1A0A",
    "JPEGB,FFD8FFE000104A464946",
    "JP2,0000000C6A5020200D0A870A",
    "NONE,47494638396120002000" // a format that is never sent
  })
  void anImageThatIsNotDecodedIsNeverReady(String compression, String beginning) {
    SampleCard undecodable =
        SampleCard.rolledTagged()
            .with(3, draft -> draft.with(11, compression))
            .withField(
                3,
                FieldDraft.data(
                    new FieldNumber(14, 999), ByteSource.of(HexFormat.of().parseHex(beginning))));
    FindingsReport report = undecodable.examine();
    assertTrue(report.images().get(0).pixels().isEmpty());
    assertTrue(report.verdict().compareTo(Verdict.REVIEW) >= 0, report.findings().toString());
    boolean told =
        report.findings().stream()
            .anyMatch(
                f ->
                    f.ruleId().startsWith("RP-IMG-0")
                        && f.severity().worseThan(Severity.ADVICE)
                        && f.location().record().equals(OptionalInt.of(3)));
    assertTrue(told, report.findings().toString());
  }

  @Test
  void anEmptyImageIsNoImage() {
    SampleCard card =
        SampleCard.rolledTagged()
            .withField(3, FieldDraft.data(new FieldNumber(14, 999), SampleCard.pixels(0)));
    assertEquals(Verdict.HOLD, card.examine().verdict());
  }

  @Test
  void marksOfAMissingFingerAgreeWithTheAnnotations() {
    SampleCard whole = SampleCard.rolled();
    assertEquals(List.of("RP-TXN-052"), marks(whole, "MISS L FGR"));
    assertEquals(List.of("RP-TXN-052"), marks(whole, "MISS R HND"));
    assertEquals(List.of(), marks(whole, "TAT L ARM"));
    assertEquals(List.of(), marks(whole, "MISS L FJT"));
    SampleCard amputee = annotated(whole.without(9), "07", "XX");
    assertEquals(List.of(), marks(amputee, "MISS L FGR"));
    assertEquals(List.of("RP-TXN-052", "RP-TXN-053"), marks(amputee, "MISS R FGR"));
    assertEquals(List.of("RP-TXN-053"), marks(amputee, "TAT L ARM"));
    assertEquals(List.of(), marks(annotated(whole.without(9), "07", "UP"), "TAT L ARM"));
  }

  private static List<String> marks(SampleCard card, String mark) {
    return card.with(2, draft -> draft.with(26, mark)).examine().findings().stream()
        .map(Finding::ruleId)
        .filter(id -> id.equals("RP-TXN-052") || id.equals("RP-TXN-053"))
        .toList();
  }

  private static SampleCard annotated(SampleCard card, String finger, String reason) {
    return card.with(2, draft -> draft.with(84, List.of(List.of(finger, reason))));
  }

  private static FindingsReport report(SampleCard card) {
    return card.examine();
  }

  private static String profile(SampleCard card) {
    return card.examine().profile().orElseThrow().name();
  }

  private static Finding only(SampleCard card, String rule) {
    List<Finding> findings = completeness(card);
    assertEquals(List.of(rule), ids(findings));
    return findings.get(0);
  }

  private static List<String> ids(List<Finding> findings) {
    return findings.stream().map(Finding::ruleId).toList();
  }

  private static List<Finding> completeness(SampleCard card) {
    return completeness(card.examine());
  }

  /** What is said of the set; that a finger is annotated is only noted. */
  private static List<Finding> completeness(FindingsReport report) {
    return report.everyFinding().stream()
        .filter(f -> f.ruleId().matches("RP-TXN-(004|005|007|010|04[0-8]|05[0145])"))
        .sorted(Comparator.comparing(f -> f.location().record().orElse(0)))
        .toList();
  }
}
