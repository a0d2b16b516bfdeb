package ridgeproof.spec.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.spec.table.Table;

/** The published layout of one record type, in every version. */
public final class RecordLayout {

  private final int recordType;
  private final List<FieldRow> rows;
  private final Map<FieldNumber, List<FieldRow>> byNumber = new HashMap<>();
  private final List<FieldRow> ranges = new ArrayList<>();

  private RecordLayout(int recordType, List<FieldRow> rows) {
    this.recordType = recordType;
    this.rows = List.copyOf(rows);
    for (FieldRow row : rows) {
      if (row.isRange()) {
        ranges.add(row);
      } else {
        byNumber.computeIfAbsent(row.number(), key -> new ArrayList<>(2)).add(row);
      }
    }
  }

  /** The layout of a type that the tables list; a layout that is missing is a defect of ours. */
  public static RecordLayout load(int recordType) {
    String file = "layouts/type-" + (recordType < 10 ? "0" : "") + recordType + ".csv";
    return new RecordLayout(
        recordType,
        Table.resource(file).rows().stream().map(row -> FieldRow.of(row, recordType)).toList());
  }

  /** The layout of a type that no table lists. */
  public static RecordLayout unknown(int recordType) {
    return new RecordLayout(recordType, List.of());
  }

  public int recordType() {
    return recordType;
  }

  /** Every row, of every version, in the order of the file. */
  public List<FieldRow> rows() {
    return rows;
  }

  /** The row of a field as the version has it; a range of user-defined fields counts. */
  public Optional<FieldRow> field(FieldNumber number, int version) {
    for (FieldRow row : byNumber.getOrDefault(number, List.of())) {
      if (row.item().isEmpty() && row.versions().contains(version)) {
        return Optional.of(row);
      }
    }
    return ranges.stream()
        .filter(row -> row.covers(number) && row.versions().contains(version))
        .findFirst();
  }

  /** The rows of a field's information items as the version has them, in order. */
  public List<FieldRow> items(FieldNumber number, int version) {
    List<FieldRow> items = new ArrayList<>();
    for (FieldRow row : byNumber.getOrDefault(number, List.of())) {
      if (row.item().isPresent() && row.versions().contains(version)) {
        items.add(row);
      }
    }
    return items;
  }

  /** The row that describes an item, also where its group of items comes again. */
  public Optional<FieldRow> item(FieldNumber number, int item, int version) {
    List<FieldRow> items = items(number, version);
    if (items.isEmpty()) {
      return item == 1 ? field(number, version) : Optional.empty();
    }
    for (FieldRow row : items) {
      if (row.item().getAsInt() == item) {
        return Optional.of(row);
      }
    }
    List<FieldRow> group = items.stream().filter(row -> row.maxOccurs().orElse(1) > 1).toList();
    int beyond = item - items.get(items.size() - 1).item().getAsInt() - 1;
    if (group.isEmpty() || beyond < 0) {
      return Optional.empty();
    }
    FieldRow row = group.get(beyond % group.size());
    int round = beyond / group.size() + 2;
    return round <= row.maxOccurs().getAsInt() ? Optional.of(row) : Optional.empty();
  }

  /** Whether an item may be shown: only where a row that describes it says so. */
  public boolean isPublic(FieldNumber number, int item, int version) {
    return item(number, item, version).filter(FieldRow::isPublic).isPresent();
  }

  /** Whether every item that rows describe may be shown. */
  public boolean isPublic(FieldNumber number, int version) {
    List<FieldRow> items = items(number, version);
    return items.isEmpty()
        ? field(number, version).filter(FieldRow::isPublic).isPresent()
        : items.stream().allMatch(FieldRow::isPublic);
  }

  /** Whether any version knows the field. */
  public boolean knows(FieldNumber number) {
    return byNumber.containsKey(number) || ranges.stream().anyMatch(row -> row.covers(number));
  }
}
