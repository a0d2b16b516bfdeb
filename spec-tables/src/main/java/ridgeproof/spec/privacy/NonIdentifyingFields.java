package ridgeproof.spec.privacy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.ValueRule;
import ridgeproof.spec.table.Lazy;
import ridgeproof.spec.table.Table;

/**
 * What of a transaction tells of nobody, so that a copy for strangers may keep it. What stands in
 * no row is not known to be harmless.
 */
public final class NonIdentifyingFields {

  private final Lazy<Map<FieldNumber, List<NonIdentifyingField>>> fields =
      new Lazy<>(NonIdentifyingFields::loadFields);
  private final Lazy<Map<String, Pattern>> comments =
      new Lazy<>(NonIdentifyingFields::loadComments);

  public NonIdentifyingFields() {}

  /**
   * The row of an information item; a row without an item speaks of every one of the field.
   *
   * @param item counted from 1
   */
  public Optional<NonIdentifyingField> field(FieldNumber number, int item) {
    return fields.get().getOrDefault(number, List.of()).stream()
        .filter(row -> row.item().isEmpty() || row.item().getAsInt() == item)
        .findFirst();
  }

  /** Every row, by field. */
  public List<NonIdentifyingField> fields() {
    return fields.get().values().stream().flatMap(List::stream).toList();
  }

  /** Whether a line of a codestream's comment is one that encoders write of every image alike. */
  public boolean isHarmlessComment(String key, String value) {
    Pattern pattern = comments.get().get(key);
    return pattern != null && pattern.matcher(value).matches();
  }

  private static Map<FieldNumber, List<NonIdentifyingField>> loadFields() {
    Map<FieldNumber, List<NonIdentifyingField>> fields = new HashMap<>();
    for (Table.Row row : Table.resource("layouts/harmless-fields.csv").rows()) {
      FieldNumber number = row.parse("field", FieldNumber::parse);
      OptionalInt item = row.integer("item");
      NonIdentifyingField field =
          new NonIdentifyingField(
              number,
              item,
              row.optional("only").map(cell -> row.parse("only", ValueRule::parse)),
              row.required("why"),
              row.source());
      fields.merge(number, List.of(field), NonIdentifyingFields::joined);
    }
    return fields;
  }

  private static List<NonIdentifyingField> joined(
      List<NonIdentifyingField> some, List<NonIdentifyingField> more) {
    return Stream.concat(some.stream(), more.stream()).toList();
  }

  private static Map<String, Pattern> loadComments() {
    Map<String, Pattern> comments = new HashMap<>();
    for (Table.Row row : Table.resource("files/harmless-comments.csv").rows()) {
      comments.put(row.required("key"), row.parse("pattern", Pattern::compile));
    }
    return comments;
  }
}
