package ridgeproof.ridges.map;

/**
 * What the gray profile across the ridges tells of each block: the x-signature of Hong, Wan and
 * Jain (1998), its autocorrelation for the ridge period, and from the same samples local clarity
 * (Chen, Dass and Jain 2005), frequency domain analysis and ridge-valley uniformity (ISO/IEC
 * 29794-4, from memory).
 */
public final class XSignatureField {

  /** Gray levels for each pixel; below it there is nothing but paper. */
  private static final double MIN_GRADIENT = 0.7;

  /** A profile that repeats less has no ridges whose clarity could be told. */
  private static final double MIN_PERIODICITY = 0.3;

  private final float[] period;
  private final float[] periodicity;
  private final float[] contrast;
  private final float[] level;
  private final float[] ridgeShare;
  private final float[] clarity;
  private final float[] dominance;
  private final float[] unevenness;
  private final float[] edge;
  private final float[] grain;

  private XSignatureField(int blocks) {
    period = new float[blocks];
    periodicity = new float[blocks];
    contrast = new float[blocks];
    level = new float[blocks];
    ridgeShare = new float[blocks];
    clarity = new float[blocks];
    dominance = new float[blocks];
    unevenness = new float[blocks];
    edge = new float[blocks];
    grain = new float[blocks];
  }

  static XSignatureField of(byte[] pixels, StructureTensorField tensors) {
    BlockGrid grid = tensors.grid();
    XSignatureField field = new XSignatureField(grid.blocks());
    XSignature signature = new XSignature(pixels, grid.width(), grid.height());
    for (int row = 0; row < grid.rows(); row++) {
      for (int column = 0; column < grid.columns(); column++) {
        int block = grid.index(column, row);
        if (tensors.gradient(block) >= MIN_GRADIENT) {
          signature.sample(
              (grid.left(column) + grid.right(column)) / 2.0,
              (grid.top(row) + grid.bottom(row)) / 2.0,
              tensors.orientation(block));
          field.store(block, signature);
        }
      }
    }
    return field;
  }

  private void store(int block, XSignature signature) {
    period[block] = (float) signature.period();
    periodicity[block] = (float) signature.periodicity();
    contrast[block] = (float) signature.contrast();
    if (signature.periodicity() < MIN_PERIODICITY) {
      return;
    }
    level[block] = (float) signature.level();
    ridgeShare[block] = (float) signature.ridgeShare();
    clarity[block] = (float) signature.clarity();
    dominance[block] = (float) signature.dominance();
    unevenness[block] = (float) signature.unevenness();
    edge[block] = (float) signature.edge();
    grain[block] = (float) signature.grain();
  }

  /** Pixels from ridge to ridge; 0 where the profile does not repeat. */
  public double period(int block) {
    return period[block];
  }

  /** How well the profile repeats after one period: 0 not at all .. 1 exactly. */
  double periodicity(int block) {
    return periodicity[block];
  }

  /** Gray levels between the mean valley and the mean ridge. */
  public double contrast(int block) {
    return contrast[block];
  }

  /** The gray level midway between ridges and valleys. */
  public double level(int block) {
    return level[block];
  }

  /** The part of the profile that is ridge, 0..1. */
  public double ridgeShare(int block) {
    return ridgeShare[block];
  }

  /**
   * 1 when no pixel of a ridge is as light as a valley or the other way round .. 0 no difference.
   */
  public double clarity(int block) {
    return clarity[block];
  }

  /** The strongest frequency's share of all amplitudes, 0..1. */
  public double dominance(int block) {
    return dominance[block];
  }

  /** Standard deviation of the ratio of ridge to valley width within the block. */
  public double unevenness(int block) {
    return unevenness[block];
  }

  /** Mean step from pixel to pixel along the ridges, of the contrast; falls with blur. */
  public double grain(int block) {
    return grain[block];
  }

  /** Pixels from valley to ridge level at the steepest place. */
  public double edge(int block) {
    return edge[block];
  }
}
