package ridgeproof.transaction.xml.writer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ridgeproof.spec.xml.XmlRow;

/** An item that several elements make up, taken apart. */
final class Parts {

  private final List<XmlRow> rows;

  /**
   * @param rows those of the item, in the order of their parts
   */
  Parts(List<XmlRow> rows) {
    this.rows = rows;
  }

  /**
   * The text of each part; a part that is not there is empty text. Of elements that repeat, one
   * list for each repetition. Empty where the item cannot be taken apart so that it can be put
   * together again.
   */
  Optional<List<List<String>>> of(String item) {
    boolean repeats = rows.get(0).itemsDepth() > 0 && !rows.get(0).before().isEmpty();
    List<List<String>> all = new ArrayList<>();
    for (String one :
        repeats ? item.split(Pattern.quote(rows.get(0).before()), -1) : new String[] {item}) {
      Matcher matcher = form().matcher(one);
      if (!matcher.matches()) {
        return Optional.empty();
      }
      List<String> parts = new ArrayList<>();
      for (int i = 1; i <= rows.size(); i++) {
        parts.add(matcher.group(i) == null ? "" : matcher.group(i));
      }
      if (!together(parts).equals(one)) {
        return Optional.empty();
      }
      all.add(parts);
    }
    return Optional.of(all);
  }

  private Pattern form() {
    StringBuilder form = new StringBuilder();
    StringBuilder end = new StringBuilder();
    for (XmlRow row : rows) {
      String part = "(" + row.pattern().map(Pattern::pattern).orElse("[^,]*") + ")";
      if (form.length() == 0) {
        form.append(part);
      } else if (row.before().isEmpty()) {
        form.append(part);
      } else {
        form.append("(?:").append(Pattern.quote(row.before())).append(part);
        end.append(")?");
      }
    }
    return Pattern.compile(form.append(end).toString(), Pattern.DOTALL);
  }

  private String together(List<String> parts) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < parts.size(); i++) {
      if (!parts.get(i).isEmpty()) {
        text.append(text.length() == 0 ? "" : rows.get(i).before()).append(parts.get(i));
      }
    }
    return text.toString();
  }
}
