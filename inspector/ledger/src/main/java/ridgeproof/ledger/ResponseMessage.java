package ridgeproof.ledger;

import java.util.OptionalInt;

/**
 * A reason that a bureau gave.
 *
 * @param reason a published code such as {@code L0008}, or the title of the message that the words
 *     point to, or {@link #UNKNOWN}: never the text itself, which may name a person
 * @param finger friction ridge position code, where the text names a finger
 */
public record ResponseMessage(String reason, OptionalInt finger) {

  /** The reason where neither a code nor the words tell it. */
  public static final String UNKNOWN = "other reason";
}
