package ridgeproof.corpus.fault;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.corpus.scenario.ScenarioError;
import ridgeproof.corpus.scenario.ScenarioReader;

/** The faults of {@code faults.csv} and the clean files of {@code bases.txt}, as data. */
public final class FaultCatalogue {

  private static final String OR = " or ";

  private FaultCatalogue() {}

  /**
   * Every fault, in the order of the table.
   *
   * @throws ScenarioError naming the row that means nothing
   */
  public static List<Fault> faults() {
    List<Fault> faults = rows("faults.csv").stream().map(FaultCatalogue::fault).toList();
    Set<String> ids = new HashSet<>();
    for (Fault fault : faults) {
      if (!ids.add(fault.id())) {
        throw new ScenarioError("two faults are called " + fault.id());
      }
    }
    return faults;
  }

  /** By id, the faults that XML cannot have and those that are another finding there. */
  public static Map<String, FaultInXml> inXml() {
    Map<String, FaultInXml> rows = new LinkedHashMap<>();
    for (CSVRecord row : rows("xml.csv")) {
      rows.put(
          row.get("id"),
          new FaultInXml(
              row.get("id"), row.get("change"), words(row.get("rules")).toList(), row.get("why")));
    }
    return rows;
  }

  /** The names of the clean files. */
  public static List<String> bases() {
    return text("bases.txt").lines().filter(line -> !line.isBlank()).toList();
  }

  /** The story of a clean file. */
  static Scenario base(String name) {
    if (!bases().contains(name)) {
      throw new ScenarioError("no clean file " + name);
    }
    return new ScenarioReader().read(name, text(name + ".toml"));
  }

  private static List<CSVRecord> rows(String name) {
    try (InputStreamReader in = new InputStreamReader(open(name), StandardCharsets.UTF_8)) {
      return CSVFormat.DEFAULT
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(in)
          .getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Fault fault(CSVRecord row) {
    try {
      return new Fault(
          row.get("id"),
          FaultArea.valueOf(row.get("area").toUpperCase(Locale.ROOT)),
          row.get("base"),
          row.get("fault"),
          row.get("change"),
          words(row.get("rules")).toList(),
          words(row.get("place")).map(FaultPlace::of).toList(),
          Integer.parseInt(row.get("others")),
          row.get("open"));
    } catch (IllegalArgumentException e) {
      throw new ScenarioError("faults.csv, row " + row.getRecordNumber() + ": " + e.getMessage());
    }
  }

  private static Stream<String> words(String cell) {
    return Arrays.stream(cell.split(OR)).map(String::strip).filter(word -> !word.isEmpty());
  }

  private static String text(String name) {
    try (InputStream in = open(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static InputStream open(String name) {
    InputStream in = FaultCatalogue.class.getResourceAsStream(name);
    if (in == null) {
      throw new ScenarioError("no resource " + name);
    }
    return in;
  }
}
