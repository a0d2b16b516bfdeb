package ridgeproof.spec.submission;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.spec.table.Lazy;
import ridgeproof.spec.table.Table;

/** What each type of transaction has to hold: prints, latents, records and their counts. */
public final class SubmissionTables {

  private static final String NO_LIMIT = "*";

  private final Lazy<Map<String, TransactionNeed>> needs = new Lazy<>(SubmissionTables::loadNeeds);
  private final Lazy<Map<String, List<RecordLimit>>> limits =
      new Lazy<>(SubmissionTables::loadLimits);
  private final Lazy<List<MissingMark>> marks = new Lazy<>(SubmissionTables::loadMarks);

  public SubmissionTables() {}

  /** What a type of transaction needs, written as published; empty where that is not known. */
  public Optional<TransactionNeed> need(String type) {
    return Optional.ofNullable(needs.get().get(type));
  }

  /** Every type of transaction whose needs are known. */
  public List<TransactionNeed> needs() {
    return List.copyOf(needs.get().values());
  }

  /** How many records of each type it holds; none where no list of them is known. */
  public List<RecordLimit> recordLimits(String type) {
    return limits.get().getOrDefault(type, List.of());
  }

  /** The codes of field 2.026 that tell of missing fingers. */
  public List<MissingMark> missingMarks() {
    return marks.get();
  }

  private static Map<String, TransactionNeed> loadNeeds() {
    Map<String, TransactionNeed> needs = new LinkedHashMap<>();
    for (Table.Row row : Table.resource("profiles/needs.csv").rows()) {
      String type = row.required("transaction_type");
      needs.put(
          type,
          new TransactionNeed(
              type,
              row.parse("need", TransactionNeed.Kind::parse),
              Table.words(row.text("ways")).toList(),
              Table.words(row.text("unusual_ways")).toList(),
              row.source()));
    }
    return Collections.unmodifiableMap(needs);
  }

  private static Map<String, List<RecordLimit>> loadLimits() {
    Map<String, List<RecordLimit>> limits = new LinkedHashMap<>();
    for (Table.Row row : Table.resource("profiles/record-limits.csv").rows()) {
      limits
          .computeIfAbsent(row.required("transaction_type"), type -> new ArrayList<>())
          .add(
              new RecordLimit(
                  row.parse("record_type", Integer::parseInt),
                  row.parse("least", Integer::parseInt),
                  row.required("most").equals(NO_LIMIT)
                      ? OptionalInt.empty()
                      : OptionalInt.of(row.parse("most", Integer::parseInt)),
                  row.source()));
    }
    return Collections.unmodifiableMap(limits);
  }

  private static List<MissingMark> loadMarks() {
    return Table.resource("profiles/missing-marks.csv").rows().stream()
        .map(
            row ->
                new MissingMark(
                    row.required("mark"),
                    row.parse(
                        "extent",
                        cell -> MissingMark.Extent.valueOf(cell.toUpperCase(Locale.ROOT))),
                    row.parse("fingers", Table::numbers),
                    row.source()))
        .toList();
  }
}
