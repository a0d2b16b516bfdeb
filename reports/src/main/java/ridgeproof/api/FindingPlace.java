package ridgeproof.api;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Where in the file a finding is; each part only where it is known.
 *
 * @param record ordinal of the record in the file, from 1
 * @param recordType such as 14
 * @param idc information designation character of the record
 * @param field such as "2.022"
 * @param subfield from 1
 * @param item from 1
 * @param offset of the first byte in the file, from 0
 * @param length in bytes
 * @param text the whole place in words
 */
public record FindingPlace(
    OptionalInt record,
    OptionalInt recordType,
    OptionalInt idc,
    Optional<String> field,
    OptionalInt subfield,
    OptionalInt item,
    OptionalInt offset,
    OptionalInt length,
    String text) {}
