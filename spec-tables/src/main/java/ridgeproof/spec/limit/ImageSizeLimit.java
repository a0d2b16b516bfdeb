package ridgeproof.spec.limit;

import java.util.Set;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.VersionRange;

/**
 * The largest image that the standard has for a friction ridge position.
 *
 * @param recordTypes the record types for which the row holds
 * @param maxWidthMm millimetres
 * @param maxHeightMm millimetres
 */
public record ImageSizeLimit(
    Set<Integer> recordTypes,
    String position,
    double maxWidthMm,
    double maxHeightMm,
    VersionRange versions,
    Source source) {}
