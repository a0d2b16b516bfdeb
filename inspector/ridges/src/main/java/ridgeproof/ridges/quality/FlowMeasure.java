package ridgeproof.ridges.quality;

/**
 * Ridge flow and period.
 *
 * @param certainty mean orientation certainty level of the blocks (ISO/IEC 29794-4, from memory), 0
 *     none .. 1 one direction only
 * @param roughness mean difference of direction between neighbouring blocks, degrees (orientation
 *     flow of ISO/IEC 29794-4, from memory)
 * @param periodPixels median distance from ridge to ridge, pixels of the image
 * @param periodMm the same, mm; 0.4 to 0.6 in adults (common practice)
 * @param periodSpread interquartile range of the period over its median
 */
public record FlowMeasure(
    double certainty,
    double roughness,
    double periodPixels,
    double periodMm,
    double periodSpread) {}
