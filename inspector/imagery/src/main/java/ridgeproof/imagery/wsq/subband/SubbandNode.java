package ridgeproof.imagery.wsq.subband;

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
public record SubbandNode(
    int width,
    int height,
    int subband,
    SubbandNode lowLow,
    SubbandNode highLow,
    SubbandNode lowHigh,
    SubbandNode highHigh) {

  /** Either a subband or four shapes: top left, top right, bottom left, bottom right. */
  private record Shape(int subband, Shape[] parts) {}

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
    return make(WSQ, width, height, false, false);
  }

  public boolean isLeaf() {
    return subband >= 0;
  }

  public int area() {
    return width * height;
  }

  private static Shape leaf(int subband) {
    return new Shape(subband, null);
  }

  private static Shape four(int first) {
    return split(leaf(first), leaf(first + 1), leaf(first + 2), leaf(first + 3));
  }

  private static Shape sixteen(int first) {
    return split(four(first), four(first + 4), four(first + 8), four(first + 12));
  }

  private static Shape split(Shape topLeft, Shape topRight, Shape bottomLeft, Shape bottomRight) {
    return new Shape(-1, new Shape[] {topLeft, topRight, bottomLeft, bottomRight});
  }

  private static SubbandNode make(
      Shape shape, int width, int height, boolean right, boolean bottom) {
    if (shape.parts == null) {
      return new SubbandNode(width, height, shape.subband, null, null, null, null);
    }
    int leftWidth = right ? width / 2 : (width + 1) / 2;
    int topHeight = bottom ? height / 2 : (height + 1) / 2;
    SubbandNode[] parts = new SubbandNode[shape.parts.length];
    for (int i = 0; i < parts.length; i++) {
      boolean onRight = (i & 1) != 0;
      boolean atBottom = (i & 2) != 0;
      int partWidth = onRight ? width - leftWidth : leftWidth;
      int partHeight = atBottom ? height - topHeight : topHeight;
      parts[i] = make(shape.parts[i], partWidth, partHeight, onRight, atBottom);
    }
    int low = (right ? 1 : 0) + (bottom ? 2 : 0);
    return new SubbandNode(
        width, height, -1, parts[low], parts[low ^ 1], parts[low ^ 2], parts[low ^ 3]);
  }
}
