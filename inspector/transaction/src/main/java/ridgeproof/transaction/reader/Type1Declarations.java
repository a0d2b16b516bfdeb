package ridgeproof.transaction.reader;

import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.WholeNumber;

/**
 * What the Type-1 record declares of how the rest is written: version (1.002) and character set
 * (1.015).
 */
final class Type1Declarations {

  private static final int VERSION = 2;
  private static final int CHARACTER_SET = 15;

  private final ParseContext context;
  private final LogicalRecord header;

  Type1Declarations(ParseContext context, LogicalRecord header) {
    this.context = context;
    this.header = header;
  }

  void read() {
    context.declare(characterSet(), version());
  }

  /** Takes in the version alone; XML says itself how its characters are coded. */
  void readVersion() {
    context.declare(CharacterEncoding.UTF_8, version());
  }

  private int version() {
    Optional<String> text = header.text(VERSION);
    OptionalInt number = text.map(WholeNumber::parse).orElse(OptionalInt.empty());
    if (number.isPresent()
        && context.tables.codes("versions").find(text.orElseThrow()).isPresent()) {
      return number.getAsInt();
    }
    // A field that is missing or empty is reported as such where records are held to their layout.
    text.ifPresent(
        value ->
            report(
                "RP-STR-023",
                VERSION,
                Observed.of("\"" + value + "\""),
                "one of the published versions, 0200 to 0502"));
    return context.version();
  }

  private CharacterEncoding characterSet() {
    Optional<String> code = header.text(CHARACTER_SET);
    if (code.isEmpty()) {
      return CharacterEncoding.ASCII;
    }
    OptionalInt number = WholeNumber.parse(code.get());
    for (CharacterEncoding encoding : CharacterEncoding.values()) {
      if (number.isPresent() && Integer.parseInt(encoding.code()) == number.getAsInt()) {
        return encoding;
      }
    }
    Optional<String> name =
        context.tables.codes("character-sets").find(code.get()).map(row -> row.name());
    report(
        name.isPresent() ? "RP-STR-020" : "RP-STR-021",
        CHARACTER_SET,
        Observed.of(code.get() + name.map(text -> ", " + text).orElse("")),
        "000, 001 (ISO-8859-1) or 003 (UTF-8)");
    return CharacterEncoding.ASCII;
  }

  private void report(String rule, int field, Observed observed, String required) {
    Location place = Location.of(header).in(new FieldNumber(1, field));
    context.log.add(
        rule,
        header.field(field).map(found -> place.at(found.range())).orElse(place),
        observed,
        required);
  }
}
