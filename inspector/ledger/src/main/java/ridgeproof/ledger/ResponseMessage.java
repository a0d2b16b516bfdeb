package ridgeproof.ledger;

import java.util.OptionalInt;

/**
 * A reason that a bureau gave.
 *
 * @param code as published, such as {@code L0008}; {@code none} where the text names no code
 * @param finger friction ridge position code, where the text names a finger
 */
public record ResponseMessage(String code, OptionalInt finger) {

  /** The code of a message that names none. */
  public static final String NO_CODE = "none";
}
