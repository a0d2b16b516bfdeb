package ridgeproof.imagery.header;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import ridgeproof.imagery.PixelDensity;

/**
 * The key-value lines that fingerprint software writes into a comment segment: the first line is
 * NIST_COM and the number of lines (common practice).
 */
final class NistComment {

  private static final String FIRST_KEY = "NIST_COM";
  private static final int MAX_LINES = 200;

  private NistComment() {}

  /** The lines in order, or empty where the text is another kind of comment. */
  static Optional<Map<String, String>> parse(String text) {
    if (!text.startsWith(FIRST_KEY)) {
      return Optional.empty();
    }
    Map<String, String> lines = new LinkedHashMap<>();
    text.lines()
        .limit(MAX_LINES)
        .map(line -> line.replace("\0", "").strip())
        .filter(line -> !line.isEmpty())
        .forEach(
            line -> {
              String[] parts = line.split("\\s+", 2);
              lines.putIfAbsent(parts[0], parts.length == 2 ? parts[1] : "");
            });
    return Optional.of(lines);
  }

  /** Puts a comment segment into the draft: its lines, its density, or the text as it is. */
  static void keep(ImageHeaderBuilder draft, String text) {
    Optional<Map<String, String>> lines = parse(text);
    if (lines.isEmpty()) {
      draft.comment("COM", text);
      return;
    }
    lines.get().forEach(draft::comment);
    density(lines.get()).ifPresent(draft::density);
  }

  /** PPI, where it is a positive number; writers put -1 where they do not know it. */
  private static Optional<PixelDensity> density(Map<String, String> lines) {
    String ppi = lines.getOrDefault("PPI", "");
    return ppi.matches("[0-9]{1,5}") && Integer.parseInt(ppi) > 0
        ? Optional.of(PixelDensity.ofPpi(Integer.parseInt(ppi)))
        : Optional.empty();
  }
}
