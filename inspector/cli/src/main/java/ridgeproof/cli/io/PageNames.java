package ridgeproof.cli.io;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Names of pages for files: of characters that every file system and every link takes as they are,
 * and different from each other even where capitals do not count.
 */
public final class PageNames {

  public static final String INDEX = "index.html";

  private static final int LONGEST = 100;

  private PageNames() {}

  /** One name for each file, in their order. */
  public static List<String> of(List<Path> files) {
    Set<String> taken = new HashSet<>(Set.of(INDEX));
    Map<String, Integer> doubles = new HashMap<>();
    List<String> names = new ArrayList<>();
    for (Path file : files) {
      String stem = stem(file.getFileName() == null ? "" : file.getFileName().toString());
      String key = stem.toLowerCase(Locale.ROOT);
      String name = stem + ".html";
      while (!taken.add(name.toLowerCase(Locale.ROOT))) {
        // The count goes on from the last double, so that a thousand of a name stay cheap.
        name = stem + "-" + (doubles.merge(key, 1, Integer::sum) + 1) + ".html";
      }
      names.add(name);
    }
    return names;
  }

  private static String stem(String name) {
    String safe = name.replaceAll("[^A-Za-z0-9._-]+", "-").replaceFirst("^[.-]+", "");
    return safe.isEmpty() ? "file" : safe.substring(0, Math.min(LONGEST, safe.length()));
  }
}
