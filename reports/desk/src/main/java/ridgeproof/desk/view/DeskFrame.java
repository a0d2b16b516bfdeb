package ridgeproof.desk.view;

import java.util.List;
import java.util.Map;

/**
 * What every page has around it.
 *
 * @param base what every address begins with
 * @param title of the page
 * @param here key of the tab that the page belongs to
 * @param gate whether there is a gate to show
 * @param keeping what is kept, and for how long
 */
public record DeskFrame(
    Texts texts, String base, String title, String here, boolean gate, String keeping) {

  /** A page that can be chosen at the top. */
  public record Tab(String key, String path, boolean here) {}

  private static final List<String> SCRIPTS =
      List.of("htmx.js", "uplot.js", "live.js", "desk.js", "file.js", "pages.js");

  /** The scripts that every page runs; each does nothing where it finds nothing of its own. */
  public List<String> scripts() {
    return SCRIPTS;
  }

  public List<Tab> tabs() {
    return List.of("files", "rejected", "shift", "gate", "help").stream()
        .filter(key -> gate || !key.equals("gate"))
        .map(key -> new Tab(key, key.equals("files") ? "" : key, key.equals(here)))
        .toList();
  }

  public Map<String, String> scriptTexts() {
    return texts.forScripts();
  }

  public String text(String key, Object... values) {
    return texts.of(key, values);
  }
}
