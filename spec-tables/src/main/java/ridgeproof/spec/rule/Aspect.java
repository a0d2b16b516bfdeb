package ridgeproof.spec.rule;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** What a layout row says of a field beside its number and mnemonic; each may be known apart. */
public enum Aspect {
  /** Whether it has to be there. */
  PRESENCE,
  /** How often it may repeat. */
  OCCURS,
  /** How many items a subfield has. */
  ITEMS,
  CHARACTERS,
  LENGTH,
  VALUES;

  /** Reads words with blanks between them, {@code presence values}. */
  public static Set<Aspect> parse(String cell) {
    Set<Aspect> aspects = EnumSet.noneOf(Aspect.class);
    for (String word : cell.split(" ")) {
      if (!word.isEmpty()) {
        aspects.add(of(word));
      }
    }
    return aspects;
  }

  private static Aspect of(String word) {
    for (Aspect aspect : values()) {
      if (aspect.name().toLowerCase(Locale.ROOT).equals(word)) {
        return aspect;
      }
    }
    throw new IllegalArgumentException(
        "\"" + word + "\" is not presence, occurs, items, characters, length or values");
  }
}
