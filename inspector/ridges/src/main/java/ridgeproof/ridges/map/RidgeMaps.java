package ridgeproof.ridges.map;

import ridgeproof.imagery.GrayImage;

/**
 * What is computed once for each image and shared by all that look at it: ridge flow, profiles and
 * where the prints are, block by block at 500 ppi.
 */
public final class RidgeMaps {

  /**
   * Share of ridge blocks in 7 x 7 that makes a block of skin part of a print: creases and wear
   * leave a few clear ones among many that are not.
   */
  private static final double AMONG_RIDGES = 0.2;

  private static final int AMONG_REACH = 3;

  /** Share of ridge blocks in 5 x 5 that somewhere in a print must be met: words never do. */
  private static final double SURELY_RIDGES = 0.5;

  private static final int SURE_REACH = 2;

  /** Blocks; strokes and letters are narrower than 2 x 1.4 mm, prints are not. */
  private static final double OPENING = 2.3;

  /** Blocks; 70 mm2, the size of a punched hole and its rim. */
  private static final int MAX_HOLE = 190;

  /** Blocks that a print may reach beyond its good ridges, 2.4 mm. */
  private static final int GROWTH = 4;

  /**
   * Blocks; what grew beyond the good ridges is no narrower than twice this, as words above are.
   */
  private static final double GROWN_OPENING = 6.5;

  private final double scale;
  private final byte[] pixels;
  private final BlockGrid grid;
  private final StructureTensorField tensors;
  private final XSignatureField signatures;
  private final float[] means;
  private final boolean[] ridges;
  private final boolean[] prints;
  private final boolean[] extents;

  private RidgeMaps(GrayImage image, double scale, byte[] pixels) {
    this.scale = scale;
    this.pixels = pixels;
    grid =
        BlockGrid.over(
            scale == 1 ? image.width() : WorkingResolution.length(image.width(), scale),
            scale == 1 ? image.height() : WorkingResolution.length(image.height(), scale));
    tensors = StructureTensorField.of(pixels, grid);
    signatures = XSignatureField.of(pixels, tensors);
    ridges = RidgeMask.strict(tensors, signatures);
    means = grid.means(pixels);
    boolean[] skin = SkinMask.of(pixels, tensors, means, ridges);
    boolean[] sure = among(skin, SURE_REACH, SURELY_RIDGES);
    boolean[] likely = among(skin, AMONG_REACH, AMONG_RIDGES);
    prints = RidgeMask.fillHoles(RidgeMask.touching(likely, sure, grid), grid, MAX_HOLE);
    extents = RidgeMask.fillHoles(grow(skin), grid, MAX_HOLE);
  }

  /** Whether {@link #of} can work with an image of this resolution (pixels per inch). */
  public static boolean canBeMade(GrayImage image, double ppi) {
    return WorkingResolution.isUsable(ppi) && WorkingResolution.fits(image, ppi);
  }

  public static RidgeMaps of(GrayImage image, double ppi) {
    return new RidgeMaps(image, WorkingResolution.scale(ppi), WorkingResolution.pixels(image, ppi));
  }

  /** Skin with so many ridges around it, over more than a stroke or a letter. */
  private boolean[] among(boolean[] skin, int reach, double share) {
    boolean[] among = RidgeMask.majority(ridges, grid, reach, share);
    for (int block = 0; block < among.length; block++) {
      among[block] &= skin[block];
    }
    return RidgeMask.open(among, grid, OPENING);
  }

  private boolean[] grow(boolean[] skin) {
    boolean[] grown = prints.clone();
    for (int step = 0; step < GROWTH; step++) {
      boolean[] next = RidgeMask.dilate(grown, grid, 1);
      for (int block = 0; block < next.length; block++) {
        next[block] = grown[block] || next[block] && skin[block];
      }
      grown = next;
    }
    boolean[] opened = RidgeMask.open(grown, grid, GROWN_OPENING);
    for (int block = 0; block < opened.length; block++) {
      opened[block] |= prints[block];
    }
    return opened;
  }

  /** Pixels at 500 ppi for one of the image. */
  public double scale() {
    return scale;
  }

  /** Pixels at 500 ppi; not to be written to. */
  public byte[] pixels() {
    return pixels;
  }

  public BlockGrid grid() {
    return grid;
  }

  /** Mean gray level of each block; not to be written to. */
  public float[] means() {
    return means;
  }

  public StructureTensorField tensors() {
    return tensors;
  }

  public XSignatureField signatures() {
    return signatures;
  }

  /** Blocks whose own profile is that of ridges. */
  public boolean isRidge(int block) {
    return ridges[block];
  }

  /** Where ridges are good. */
  boolean[] printMask() {
    return prints.clone();
  }

  /** The prints with their fainter rims. */
  public boolean[] extentMask() {
    return extents.clone();
  }
}
