package ridgeproof.ridges.quality;

/**
 * Ink in and around a print that shows no ridges.
 *
 * @param areaMm2 of such ink, square millimetres
 * @param share of it in all inked area
 * @param degrees the direction of its streaks, clockwise from straight right as seen on the image,
 *     0..180
 * @param directionality how much its streaks agree, 0 not at all .. 1 fully
 */
public record SmearMeasure(double areaMm2, double share, double degrees, double directionality) {}
