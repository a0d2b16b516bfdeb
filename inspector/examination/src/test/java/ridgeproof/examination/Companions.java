package ridgeproof.examination;

import java.util.Set;
import java.util.TreeSet;
import ridgeproof.spec.CharacterType;
import ridgeproof.spec.RecordTypeRow.Encoding;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.requirement.Requirement;
import ridgeproof.spec.requirement.RequirementKind;

/**
 * What else is reported where one requirement is broken, because the reader itself, or a rule that
 * looks at several fields, rests on the same value. Nothing else may come along.
 */
final class Companions {

  private Companions() {}

  static Set<String> of(Requirement requirement, SpecTables tables) {
    Set<String> rules = new TreeSet<>();
    int type = requirement.recordType();
    int field = requirement.row().number().field();
    boolean tagged = tables.recordType(type).orElseThrow().encoding() == Encoding.TAGGED;
    // The reader measures every record, so a LEN that is no length or another one is told.
    if (field == 1 && tagged) {
      rules.addAll(Set.of("RP-STR-004", "RP-STR-005"));
    }
    // The reader looks the version up before any field is examined.
    if (type == 1 && field == 2) {
      rules.add("RP-STR-023");
    }
    // CNT is held against the records.
    if (type == 1 && field == 3) {
      rules.addAll(Set.of("RP-STR-014", "RP-STR-017"));
    }
    // A character set has to be known before text can be read.
    if (type == 1 && field == 15) {
      rules.add("RP-STR-021");
    }
    // An IDC that is no number cannot be held against CNT, which then lists another record.
    if (type != 1 && field == 2) {
      rules.addAll(Set.of("RP-STR-028", "RP-STR-014"));
    }
    // Only a control character is outside of type U, and the reader reports those.
    if (requirement.kind() == RequirementKind.CHARACTERS
        && requirement.row().characters() == CharacterType.U) {
      rules.add("RP-STR-019");
    }
    return rules;
  }
}
