package ridgeproof.corpus.fault;

import java.util.Locale;

/**
 * Where a finding may lie.
 *
 * @param value a position code, or a field number such as 2.022
 */
public record FaultPlace(Kind kind, String value) {

  /** What the place is named by. */
  public enum Kind {
    /** A friction ridge position. */
    FINGER,
    /** A field of any record. */
    FIELD,
    /** The file as a whole. */
    FILE
  }

  /** Reads {@code finger 7}, {@code field 2.022} or {@code file}. */
  static FaultPlace of(String text) {
    String[] words = text.strip().split(" ");
    return new FaultPlace(
        Kind.valueOf(words[0].toUpperCase(Locale.ROOT)), words.length > 1 ? words[1] : "");
  }

  @Override
  public String toString() {
    return (kind.name().toLowerCase(Locale.ROOT) + " " + value).strip();
  }
}
