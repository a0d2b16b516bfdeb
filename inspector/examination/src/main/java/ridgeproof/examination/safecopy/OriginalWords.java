package ridgeproof.examination.safecopy;

import java.time.format.DateTimeFormatter;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
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
  private final Set<Integer> lengths = new TreeSet<>();

  void learn(String value) {
    String text = value.strip().toUpperCase(Locale.ROOT);
    add(text);
    String searched = text.substring(0, Math.min(text.length(), MAX_SEARCHED));
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
    if (word.length() >= SHORTEST && word.chars().anyMatch(c -> c != '0')) {
      words.add(word);
      lengths.add(word.length());
    }
  }

  boolean occurIn(String text) {
    String upper = text.toUpperCase(Locale.ROOT);
    for (int length : lengths) {
      for (int i = 0; i + length <= upper.length(); i++) {
        if (words.contains(upper.substring(i, i + length))) {
          return true;
        }
      }
    }
    return false;
  }
}
