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
  private int next;
  private long line;
  private long lineBreaks;

  CsvScanner(String name, String text) {
    this.name = name;
    this.text = text;
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
    while (next < text.length() && text.charAt(next) != ',' && !isLineBreak(text.charAt(next))) {
      next++;
    }
    return text.substring(start, next);
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
    lineBreaks += cell.chars().filter(c -> c == '\n').count();
    return cell.toString();
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
