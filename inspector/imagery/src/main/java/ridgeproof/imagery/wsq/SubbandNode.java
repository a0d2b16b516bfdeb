package ridgeproof.imagery.wsq;

/**
 * A band of the WSQ transform that is split further, or one of the 64 subbands. In the
 * specification's picture bands lie in the order of their frequencies, so that the right (lower)
 * band of a split, whose frequencies are mirrored, has its own low-pass part on the right (bottom).
 * (WSQ specification IAFIS-IC-0110, from memory.)
 *
 * @param subband 0 to 63, or -1 when the band is split
 * @param lowLow low-pass part in both directions
 * @param highLow horizontal high-pass, vertical low-pass
 * @param lowHigh horizontal low-pass, vertical high-pass
 * @param highHigh high-pass part in both directions
 */
record SubbandNode(
    int width,
    int height,
    int subband,
    SubbandNode lowLow,
    SubbandNode highLow,
    SubbandNode lowHigh,
    SubbandNode highHigh) {

  private interface Shape {
    SubbandNode make(int width, int height, boolean right, boolean bottom);
  }

  private static final Shape WSQ =
      split(
          split(
              split(split(four(0), leaf(4), leaf(5), leaf(6)), four(7), four(11), four(15)),
              sixteen(19),
              sixteen(35),
              leaf(51)),
          four(52),
          four(56),
          four(60));

  /** The tree of an image. */
  static SubbandNode ofImage(int width, int height) {
    return WSQ.make(width, height, false, false);
  }

  boolean isLeaf() {
    return subband >= 0;
  }

  int area() {
    return width * height;
  }

  private static Shape leaf(int subband) {
    return (width, height, right, bottom) ->
        new SubbandNode(width, height, subband, null, null, null, null);
  }

  private static Shape four(int first) {
    return split(leaf(first), leaf(first + 1), leaf(first + 2), leaf(first + 3));
  }

  private static Shape sixteen(int first) {
    return split(four(first), four(first + 4), four(first + 8), four(first + 12));
  }

  private static Shape split(Shape topLeft, Shape topRight, Shape bottomLeft, Shape bottomRight) {
    return (width, height, right, bottom) -> {
      int leftWidth = right ? width / 2 : (width + 1) / 2;
      int topHeight = bottom ? height / 2 : (height + 1) / 2;
      int rightWidth = width - leftWidth;
      int bottomHeight = height - topHeight;
      SubbandNode[] parts = {
        topLeft.make(leftWidth, topHeight, false, false),
        topRight.make(rightWidth, topHeight, true, false),
        bottomLeft.make(leftWidth, bottomHeight, false, true),
        bottomRight.make(rightWidth, bottomHeight, true, true)
      };
      int low = (right ? 1 : 0) + (bottom ? 2 : 0);
      return new SubbandNode(
          width, height, -1, parts[low], parts[low ^ 1], parts[low ^ 2], parts[low ^ 3]);
    };
  }
}
