package ridgeproof.ridges.quality;

/**
 * Where a print is parted from top to bottom, as when the finger left the platen during a roll.
 *
 * @param widthMm median width of the gap over the rows that have one, mm; 0 without a gap
 * @param share of the rows that have one, 0..1
 */
public record GapMeasure(double widthMm, double share) {}
