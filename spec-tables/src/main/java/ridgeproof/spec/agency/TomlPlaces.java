package ridgeproof.spec.agency;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the keys and values of a TOML document stand, since the parser keeps no places of a
 * document that it could read. What is inside an inline table or an array stands where that begins.
 */
final class TomlPlaces {

  record Place(int line, int column) {}

  private final String text;
  private final Map<List<String>, Place> keys = new HashMap<>();
  private final Map<List<String>, Place> values = new HashMap<>();
  private final Map<List<String>, Integer> arrays = new HashMap<>();
  private List<String> table = List.of();
  private int at;

  /**
   * @param text a document that the parser has accepted
   */
  TomlPlaces(String text) {
    this.text = text;
    while (at < text.length()) {
      switch (text.charAt(at)) {
        case ' ', '\t', '\r', '\n' -> at++;
        case '#' -> skipLine();
        case '[' -> header();
        default -> entry();
      }
    }
  }

  /** The key of a path, or the nearest that stands above it. */
  Place key(List<String> path) {
    return nearest(keys, path);
  }

  /** The value of a path, or the nearest that stands above it. */
  Place value(List<String> path) {
    return nearest(values, path);
  }

  private static Place nearest(Map<List<String>, Place> places, List<String> path) {
    for (int length = path.size(); length > 0; length--) {
      Place place = places.get(path.subList(0, length));
      if (place != null) {
        return place;
      }
    }
    return new Place(1, 1);
  }

  private void header() {
    int start = at;
    boolean repeated = text.startsWith("[[", at);
    at += repeated ? 2 : 1;
    List<String> path = new ArrayList<>();
    List<String> segments = path(']');
    for (int i = 0; i < segments.size(); i++) {
      path.add(segments.get(i));
      Integer index = arrays.get(path);
      if (repeated && i == segments.size() - 1) {
        index = index == null ? 0 : index + 1;
        arrays.put(List.copyOf(path), index);
      }
      if (index != null) {
        path.add(index.toString());
      }
    }
    table = List.copyOf(path);
    keys.put(table, place(start));
    values.put(table, place(start));
    skipLine();
  }

  private void entry() {
    int start = at;
    List<String> path = new ArrayList<>(table);
    path.addAll(path('='));
    at++;
    while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '\t')) {
      at++;
    }
    keys.put(List.copyOf(path), place(start));
    values.put(List.copyOf(path), place(at));
    skipValue();
  }

  /** A dotted key; stops at the sign that ends it. */
  private List<String> path(char end) {
    List<String> segments = new ArrayList<>();
    StringBuilder segment = new StringBuilder();
    while (at < text.length() && text.charAt(at) != end) {
      char c = text.charAt(at);
      if (c == '"' || c == '\'') {
        int start = at;
        skipString();
        segment.append(text, start + 1, Math.max(start + 1, at - 1));
      } else {
        if (c == '.') {
          segments.add(segment.toString());
          segment.setLength(0);
        } else if (c != ' ' && c != '\t') {
          segment.append(c);
        }
        at++;
      }
    }
    segments.add(segment.toString());
    return segments;
  }

  private void skipValue() {
    int depth = 0;
    while (at < text.length()) {
      char c = text.charAt(at);
      if (c == '"' || c == '\'') {
        skipString();
      } else if (c == '#') {
        skipLine();
      } else if (c == '\n' && depth == 0) {
        return;
      } else {
        depth += c == '[' || c == '{' ? 1 : c == ']' || c == '}' ? -1 : 0;
        at++;
      }
    }
  }

  private void skipString() {
    String quote = text.substring(at, at + 1);
    boolean escapes = quote.equals("\"");
    String end = text.startsWith(quote.repeat(3), at) ? quote.repeat(3) : quote;
    at += end.length();
    while (at < text.length() && !text.startsWith(end, at)) {
      at += escapes && text.charAt(at) == '\\' ? 2 : 1;
    }
    at = Math.min(text.length(), at + end.length());
  }

  private void skipLine() {
    int end = text.indexOf('\n', at);
    at = end < 0 ? text.length() : end;
  }

  private Place place(int position) {
    int line = 1;
    int lineStart = 0;
    for (int i = text.indexOf('\n'); i >= 0 && i < position; i = text.indexOf('\n', i + 1)) {
      line++;
      lineStart = i + 1;
    }
    return new Place(line, position - lineStart + 1);
  }
}
