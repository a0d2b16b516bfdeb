package ridgeproof.spec.descriptive;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.Presence;
import ridgeproof.spec.table.Lazy;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;

/** What is known of the fields of the Type-2 record beyond their layout. */
public final class DescriptiveTextTables {

  private final Map<String, List<ParticularRow>> byTransaction = new ConcurrentHashMap<>();
  private final Lazy<Map<String, Source>> transactions =
      new Lazy<>(DescriptiveTextTables::loadTransactions);
  private final Lazy<List<NumberRule>> numberRules =
      new Lazy<>(DescriptiveTextTables::loadNumberRules);
  private final Lazy<List<DateOrder>> dateOrders =
      new Lazy<>(DescriptiveTextTables::loadDateOrders);
  private final Lazy<List<Table.Row>> plausible =
      new Lazy<>(() -> Table.resource("limits/plausible-particulars.csv").rows());

  public DescriptiveTextTables() {}

  /** The types of transaction whose fields are listed, with the source of each list. */
  public Map<String, Source> transactions() {
    return transactions.get();
  }

  private static Map<String, Source> loadTransactions() {
    Map<String, Source> transactions = new LinkedHashMap<>();
    for (Table.Row row : Table.resource("profiles/particulars/index.csv").rows()) {
      transactions.put(row.required("transaction_type"), row.source());
    }
    return Collections.unmodifiableMap(transactions);
  }

  /** The fields that a type of transaction has; none where no list of them is known. */
  public List<ParticularRow> ofTransaction(String type) {
    String code = type.toUpperCase(Locale.ROOT);
    return transactions().containsKey(code)
        ? byTransaction.computeIfAbsent(code, DescriptiveTextTables::loadTransaction)
        : List.of();
  }

  private static List<ParticularRow> loadTransaction(String type) {
    return Table.resource("profiles/particulars/" + type + ".csv").rows().stream()
        .map(
            row ->
                new ParticularRow(
                    row.parse("field", FieldNumber::parse),
                    row.parse("condition", Presence::parse),
                    row.integer("most"),
                    row.source()))
        .toList();
  }

  /** The forms and ranges of numbers, by field in the order of the file. */
  public List<NumberRule> numberRules() {
    return numberRules.get();
  }

  private static List<NumberRule> loadNumberRules() {
    return Table.resource("profiles/number-rules.csv").rows().stream()
        .map(
            row ->
                new NumberRule(
                    row.parse("field", FieldNumber::parse),
                    row.parse("rule", NumberRule.Kind::parse),
                    row.parse("pattern", Pattern::compile),
                    row.required("meaning"),
                    row.source()))
        .toList();
  }

  /** Dates that follow each other. */
  public List<DateOrder> dateOrders() {
    return dateOrders.get();
  }

  private static List<DateOrder> loadDateOrders() {
    return Table.resource("profiles/date-order.csv").rows().stream().map(DateOrder::of).toList();
  }

  /** What is to be expected of a measure in a kind of transaction, if anything is. */
  public Optional<Plausible> plausible(String measure, String kind) {
    return plausible.get().stream()
        .filter(row -> row.required("measure").equals(measure))
        .filter(row -> row.text("kind").isEmpty() || row.text("kind").equals(kind))
        .map(
            row ->
                new Plausible(
                    measure,
                    row.text("kind"),
                    row.parse("least", Double::parseDouble),
                    row.parse("most", Double::parseDouble),
                    row.required("unit"),
                    row.source()))
        .findFirst();
  }
}
