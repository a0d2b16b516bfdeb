package ridgeproof.spec.xml;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import ridgeproof.spec.layout.Condition;
import ridgeproof.spec.layout.ConditionParser;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;

/**
 * An element path and what of a field it carries.
 *
 * @param steps below the element of the record
 * @param item counted from 1
 * @param part place within the item where several elements make it up; 0 where one element does
 * @param period how many items one repetition of an element has that makes more of them
 * @param before what stands in the item before this part, unless it is the first
 * @param pattern what the item or part looks like that the element can carry; empty for any
 * @param when the row holds only then
 */
public record XmlRow(
    List<XmlStep> steps,
    FieldNumber field,
    int item,
    int part,
    int period,
    String before,
    XmlForm form,
    Optional<Pattern> pattern,
    Use use,
    Optional<Condition> when,
    Source source) {

  /** What the row is for. */
  public enum Use {
    BOTH,
    /** The element is understood, and never written. */
    READ,
    /** The element is written, and says nothing of its own. */
    WRITE,
    /** The value counts only beside others of its subfield. */
    WITH_OTHERS,
    /** The element says the type of the record, where the field says its length. */
    TYPE,
    /** The value belongs to the first subfield, which is unlike the others. */
    FIRST
  }

  static XmlRow of(Table.Row row) {
    return new XmlRow(
        row.parse("path", cell -> List.of(cell.split("/")).stream().map(XmlStep::parse).toList()),
        row.parse("field", FieldNumber::parse),
        row.integer("item").orElse(1),
        row.integer("part").orElse(0),
        1,
        row.parse("before", XmlRow::separator),
        row.parse("form", XmlForm::parse),
        row.optional("pattern").map(cell -> row.parse("pattern", Pattern::compile)),
        row.parse("use", XmlRow::use),
        row.optional("when").map(cell -> row.parse("when", ConditionParser::parse)),
        row.source());
  }

  XmlRow withPeriod(int items) {
    return new XmlRow(steps, field, item, part, items, before, form, pattern, use, when, source);
  }

  private static String separator(String word) {
    return switch (word) {
      case "" -> "";
      case "space" -> " ";
      case "comma" -> ",";
      case "hyphen" -> "-";
      default -> throw new IllegalArgumentException("not space, comma or hyphen");
    };
  }

  private static Use use(String words) {
    return words.isEmpty()
        ? Use.BOTH
        : Use.valueOf(words.replace(' ', '_').toUpperCase(Locale.ROOT));
  }

  /** How many steps lead to the element that makes a subfield, itself included; 0 without one. */
  public int subfieldDepth() {
    return depth(XmlStep.Repeats.SUBFIELDS);
  }

  /** How many steps lead to the element that makes more items; 0 without one. */
  public int itemsDepth() {
    return depth(XmlStep.Repeats.ITEMS);
  }

  private int depth(XmlStep.Repeats repeats) {
    for (int i = steps.size() - 1; i >= 0; i--) {
      if (steps.get(i).repeats() == repeats) {
        return i + 1;
      }
    }
    return 0;
  }

  public boolean isRead() {
    return use != Use.WRITE;
  }

  public boolean isWritten() {
    return use != Use.READ;
  }
}
