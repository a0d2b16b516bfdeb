package ridgeproof.spec.published;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/** Compares two short meanings of one code by the stems that they share. */
final class MeaningStems {

  private static final int STEM = 4;

  private MeaningStems() {}

  /** Whether both say at least one same thing; a sign for a person to read them, no proof. */
  static boolean share(String left, String right) {
    Set<String> stems = stems(left);
    stems.retainAll(stems(right));
    return !stems.isEmpty();
  }

  private static Set<String> stems(String text) {
    Set<String> stems = new TreeSet<>();
    for (String word : text.toLowerCase(Locale.ROOT).split("[^a-z0-9]+")) {
      if (!word.isEmpty()) {
        stems.add(word.substring(0, Math.min(STEM, word.length())));
      }
    }
    stems.removeAll(Set.of("the", "of", "a", "or", "and", "in", "to", "for", "is", "by"));
    return stems;
  }
}
