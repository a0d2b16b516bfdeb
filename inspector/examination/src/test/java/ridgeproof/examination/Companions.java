package ridgeproof.examination;

import java.util.Set;
import java.util.TreeSet;
import ridgeproof.spec.CharacterType;
import ridgeproof.spec.FieldNumber;
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
    FieldNumber number = requirement.row().number();
    int field = number.field();
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
    // The reader needs the IDC, and CNT says which it is.
    if (type != 1 && field == 2) {
      rules.addAll(Set.of("RP-STR-016", "RP-STR-028"));
    }
    // Whether the header gives a resolution is held against the types of the records.
    if (type == 1 && (field == 11 || field == 12)) {
      rules.add(field == 11 ? "RP-TXN-001" : "RP-TXN-002");
    }
    // A record whose image is gone or empty is told as such as well.
    if (tables.recordType(type).orElseThrow().imageField().filter(number::equals).isPresent()) {
      rules.addAll(Set.of("RP-IMG-011", "RP-IMG-013"));
    }
    // More bits than eight are no gray image.
    if (tables.imageRecords().stream()
        .anyMatch(row -> row.bitsPerPixel().filter(number::equals).isPresent())) {
      rules.add("RP-IMG-018");
    }
    // A finger declared missing is a fact worth noting wherever the field is there.
    if (tables.missingFingerFields().stream().anyMatch(row -> row.field().equals(number))) {
      rules.add("RP-TXN-006");
    }
    // Only a control character is outside of type U, and the reader reports those.
    if (requirement.kind() == RequirementKind.CHARACTERS
        && requirement.row().characters() == CharacterType.U) {
      rules.add("RP-STR-019");
    }
    return rules;
  }
}
