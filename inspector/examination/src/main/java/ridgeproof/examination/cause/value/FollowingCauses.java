package ridgeproof.examination.cause.value;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.finding.Finding;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * Findings that say once more what another one says: of bytes that were not read, of separators
 * that are gone throughout, and of one finger that is annotated in several fields.
 */
public final class FollowingCauses implements CauseRule {

  /** A print that is there twice, and the number of records that it makes too many. */
  private static final String TWICE = "RP-TXN-003";

  private static final Consequences OF_TWICE = Consequences.ofRules("RP-TXN-048");

  private static final Set<String> NOT_READ = Set.of("RP-STR-012", "RP-STR-018");
  private static final String SEPARATOR = "RP-STR-007";
  private static final String ANNOTATED = "RP-TXN-005";

  /** Fewer separators that are wrong may be as many faults. */
  private static final int SEVERAL = 4;

  /** Prints that may be in the bytes that were not read, and what their records would change. */
  private static final Consequences OF_UNREAD =
      Consequences.ofRules(
          "RP-STR-014",
          "RP-STR-016",
          "RP-TXN-001",
          "RP-TXN-002",
          "RP-TXN-004",
          "RP-TXN-007",
          "RP-TXN-040",
          "RP-TXN-041",
          "RP-TXN-042",
          "RP-TXN-050");

  private static final Consequences OF_SEPARATORS =
      Consequences.ofRules(
          SEPARATOR,
          "RP-STR-004",
          "RP-STR-005",
          "RP-STR-006",
          "RP-STR-008",
          "RP-STR-009",
          "RP-STR-014",
          "RP-STR-017",
          "RP-STR-023",
          "RP-COD",
          "RP-FLD");

  /** The code or the size of an image is wrong, or it is broken, in the order of their reach. */
  private static final List<String> NOT_AS_STATED =
      List.of("RP-IMG-005", "RP-IMG-011", "RP-IMG-006");

  /** What is seen of pixels that were read as what they are not. */
  private static final Consequences OF_PIXELS =
      Consequences.ofRules(
          "RP-IMG-006",
          "RP-IMG-007",
          "RP-IMG-034",
          "RP-IMG-035",
          "RP-IMG-037",
          "RP-IMG-039",
          "RP-RDG",
          "RP-SEQ");

  /** A second image behind the first is told by itself. */
  private static final String SECOND_IMAGE = "RP-IMG-030";

  private static final Consequences OF_SECOND_IMAGE = Consequences.ofRules("RP-IMG-007");

  /** Boxes that bear each other's name are not where their fingers lie. */
  private static final String ORDER_OF_BOXES = "RP-TXN-023";

  /** Without the first record of the XML encoding none of its fields can be there. */
  private static final String NO_FIRST_RECORD = "RP-XML-012";

  private static final Consequences OF_NO_FIRST_RECORD =
      Consequences.ofRules(
          "RP-FLD-001", "RP-STR-014", "RP-STR-017", "RP-STR-023", "RP-TXN-007", "RP-PTL-060");

  /** Of the record in which the XML breaks, what stands behind is not read. */
  private static final String BROKEN_XML = "RP-XML-001";

  private static final Consequences OF_BROKEN_XML =
      Consequences.ofRules(
          "RP-FLD-001",
          "RP-FLD-002",
          "RP-FLD-006",
          "RP-IMG-013",
          "RP-PTL-001",
          "RP-PTL-002",
          "RP-PTL-003",
          "RP-STR-014",
          "RP-STR-017",
          "RP-STR-023",
          "RP-STR-028");

  private static final Consequences OF_ORDER = Consequences.ofRules("RP-RDG-021");

  @Override
  public Set<String> ids() {
    return Set.of();
  }

  @Override
  public void establish(ExaminationInput examinee, List<Finding> found, CauseLog causes) {
    found.stream()
        .filter(finding -> NOT_READ.contains(finding.ruleId()))
        .findFirst()
        .ifPresent(finding -> causes.add(finding, OF_UNREAD));
    of(NO_FIRST_RECORD, found)
        .forEach(
            finding ->
                causes.add(finding, OF_NO_FIRST_RECORD.onlyWhere(FollowingCauses::isOfHeader)));
    of(BROKEN_XML, found)
        .forEach(
            finding ->
                causes.add(finding, OF_BROKEN_XML.inRecords(recordsAround(finding, examinee))));
    List<Finding> separators = of(SEPARATOR, found);
    if (separators.size() >= SEVERAL) {
      causes.add(separators.get(0), OF_SEPARATORS);
    }
    for (String rule : NOT_AS_STATED) {
      of(rule, found)
          .forEach(
              finding -> causes.add(finding, OF_PIXELS.inRecordOf(finding).noWorseThan(finding)));
    }
    of(SECOND_IMAGE, found)
        .forEach(finding -> causes.add(finding, OF_SECOND_IMAGE.inRecordOf(finding)));
    of(ORDER_OF_BOXES, found)
        .forEach(finding -> causes.add(finding, OF_ORDER.inRecordOf(finding).noWorseThan(finding)));
    of(TWICE, found)
        .forEach(finding -> causes.add(finding, OF_TWICE.inRecordOf(finding).noWorseThan(finding)));
    of(ANNOTATED, found).forEach(finding -> causes.add(finding, ofAnnotation(finding)));
  }

  private static Set<Integer> recordsAround(Finding broken, ExaminationInput examinee) {
    Set<Integer> ordinals = new HashSet<>();
    for (LogicalRecord record : examinee.transaction().records()) {
      ByteRange range = record.range();
      broken
          .location()
          .bytes()
          .filter(at -> range.offset() <= at.offset() && at.offset() <= range.end())
          .ifPresent(at -> ordinals.add(record.ordinal()));
    }
    return ordinals;
  }

  private static boolean isOfHeader(Finding finding) {
    return finding.location().recordType().orElse(1) == 1;
  }

  private static List<Finding> of(String rule, List<Finding> found) {
    return found.stream().filter(finding -> finding.ruleId().equals(rule)).toList();
  }

  /** The same annotation in 2.084 and 14.018, and the segment of a finger that is there. */
  private static Consequences ofAnnotation(Finding cause) {
    return Consequences.ofRules(ANNOTATED, "RP-TXN-022", "RP-TXN-035", "RP-TXN-054")
        .onlyWhere(
            other ->
                cause.location().position().isPresent()
                    && other.location().position().equals(cause.location().position()));
  }
}
