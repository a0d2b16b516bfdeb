package ridgeproof.ridges.quality;

/**
 * How clear the ridges are.
 *
 * @param clarity mean local clarity (Chen, Dass and Jain 2005): 1 when ridge and valley pixels do
 *     not overlap in gray level .. 0 when they cannot be told apart
 * @param dominance mean share of the strongest frequency of the profile (frequency domain analysis,
 *     ISO/IEC 29794-4, from memory), 0..1
 * @param unevenness mean standard deviation of the ratio of ridge to valley width within a block
 *     (ridge valley uniformity, ISO/IEC 29794-4, from memory); 0 even
 * @param edgePixels median width of the step between ridge and valley, pixels of the image; grows
 *     with blur
 * @param blur that width over half a ridge period: below 0.3 sharp, 0.4 no more than a sine wave
 * @param grain median step from pixel to pixel along the ridges, of the contrast: what is finer
 *     than ridges, which blur takes away first
 */
public record ClarityMeasure(
    double clarity,
    double dominance,
    double unevenness,
    double edgePixels,
    double blur,
    double grain) {}
