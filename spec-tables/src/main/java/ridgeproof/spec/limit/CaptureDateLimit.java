package ridgeproof.spec.limit;

import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.table.Source;

/**
 * How far a date of capture may lie from the date of the transaction, field 1.005.
 *
 * @param daysAfter days that it may lie after it, for time zones
 * @param maxYears years that it may lie before it
 */
public record CaptureDateLimit(FieldNumber field, int daysAfter, int maxYears, Source source) {}
