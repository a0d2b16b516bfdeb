package ridgeproof.imagery.wsq.wavelet;

/** Turns the rows of the whole image into gray levels: shifted, rounded and clamped to 0..255. */
final class GrayRows implements RowSink {

  private static final int WHITE = 255;

  private final int width;
  private final byte[] pixels;
  private final float shift;

  GrayRows(int width, int height, double shift) {
    this.width = width;
    this.pixels = new byte[width * height];
    this.shift = (float) (shift + 0.5);
  }

  byte[] pixels() {
    return pixels;
  }

  @Override
  public void accept(int row, float[] evens, float[] odds) {
    byte[] out = pixels;
    float add = shift;
    int pairs = width / 2;
    int at = row * width;
    for (int i = 0; i < pairs; i++) {
      out[at + 2 * i] = gray(evens[i] + add);
      out[at + 2 * i + 1] = gray(odds[i] + add);
    }
    if (width % 2 == 1) {
      out[at + width - 1] = gray(evens[pairs] + add);
    }
  }

  private static byte gray(float level) {
    return (byte) Math.max(0, Math.min(WHITE, (int) level));
  }
}
