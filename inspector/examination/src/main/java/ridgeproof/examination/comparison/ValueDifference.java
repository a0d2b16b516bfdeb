package ridgeproof.examination.comparison;

import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.spec.layout.FieldNumber;

/**
 * A field, subfield or item that one record has otherwise than the other.
 *
 * @param subfield counted from 1 in the record that has it; empty where the whole field is there
 *     only once
 * @param item counted from 1; empty where the whole field or subfield differs
 * @param first the text in the first transaction, items separated by " | "; empty where it is not
 *     there
 * @param second as the first, of the second transaction
 * @param items the highest number of an item in the texts; 0 where they only say how long data is
 * @param ignored whether it was asked not to count
 */
public record ValueDifference(
    FieldNumber field,
    OptionalInt subfield,
    OptionalInt item,
    Optional<String> first,
    Optional<String> second,
    int items,
    boolean ignored) {}
