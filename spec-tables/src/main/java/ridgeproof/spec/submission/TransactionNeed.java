package ridgeproof.spec.submission;

import java.util.List;
import ridgeproof.spec.table.Source;

/**
 * What a type of transaction has to hold besides its text.
 *
 * @param kind what is needed
 * @param ways names of the submission profiles that fill a set of ten fingers, the usual one first
 * @param unusualWays names of further profiles that fill it, which are seldom sent for this type
 */
public record TransactionNeed(
    String type, Kind kind, List<String> ways, List<String> unusualWays, Source source) {

  /** What is needed. */
  public enum Kind {
    /** All ten fingers, each printed or annotated as missing. */
    TEN_FINGERS("ten-fingers"),
    /** At least one print of a finger, palm or sole. */
    PRINT("print"),
    /** At least one latent print. */
    LATENT("latent"),
    /** At least one image of any kind. */
    IMAGE("image"),
    /** The records that {@link RecordLimit} rows ask for, and nothing more. */
    RECORDS("records"),
    /** Text alone is enough. */
    NOTHING("nothing");

    private final String key;

    Kind(String key) {
      this.key = key;
    }

    public static Kind parse(String cell) {
      for (Kind kind : values()) {
        if (kind.key.equals(cell)) {
          return kind;
        }
      }
      throw new IllegalArgumentException("no kind of need: " + cell);
    }
  }

  public TransactionNeed {
    ways = List.copyOf(ways);
    unusualWays = List.copyOf(unusualWays);
  }
}
