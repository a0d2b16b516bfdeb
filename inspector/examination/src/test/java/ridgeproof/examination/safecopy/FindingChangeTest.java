package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RecommendedAction;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.safecopy.FindingChange.Reason;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.record.ByteRange;

class FindingChangeTest {

  private static final String VALUE = "RP-FLD-001";
  private static final FindingsReport CARD = SampleCard.ofType("FAUF", 1).examine();
  private static final Location NAME = Location.inRecord(2, 2).in(new FieldNumber(2, 18));

  private static FindingsReport report(Finding... findings) {
    return MadeReport.of(CARD, findings);
  }

  private static List<Finding> missing(FindingsReport from, FindingsReport in) {
    return FindingChange.missing(from, in).stream().map(FindingChange::finding).toList();
  }

  @Test
  void aFindingAtTheSamePlaceIsTheSameWhateverWasObserved() {
    Finding one = MadeReport.finding(VALUE, NAME.at(new ByteRange(10, 3)), "one");
    Finding other = MadeReport.finding(VALUE, NAME.at(new ByteRange(20, 3)), "other");
    assertEquals(List.of(), missing(report(one), report(other)));
  }

  @Test
  void atAnotherPlaceOrOfAnotherRuleItIsAnother() {
    Finding here = MadeReport.finding(VALUE, NAME);
    for (Finding other :
        List.of(
            MadeReport.finding("RP-FLD-002", NAME),
            MadeReport.finding(VALUE, Location.inRecord(3, 2).in(new FieldNumber(2, 18))),
            MadeReport.finding(VALUE, NAME.in(new FieldNumber(2, 19))),
            MadeReport.finding(VALUE, NAME.withPosition(OptionalInt.of(2))))) {
      assertEquals(List.of(here), missing(report(here), report(other)));
    }
  }

  @Test
  void aFindingThatStoodTwiceIsMissingOnceWhereItStandsOnce() {
    Finding here = MadeReport.finding(VALUE, NAME);
    assertEquals(List.of(here), missing(report(here, here), report(here)));
    assertEquals(List.of(), missing(report(here), report(here, here)));
    assertEquals(List.of(here, here), missing(report(here, here), report()));
  }

  @Test
  void whatACauseExplainsIsNotMissedButCountsWhereItIsThere() {
    Finding explained = MadeReport.caused(VALUE, NAME, "RP-FLD-002");
    assertEquals(List.of(), missing(report(explained), report()));
    assertEquals(List.of(), missing(report(MadeReport.finding(VALUE, NAME)), report(explained)));
  }

  private static Location feature(int subfield, int type) {
    FieldNumber number = new FieldNumber(type, 12);
    Location place = Location.inRecord(4, type).in(number);
    return new Location(
        place.record(),
        place.recordType(),
        place.idc(),
        place.field(),
        OptionalInt.of(subfield),
        OptionalInt.of(subfield),
        place.bytes(),
        place.position(),
        place.text());
  }

  @Test
  void aFeatureMayStandInAnotherSubfieldAndNothingElseMay() {
    FindingsReport first = report(MadeReport.finding(VALUE, feature(1, 9)));
    assertEquals(List.of(), missing(first, report(MadeReport.finding(VALUE, feature(5, 9)))));
    Finding value = MadeReport.finding(VALUE, feature(1, 2));
    assertEquals(
        List.of(value), missing(report(value), report(MadeReport.finding(VALUE, feature(5, 2)))));
  }

  @ParameterizedTest
  @CsvSource({
    "RP-IMG-001, 14, 0, IMAGE_REPLACED",
    "RP-RDG-004, 14, 0, RIDGES_REPLACED",
    "RP-SEQ-008, 14, 0, FINGERS_REPLACED",
    "RP-TXN-005, 14, 0, IMAGE_REPLACED",
    "RP-FLD-001, 9, 12, FEATURES_REPLACED",
    "RP-FLD-001, 2, 18, VALUE_REPLACED",
    "RP-TXN-001, 2, 0, CONTENT_REPLACED"
  })
  void theReasonSaysWhatWasReplaced(String rule, int type, int field, Reason reason) {
    Location record = Location.inRecord(3, type);
    Location place = field == 0 ? record : record.in(new FieldNumber(type, field));
    FindingsReport from = report(MadeReport.finding(rule, place));
    assertEquals(
        List.of(reason),
        FindingChange.missing(from, report()).stream().map(FindingChange::reason).toList());
  }

  @Test
  void eachReasonIsInWords() {
    assertEquals("the image was replaced", Reason.IMAGE_REPLACED.inWords());
    assertEquals("a value that it depends on was replaced", Reason.CONTENT_REPLACED.inWords());
  }

  private static RecommendedAction action(Finding... findings) {
    return new RecommendedAction("Do it.", Severity.BLOCKING, List.of(findings));
  }

  private static boolean sameFirst(FindingsReport one, FindingsReport other) {
    boolean same = FindingChange.isFirstOf(one, other);
    assertEquals(same, FindingChange.isFirstOf(other, one));
    return same;
  }

  @Test
  void theFirstThingToDoIsTheMostSevereOfTheFirstAction() {
    Location other = NAME.in(new FieldNumber(2, 19));
    Finding advice = MadeReport.severe(Severity.ADVICE, NAME);
    Finding blocking = MadeReport.severe(Severity.BLOCKING, other);
    FindingsReport both = MadeReport.withActions(CARD, action(advice, blocking));
    assertTrue(sameFirst(both, MadeReport.withActions(CARD, action(blocking))));
    assertFalse(sameFirst(both, MadeReport.withActions(CARD, action(advice))));
    assertFalse(sameFirst(both, MadeReport.withActions(CARD)));
  }

  @Test
  void nothingIsToBeDoneAboutANote() {
    Finding note = MadeReport.severe(Severity.NOTE, NAME);
    assertTrue(sameFirst(MadeReport.withActions(CARD, action(note)), MadeReport.withActions(CARD)));
  }
}
