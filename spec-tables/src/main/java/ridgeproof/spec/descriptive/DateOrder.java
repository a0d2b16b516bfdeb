package ridgeproof.spec.descriptive;

import java.util.Optional;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.Reference;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;

/**
 * Two dates that follow each other.
 *
 * @param rule the row of the catalogue that reports them when they do not
 * @param later the date that must not precede the other; empty for the day of the examination
 */
public record DateOrder(
    String rule, Reference earlier, Optional<FieldNumber> later, Source source) {

  private static final String TODAY = "today";

  static DateOrder of(Table.Row row) {
    return new DateOrder(
        row.required("rule"),
        row.parse("earlier", DateOrder::reference),
        Optional.of(row.required("later"))
            .filter(later -> !later.equals(TODAY))
            .map(later -> row.parse("later", FieldNumber::parse)),
        row.source());
  }

  private static Reference reference(String cell) {
    int slash = cell.indexOf('/');
    return slash < 0
        ? new Reference.OfField(FieldNumber.parse(cell))
        : new Reference.OfItem(
            FieldNumber.parse(cell.substring(0, slash)),
            Integer.parseInt(cell.substring(slash + 1)));
  }
}
