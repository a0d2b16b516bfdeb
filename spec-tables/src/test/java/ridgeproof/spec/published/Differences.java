package ridgeproof.spec.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** What a comparison found, held against the differences that are meant. */
final class Differences {

  private final Set<String> kinds;
  private final Map<String, String> found = new TreeMap<>();

  /**
   * @param kinds the kinds of difference that this comparison looks for
   */
  Differences(String... kinds) {
    this.kinds = Set.of(kinds);
  }

  /**
   * @param subject a code table, a record type or a type of transaction
   * @param entry a code or a field
   */
  void add(String kind, String subject, String entry, String detail) {
    if (!kinds.contains(kind)) {
      throw new IllegalArgumentException(kind);
    }
    found.put(kind + " " + subject + " " + entry, detail);
  }

  /** Fails for what is not listed, and for what is listed and no longer differs. */
  void assertListed() {
    Set<String> listed = new TreeSet<>();
    for (Map<String, String> row : resource("differences.csv")) {
      if (kinds.contains(row.get("kind"))) {
        listed.add(row.get("kind") + " " + row.get("subject") + " " + row.get("entry"));
      }
    }
    Map<String, String> unlisted = new TreeMap<>(found);
    unlisted.keySet().removeAll(listed);
    Set<String> settled = new TreeSet<>(listed);
    settled.removeAll(found.keySet());
    assertEquals(
        "",
        String.join(
            "\n",
            Stream.concat(
                    unlisted.entrySet().stream()
                        .map(e -> "not in differences.csv: " + e.getKey() + ": " + e.getValue()),
                    settled.stream().map(key -> "no longer differs: " + key))
                .toList()));
  }

  /** The rows of a table in {@code published/}. */
  static List<Map<String, String>> resource(String name) {
    String path = "/ridgeproof/spec/published/" + name;
    try (InputStream stream = Differences.class.getResourceAsStream(path)) {
      return CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(new InputStreamReader(stream, StandardCharsets.UTF_8))
          .stream()
          .map(CSVRecord::toMap)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
