package ridgeproof.spec.published;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.submission.RecordLimit;

/** The records and counts of every type of transaction that has a published sample, both ways. */
class RecordsAgreeWithTemplatesTest {

  private static final SpecTables TABLES = SpecTables.open();

  /** Least and most records of a type; several templates of one type allow what either does. */
  private record Count(int least, int most) {
    Count or(Count other) {
      return new Count(Math.min(least, other.least), Math.max(most, other.most));
    }
  }

  @Test
  void eachTypeHasTheRecordCountsOfItsSample() {
    Map<String, Map<Integer, Count>> samples = new TreeMap<>();
    for (Map<String, String> row : PublishedLists.open().rows("ebts10-template-records.csv")) {
      samples
          .computeIfAbsent(row.get("tot"), key -> new LinkedHashMap<>())
          .merge(
              Integer.parseInt(row.get("record_type")),
              new Count(Integer.parseInt(row.get("min")), Integer.parseInt(row.get("max"))),
              Count::or);
    }
    Differences differences = new Differences("record count");
    for (Code type : TABLES.codes("transaction-types").codes()) {
      Map<Integer, Count> own = new LinkedHashMap<>();
      for (RecordLimit limit : TABLES.submissions().recordLimits(type.code())) {
        own.put(
            limit.recordType(), new Count(limit.least(), limit.most().orElse(Integer.MAX_VALUE)));
      }
      Map<Integer, Count> sample = samples.getOrDefault(type.code(), Map.of());
      compare(type.code(), own, sample, differences);
    }
    differences.assertListed();
  }

  private static void compare(
      String type, Map<Integer, Count> own, Map<Integer, Count> sample, Differences differences) {
    sample.forEach(
        (record, count) -> {
          if (!count.equals(own.get(record))) {
            differences.add("record count", type, "Type-" + record, own.get(record) + ", " + count);
          }
        });
    own.keySet().stream()
        .filter(record -> !sample.containsKey(record))
        .forEach(record -> differences.add("record count", type, "Type-" + record, "extra"));
  }
}
