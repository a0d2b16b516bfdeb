package ridgeproof.spec.table;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes comma separated values apart (RFC 4180). The tables are read at every start, in code that
 * is not yet compiled, which is why this is no library that does more.
 */
final class CsvScanner {

  private static final String[] NONE = {};

  private final String name;
  private final String text;
  private final boolean hasReturns;
  private int lineEnd = -1;
  private int next;
  private long line;
  private long lineBreaks;

  CsvScanner(String name, String text) {
    this.name = name;
    this.text = text;
    this.hasReturns = text.indexOf('\r') >= 0;
  }

  /** The line of the file in which the cells taken last began, from 1. */
  long line() {
    return line;
  }

  /** The cells of the next line that is not empty, none at the end. */
  String[] next() {
    while (next < text.length() && isLineBreak(text.charAt(next))) {
      endLine();
    }
    line = lineBreaks + 1;
    if (next >= text.length()) {
      return NONE;
    }
    List<String> cells = new ArrayList<>(20);
    cells.add(cell());
    while (next < text.length() && text.charAt(next) == ',') {
      next++;
      cells.add(cell());
    }
    if (next < text.length() && !isLineBreak(text.charAt(next))) {
      throw new TableError(name, line, "*", "a character after a closing quote");
    }
    endLine();
    return cells.toArray(NONE);
  }

  private String cell() {
    if (next < text.length() && text.charAt(next) == '"') {
      return quoted();
    }
    int start = next;
    if (lineEnd < start) {
      lineEnd = endOfLine(start);
    }
    int comma = text.indexOf(',', start);
    next = comma < 0 ? lineEnd : Math.min(comma, lineEnd);
    return text.substring(start, next);
  }

  /** Where the line ends; by searches of the JDK, quicker than a loop that is not yet compiled. */
  private int endOfLine(int from) {
    int feed = text.indexOf('\n', from);
    int carriage = hasReturns ? text.indexOf('\r', from) : -1;
    int end = feed < 0 ? text.length() : feed;
    return carriage < 0 ? end : Math.min(carriage, end);
  }

  private String quoted() {
    StringBuilder cell = new StringBuilder();
    int start = next + 1;
    while (true) {
      int quote = text.indexOf('"', start);
      if (quote < 0) {
        throw new TableError(name, line, "*", "a quote that is not closed");
      }
      cell.append(text, start, quote);
      next = quote + 1;
      if (next >= text.length() || text.charAt(next) != '"') {
        break;
      }
      cell.append('"');
      start = next + 1;
    }
    String whole = cell.toString();
    for (int at = whole.indexOf('\n'); at >= 0; at = whole.indexOf('\n', at + 1)) {
      lineBreaks++;
    }
    return whole;
  }

  private void endLine() {
    if (next < text.length() && text.charAt(next) == '\r') {
      next++;
    }
    if (next < text.length() && text.charAt(next) == '\n') {
      next++;
      lineBreaks++;
    }
  }

  private static boolean isLineBreak(char c) {
    return c == '\n' || c == '\r';
  }
}
