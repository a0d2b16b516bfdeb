package ridgeproof.report;

import java.util.List;
import java.util.stream.Collectors;

/** The cells of a row as RFC 4180 has them, and none that a spreadsheet takes for a formula. */
public final class CsvRow {

  private static final String FORMULA = "=+-@";

  private CsvRow() {}

  /** The cells with commas between, without a line end. */
  public static String joined(List<String> cells) {
    return cells.stream().map(CsvRow::cell).collect(Collectors.joining(","));
  }

  private static String cell(String text) {
    String safe = TextSanitizer.of(text);
    if (!safe.isEmpty() && FORMULA.indexOf(safe.charAt(0)) >= 0) {
      safe = "'" + safe;
    }
    boolean quoted = safe.indexOf(',') >= 0 || safe.indexOf('"') >= 0 || safe.startsWith("'");
    return quoted ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
  }
}
