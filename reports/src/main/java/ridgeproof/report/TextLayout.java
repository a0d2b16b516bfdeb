package ridgeproof.report;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines of a width. */
public final class TextLayout {

  private TextLayout() {}

  /** The words of the text in lines of at most that many columns; a longer word is cut. */
  public static List<String> wrap(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ")) {
      String rest = word;
      if (line.length() > 0 && line.length() + 1 + rest.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (rest.length() > width) {
        int cut = Character.isHighSurrogate(rest.charAt(width - 1)) ? width - 1 : width;
        lines.add(rest.substring(0, cut));
        rest = rest.substring(cut);
      }
      line.append(line.length() > 0 ? " " : "").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }

  /** The text wrapped under a lead: the lead on the first line, blanks below it. */
  public static void indented(StringBuilder out, String lead, String text, int width) {
    String blanks = " ".repeat(lead.length());
    String start = lead;
    for (String line : wrap(text, width - lead.length())) {
      out.append(start).append(line).append('\n');
      start = blanks;
    }
  }
}
