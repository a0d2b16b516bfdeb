package ridgeproof.examination.safecopy;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import ridgeproof.spec.layout.Calendar;

/** Words and numbers of the original that may occur nowhere in what is made up for a safe copy. */
final class OriginalWords {

  private static final int SHORTEST = 3;

  /** A longer value is a text or a template, of which words are collected from the beginning. */
  private static final int MAX_SEARCHED = 400;

  private static final List<DateTimeFormatter> OTHER_FORMS =
      List.of(
          DateTimeFormatter.ofPattern("ddMMuuuu", Locale.ROOT),
          DateTimeFormatter.ofPattern("MMdduuuu", Locale.ROOT));

  private final Set<String> words = new HashSet<>();

  /** The words by how they begin, so that a text of any length is gone through once. */
  private final Map<Long, List<String>> byBeginning = new HashMap<>();

  void learn(String value) {
    String text = value.strip().toUpperCase(Locale.ROOT);
    String searched = text.substring(0, Math.min(text.length(), MAX_SEARCHED));
    // Where all of a long value occurs its beginning does, which is looked for much faster.
    add(searched);
    for (String part : searched.split("[^\\p{L}\\p{Nd}]+")) {
      add(part);
      for (String digits : part.split("\\D+")) {
        add(digits);
      }
    }
    Calendar.date(text).ifPresent(date -> OTHER_FORMS.forEach(form -> add(form.format(date))));
  }

  private void add(String word) {
    // Zeros alone say that something is not known.
    if (word.length() >= SHORTEST && word.chars().anyMatch(c -> c != '0') && words.add(word)) {
      byBeginning.computeIfAbsent(beginning(word, 0), key -> new ArrayList<>()).add(word);
    }
  }

  boolean occurIn(String text) {
    String upper = text.toUpperCase(Locale.ROOT);
    for (int i = 0; i + SHORTEST <= upper.length(); i++) {
      for (String word : byBeginning.getOrDefault(beginning(upper, i), List.of())) {
        if (upper.startsWith(word, i)) {
          return true;
        }
      }
    }
    return false;
  }

  /** As many characters as the shortest word has, as one number. */
  private static long beginning(String text, int from) {
    long beginning = 0;
    for (int i = from; i < from + SHORTEST; i++) {
      beginning = beginning << Character.SIZE | text.charAt(i);
    }
    return beginning;
  }
}
