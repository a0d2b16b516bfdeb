package ridgeproof.spec.limit;

import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.table.Source;

/**
 * The least that a resolution field of the header may say when records of a type are there.
 *
 * @param ppmm pixels per millimetre
 */
public record MinimumResolution(int recordType, FieldNumber field, double ppmm, Source source) {}
