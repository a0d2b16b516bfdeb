package ridgeproof.examination;

import java.util.Set;
import java.util.TreeSet;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.CharacterType;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.spec.requirement.Requirement;
import ridgeproof.spec.requirement.RequirementKind;

/**
 * What else is reported where one requirement is broken, because the reader itself, or a rule that
 * looks at several fields, rests on the same value. Nothing else may come along.
 */
final class Companions {

  private Companions() {}

  /**
   * The rule that reports it: that of its kind, but for the version. A value that is no version is
   * reported once, by the reader, which cannot go on without one.
   */
  static String reporter(Requirement requirement) {
    boolean version = requirement.row().number().equals(new FieldNumber(1, 2));
    return switch (requirement.kind()) {
      case CHARACTERS, MIN_LENGTH, MAX_LENGTH, VALUES ->
          version ? "RP-STR-023" : requirement.rule();
      default -> requirement.rule();
    };
  }

  /**
   * Whether the finding may come along.
   *
   * @param rule of the finding
   * @param place its field, with the item where there is one; empty for the record as a whole
   */
  static boolean admit(Requirement requirement, String rule, String place, SpecTables tables) {
    String field = requirement.row().number().toString();
    boolean atTheField = place.equals(field) || place.startsWith(field + ".");
    // A broken value may disagree with other fields, or with what is known of such values, as well;
    // that is told at this field only.
    return atTheField && rule.matches("RP-(TXN|IMG|PTL)-.*")
        || named(requirement, tables).contains(rule);
  }

  private static Set<String> named(Requirement requirement, SpecTables tables) {
    Set<String> rules = new TreeSet<>();
    int type = requirement.recordType();
    FieldNumber number = requirement.row().number();
    int field = number.field();
    boolean tagged = tables.recordType(type).orElseThrow().encoding() == Encoding.TAGGED;
    // The reader measures every record, so a LEN that is no length or another one is told.
    if (field == 1 && tagged) {
      rules.addAll(Set.of("RP-STR-004", "RP-STR-005"));
    }
    // CNT is held against the records.
    if (type == 1 && field == 3) {
      rules.addAll(Set.of("RP-STR-014", "RP-STR-017"));
    }
    // A character set must be known before text can be read.
    if (type == 1 && field == 15) {
      rules.add("RP-STR-021");
    }
    // The reader needs the IDC, and CNT says which it is.
    if (type != 1 && field == 2) {
      rules.addAll(Set.of("RP-STR-016", "RP-STR-028"));
    }
    // A record whose image is gone or empty is told as such as well.
    if (tables.recordType(type).orElseThrow().imageField().filter(number::equals).isPresent()) {
      rules.addAll(Set.of("RP-IMG-011", "RP-IMG-013"));
    }
    // Only a control character is outside of type U, and the reader reports those.
    if (requirement.kind() == RequirementKind.CHARACTERS
        && requirement.row().characters() == CharacterType.U) {
      rules.add("RP-STR-019");
    }
    return rules;
  }
}
