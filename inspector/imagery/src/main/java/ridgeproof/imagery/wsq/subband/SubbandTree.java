package ridgeproof.imagery.wsq.subband;

import ridgeproof.imagery.wsq.codestream.MarkerSegmentSyntax;

/** The subbands of an image of some size, in the order in which a codestream holds them. */
public final class SubbandTree {

  public static final int SUBBANDS = MarkerSegmentSyntax.SUBBANDS;

  private final SubbandNode root;
  private final SubbandNode[] leaves = new SubbandNode[SUBBANDS];
  private final int[] lowPasses = new int[SUBBANDS];
  private final int[] highPasses = new int[SUBBANDS];

  public SubbandTree(int width, int height) {
    root = SubbandNode.ofImage(width, height);
    collect(root, 0, 0);
  }

  public SubbandNode root() {
    return root;
  }

  /** The subband's size. */
  public SubbandNode leaf(int subband) {
    return leaves[subband];
  }

  /** The product of the factors that each pass of a filter on the way to a subband brings. */
  public double gain(int subband, double lowFactor, double highFactor) {
    return Math.pow(lowFactor, lowPasses[subband]) * Math.pow(highFactor, highPasses[subband]);
  }

  private void collect(SubbandNode node, int low, int high) {
    if (node.isLeaf()) {
      leaves[node.subband()] = node;
      lowPasses[node.subband()] = low;
      highPasses[node.subband()] = high;
    } else {
      collect(node.lowLow(), low + 2, high);
      collect(node.highLow(), low + 1, high + 1);
      collect(node.lowHigh(), low + 1, high + 1);
      collect(node.highHigh(), low, high + 2);
    }
  }
}
