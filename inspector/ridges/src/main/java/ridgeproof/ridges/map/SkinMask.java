package ridgeproof.ridges.map;

import java.util.function.IntToDoubleFunction;

/**
 * The blocks that look like skin pressed on the ground of the image, clear ridges or not: they vary
 * in gray nearly as ridges do, or are as dark as ridges where wet skin or ink closes the valleys.
 * What is no darker than the ground is none, so that neighboring prints stay apart.
 */
final class SkinMask {

  /** Of the median gradient in clear ridges. */
  private static final double MIN_GRADIENT = 0.45;

  /** Of that gradient; blocks that vary less are ground. */
  private static final double GROUND_GRADIENT = 0.2;

  /** Part of the image that must be such ground to tell its level. */
  private static final double MIN_GROUND = 0.04;

  /** Of the way from the ground to the ridges' mean gray that skin differs from the ground. */
  private static final double MIN_DEPTH = 0.25;

  /** Of that way: where so much of it is covered, ridges have run together. */
  private static final double CLOSED = 1.1;

  private static final double LIGHTEST = 0.9;

  private final StructureTensorField tensors;
  private final float[] means;
  private final double gradient;
  private final double ground;
  private final double depth;

  private SkinMask(byte[] pixels, StructureTensorField tensors, float[] means, boolean[] ridges) {
    this.tensors = tensors;
    this.means = means;
    gradient = medianOf(ridges, tensors::ownGradient);
    ground = ground(pixels);
    depth = medianOf(ridges, block -> means[block]) - ground;
  }

  static boolean[] of(
      byte[] pixels, StructureTensorField tensors, float[] means, boolean[] ridges) {
    SkinMask mask = new SkinMask(pixels, tensors, means, ridges);
    boolean[] skin = new boolean[ridges.length];
    for (int block = 0; block < skin.length; block++) {
      skin[block] = mask.isSkin(block);
    }
    return RidgeMask.majority(skin, tensors.grid(), 1, 0.5);
  }

  private boolean isSkin(int block) {
    double covered = depth == 0 ? 0 : (means[block] - ground) / depth;
    boolean textured = tensors.ownGradient(block) >= MIN_GRADIENT * gradient;
    return covered >= CLOSED || textured && covered >= MIN_DEPTH;
  }

  /** The gray level of what shows nothing; where prints fill the image, that of their valleys. */
  private double ground(byte[] pixels) {
    double[] even = new double[means.length];
    int count = 0;
    for (int block = 0; block < means.length; block++) {
      if (tensors.ownGradient(block) < GROUND_GRADIENT * gradient) {
        even[count++] = means[block];
      }
    }
    return count >= MIN_GROUND * means.length
        ? Statistics.quantile(even, count, 0.5)
        : lightest(pixels);
  }

  private static double lightest(byte[] pixels) {
    int[] counts = new int[256];
    for (byte pixel : pixels) {
      counts[pixel & 0xFF]++;
    }
    long sum = 0;
    int level = 0;
    while (level < 255 && sum + counts[level] < LIGHTEST * pixels.length) {
      sum += counts[level++];
    }
    return level;
  }

  private static double medianOf(boolean[] chosen, IntToDoubleFunction value) {
    double[] values = new double[chosen.length];
    int count = 0;
    for (int block = 0; block < chosen.length; block++) {
      if (chosen[block]) {
        values[count++] = value.applyAsDouble(block);
      }
    }
    return Statistics.quantile(values, count, 0.5);
  }
}
