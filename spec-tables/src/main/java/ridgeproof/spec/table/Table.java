package ridgeproof.spec.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The rows of one CSV file, each able to say where it stands when a cell cannot be used. */
public final class Table {

  private static final String ROOT = "/ridgeproof/spec/";

  private final String name;
  private final List<String> columns;
  private final List<Row> rows;

  private Table(String name, List<String> columns, List<Row> rows) {
    this.name = name;
    this.columns = columns;
    this.rows = rows;
  }

  /**
   * Reads a table from the class path, relative to {@code ridgeproof/spec}; the file must be there.
   */
  public static Table resource(String name) {
    try (InputStream stream = Table.class.getResourceAsStream(ROOT + name)) {
      if (stream == null) {
        throw new TableError(name, "not on the class path");
      }
      return read(name, new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(name, e);
    }
  }

  public static Table read(String name, String csv) {
    CsvScanner scanner = new CsvScanner(name, csv);
    List<String> columns = List.of(scanner.next());
    Map<String, Integer> places = new HashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      places.put(columns.get(i), i);
    }
    List<Row> rows = new ArrayList<>();
    for (String[] cells = scanner.next(); cells.length > 0; cells = scanner.next()) {
      if (cells.length != columns.size()) {
        throw new TableError(
            name,
            scanner.line(),
            "*",
            cells.length + " cells where the first line names " + columns.size());
      }
      rows.add(new Row(name, scanner.line(), places, cells));
    }
    return new Table(name, columns, List.copyOf(rows));
  }

  /** The words of a cell that lists several. */
  public static Stream<String> words(String cell) {
    return Stream.of(cell.split(" ")).filter(word -> !word.isEmpty());
  }

  /** The numbers of a cell that lists several, in their order. */
  public static Set<Integer> numbers(String cell) {
    return words(cell).map(Integer::parseInt).collect(Collectors.toCollection(LinkedHashSet::new));
  }

  public String name() {
    return name;
  }

  public List<String> columns() {
    return columns;
  }

  public List<Row> rows() {
    return rows;
  }

  /** One line of the file. */
  public static final class Row {
    private final String table;
    private final long line;
    private final Map<String, Integer> places;
    private final String[] cells;

    private Row(String table, long line, Map<String, Integer> places, String[] cells) {
      this.table = table;
      this.line = line;
      this.places = places;
      this.cells = cells;
    }

    /** The cell, empty text when nothing is said. */
    public String text(String column) {
      Integer place = places.get(column);
      if (place == null) {
        throw new TableError(table, line, column, "no such column");
      }
      return cells[place].strip();
    }

    public String required(String column) {
      String text = text(column);
      if (text.isEmpty()) {
        throw error(column, "empty");
      }
      return text;
    }

    public OptionalInt integer(String column) {
      String text = text(column);
      return text.isEmpty()
          ? OptionalInt.empty()
          : OptionalInt.of(parse(column, Integer::parseInt));
    }

    /**
     * The cell read by a parser; what the parser objects to is reported with this row and column.
     */
    public <T> T parse(String column, Function<String, T> parser) {
      try {
        return parser.apply(text(column));
      } catch (IllegalArgumentException e) {
        throw error(column, "\"" + text(column) + "\": " + e.getMessage());
      }
    }

    public Optional<String> optional(String column) {
      return places.containsKey(column)
          ? Optional.of(text(column)).filter(s -> !s.isEmpty())
          : Optional.empty();
    }

    public Source source() {
      return parse("source", place -> Source.parse(place, text("known")));
    }

    public VersionRange versions() {
      int since = integer("since").orElse(0);
      int until = integer("until").orElse(Integer.MAX_VALUE);
      if (since > until) {
        throw error("until", text("until") + " is before since " + text("since"));
      }
      return new VersionRange(since, until);
    }

    public TableError error(String column, String problem) {
      return new TableError(table, line, column, problem);
    }
  }
}
