package ridgeproof.spec.xml;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;

/**
 * The tables of the XML encoding; the mapping of a record type is read when first asked for. Safe
 * to share between threads.
 */
public final class XmlTables {

  /** The element that holds one transaction. */
  public static final String PACKAGE = "itl:NISTBiometricInformationExchangePackage";

  /** An element that is a record. */
  public record RecordElement(String qualified, int type, Source source) {
    /** The name without its prefix. */
    public String name() {
      return qualified.substring(qualified.indexOf(':') + 1);
    }
  }

  private final Map<String, RecordElement> records = new LinkedHashMap<>();
  private final Map<String, Set<String>> prefixes = new LinkedHashMap<>();
  private final Map<String, String> written = new LinkedHashMap<>();
  private final Set<Integer> mapped = new TreeSet<>();
  private final Map<Integer, List<XmlRow>> rows = new ConcurrentHashMap<>();
  private final Map<Integer, XmlElement> elements = new ConcurrentHashMap<>();

  /**
   * Reads the lists of records and namespaces.
   *
   * @throws ridgeproof.spec.table.TableError if a row cannot be used
   */
  public XmlTables() {
    for (Table.Row row : Table.resource("xml/records.csv").rows()) {
      RecordElement record =
          new RecordElement(
              row.required("element"), row.parse("type", Integer::parseInt), row.source());
      records.put(record.name(), record);
      if (row.text("mapped").equals("yes")) {
        mapped.add(record.type());
      }
    }
    for (Table.Row row : Table.resource("xml/namespaces.csv").rows()) {
      String prefix = row.required("prefix");
      prefixes.computeIfAbsent(row.required("uri"), uri -> new TreeSet<>()).add(prefix);
      written.putIfAbsent(prefix, row.required("uri"));
    }
  }

  /**
   * The record of an element.
   *
   * @param name without prefix
   */
  public Optional<RecordElement> record(String name) {
    return Optional.ofNullable(records.get(name));
  }

  /** The element of a record type, where the encoding has one. */
  public Optional<RecordElement> record(int type) {
    return records.values().stream().filter(record -> record.type() == type).findFirst();
  }

  /** Whether more of the record type is mapped than its category and IDC. */
  public boolean isMapped(int type) {
    return mapped.contains(type);
  }

  /** The elements that are records, in the order of their types. */
  public List<RecordElement> records() {
    return List.copyOf(records.values());
  }

  /** The rows of a record type in the order of the schema; none where it is not mapped. */
  public List<XmlRow> rows(int type) {
    return rows.computeIfAbsent(
        type,
        key ->
            record(key).isPresent()
                ? withPeriods(
                    Table.resource(String.format(Locale.ROOT, "xml/type-%02d.csv", key))
                        .rows()
                        .stream()
                        .map(XmlRow::of)
                        .toList())
                : List.of());
  }

  private static List<XmlRow> withPeriods(List<XmlRow> rows) {
    return rows.stream()
        .map(
            row ->
                row.itemsDepth() == 0 || row.part() > 0 ? row : row.withPeriod(period(row, rows)))
        .toList();
  }

  private static int period(XmlRow row, List<XmlRow> rows) {
    int depth = row.itemsDepth();
    return (int)
        rows.stream()
            .filter(other -> other.field().equals(row.field()) && other.itemsDepth() == depth)
            .filter(other -> other.steps().subList(0, depth).equals(row.steps().subList(0, depth)))
            .map(XmlRow::item)
            .distinct()
            .count();
  }

  /** The element of a record type with what is below it. */
  public XmlElement element(int type) {
    return elements.computeIfAbsent(
        type,
        key -> {
          XmlElement root =
              new XmlElement(record(key).map(RecordElement::qualified).orElse(PACKAGE), 0);
          rows(key).forEach(root::add);
          return root;
        });
  }

  /** The prefixes by which the tables name a namespace; none for one that is not listed. */
  public Set<String> prefixes(String uri) {
    return prefixes.getOrDefault(uri, Set.of());
  }

  /** The namespaces to write, by prefix, in the order of the list. */
  public Map<String, String> namespaces() {
    return Collections.unmodifiableMap(written);
  }
}
