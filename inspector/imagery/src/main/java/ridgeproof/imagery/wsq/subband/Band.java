package ridgeproof.imagery.wsq.subband;

/**
 * The samples of a band, row by row.
 *
 * @param values an array that may hold other bands, too
 * @param start of this band's first sample
 */
public record Band(float[] values, int start) {}
