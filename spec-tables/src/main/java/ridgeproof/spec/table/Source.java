package ridgeproof.spec.table;

/**
 * Where a requirement is written, and how we know.
 *
 * @param document key of a row of {@code sources.csv}, for instance {@code ITL2015}
 * @param place clause, table or field within the document; may be empty
 */
public record Source(String document, String place, Knowledge known) {

  /** How a statement is known. */
  public enum Knowledge {
    /** Matched by a test against a published list. */
    PUBLISHED("published"),
    /** Sources disagree. */
    DISPUTED("disputed"),
    FROM_MEMORY("from memory"),
    COMMON_PRACTICE("common practice");

    private final String label;

    Knowledge(String label) {
      this.label = label;
    }

    public String label() {
      return label;
    }

    /** Whether a file may be rejected for this alone. */
    public boolean isFirm() {
      return this == PUBLISHED || this == COMMON_PRACTICE;
    }

    static Knowledge of(String label) {
      for (Knowledge knowledge : values()) {
        if (knowledge.label.equals(label)) {
          return knowledge;
        }
      }
      throw new IllegalArgumentException(
          "known is \"" + label + "\", not published, disputed, from memory or common practice");
    }
  }

  /** The same place, known in another way. */
  public Source known(Knowledge other) {
    return new Source(document, place, other);
  }

  /** Reads {@code KEY} or {@code KEY: place}. */
  static Source parse(String text, String known) {
    if (text.isEmpty()) {
      throw new IllegalArgumentException("no source");
    }
    int colon = text.indexOf(':');
    String document = colon < 0 ? text : text.substring(0, colon);
    String place = colon < 0 ? "" : text.substring(colon + 1).strip();
    return new Source(document.strip(), place, Knowledge.of(known));
  }
}
