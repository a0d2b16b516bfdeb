package ridgeproof.spec;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The rows of one CSV file, each able to say where it stands when a cell cannot be used. */
final class Table {

  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreEmptyLines(true)
          .get();

  private final String name;
  private final List<String> columns;
  private final List<Row> rows;

  private Table(String name, List<String> columns, List<Row> rows) {
    this.name = name;
    this.columns = columns;
    this.rows = rows;
  }

  /** Reads a table from the class path, relative to this package; the file must be there. */
  static Table resource(String name) {
    return optionalResource(name).orElseThrow(() -> new TableError(name, "not on the class path"));
  }

  static Optional<Table> optionalResource(String name) {
    try (InputStream stream = Table.class.getResourceAsStream(name)) {
      if (stream == null) {
        return Optional.empty();
      }
      return Optional.of(read(name, new InputStreamReader(stream, StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(name, e);
    }
  }

  static Table read(String name, Reader reader) throws IOException {
    try (var parser = FORMAT.parse(reader)) {
      List<String> columns = parser.getHeaderNames();
      List<Row> rows = new ArrayList<>();
      for (CSVRecord line : parser) {
        if (line.size() != columns.size()) {
          throw new TableError(
              name,
              parser.getCurrentLineNumber(),
              "*",
              line.size() + " cells where the first line names " + columns.size());
        }
        rows.add(new Row(name, parser.getCurrentLineNumber(), line));
      }
      return new Table(name, List.copyOf(columns), List.copyOf(rows));
    }
  }

  String name() {
    return name;
  }

  List<String> columns() {
    return columns;
  }

  List<Row> rows() {
    return rows;
  }

  /** One line of the file. */
  static final class Row {
    private final String table;
    private final long line;
    private final CSVRecord cells;

    private Row(String table, long line, CSVRecord cells) {
      this.table = table;
      this.line = line;
      this.cells = cells;
    }

    /** The cell, empty text when nothing is said. */
    String text(String column) {
      if (!cells.isMapped(column)) {
        throw new TableError(table, line, column, "no such column");
      }
      return cells.get(column).strip();
    }

    String required(String column) {
      String text = text(column);
      if (text.isEmpty()) {
        throw error(column, "empty");
      }
      return text;
    }

    OptionalInt integer(String column) {
      String text = text(column);
      return text.isEmpty()
          ? OptionalInt.empty()
          : OptionalInt.of(parse(column, Integer::parseInt));
    }

    /**
     * The cell read by a parser; what the parser objects to is reported with this row and column.
     */
    <T> T parse(String column, Function<String, T> parser) {
      try {
        return parser.apply(text(column));
      } catch (IllegalArgumentException e) {
        throw error(column, "\"" + text(column) + "\": " + e.getMessage());
      }
    }

    Optional<String> optional(String column) {
      return cells.isMapped(column)
          ? Optional.of(text(column)).filter(s -> !s.isEmpty())
          : Optional.empty();
    }

    Source source() {
      return parse("source", place -> Source.parse(place, text("known")));
    }

    VersionRange versions() {
      return new VersionRange(
          integer("since").orElse(0), integer("until").orElse(Integer.MAX_VALUE));
    }

    /** Every cell by its column, in the order of the file. */
    Map<String, String> asMap() {
      return new LinkedHashMap<>(cells.toMap());
    }

    TableError error(String column, String problem) {
      return new TableError(table, line, column, problem);
    }
  }
}
