package ridgeproof.ridges.quality;

/**
 * Gray levels of a print.
 *
 * @param dynamicRange gray levels from the 5th to the 95th percentile of its pixels
 * @param contrast median gray levels between valleys and ridges
 * @param ridgeLevel gray level of the 25th percentile of its pixels
 * @param valleyLevel gray level of the 75th percentile
 * @param surroundLevel median gray level outside all prints; -1 when there is no outside
 * @param ridgeShare median part of a period that is ridge: below 0.4 when dry, above 0.6 when wet
 *     or over-inked
 * @param dryShare part of the blocks with a ridge share below 0.4
 * @param darkShare part of the blocks with a ridge share above 0.6
 * @param closedShare part of the print that is nearly as dark as ink and shows no ridges
 * @param faintShare part of the blocks with clear ridges whose contrast is less than half of what
 *     the strongest fifth has
 * @param modulation contrast over the way from paper to the darkest: twice the way from {@code
 *     surroundLevel} to midway between ridges and valleys; 1 when valleys are as light as paper, 0
 *     when there is no surround
 * @param polarity whether ridges are dark
 */
public record ToneMeasure(
    double dynamicRange,
    double contrast,
    double ridgeLevel,
    double valleyLevel,
    double surroundLevel,
    double ridgeShare,
    double dryShare,
    double darkShare,
    double closedShare,
    double faintShare,
    double modulation,
    Polarity polarity) {

  /** Which of ridges and paper is dark. */
  public enum Polarity {
    /** Dark ridges on light ground. */
    DARK_RIDGES,
    /** Light ridges on dark ground: the tones are inverted. */
    LIGHT_RIDGES,
    /** Nothing but the print is there to compare with. */
    UNKNOWN
  }
}
