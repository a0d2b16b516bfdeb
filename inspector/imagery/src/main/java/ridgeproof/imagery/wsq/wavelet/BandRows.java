package ridgeproof.imagery.wsq.wavelet;

import ridgeproof.imagery.wsq.subband.Band;
import ridgeproof.imagery.wsq.subband.SubbandNode;

/** Collects the rows of a band that is itself a part of another one. */
final class BandRows implements RowSink {

  private final int width;
  private final float[] values;

  BandRows(SubbandNode node) {
    width = node.width();
    values = new float[node.area()];
  }

  Band band() {
    return new Band(values, 0);
  }

  @Override
  public void accept(int row, float[] evens, float[] odds) {
    float[] out = values;
    int pairs = width / 2;
    int at = row * width;
    for (int i = 0; i < pairs; i++) {
      out[at + 2 * i] = evens[i];
      out[at + 2 * i + 1] = odds[i];
    }
    if (width % 2 == 1) {
      out[at + width - 1] = evens[pairs];
    }
  }
}
