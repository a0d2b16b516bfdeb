package ridgeproof.spec.submission;

import java.util.OptionalInt;
import ridgeproof.spec.table.Source;

/**
 * How many records of one type a type of transaction holds.
 *
 * @param least records that are needed
 * @param most records that are listed; empty where no limit is stated
 */
public record RecordLimit(int recordType, int least, OptionalInt most, Source source) {}
