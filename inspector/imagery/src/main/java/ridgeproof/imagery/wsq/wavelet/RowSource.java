package ridgeproof.imagery.wsq.wavelet;

/** Gives the rows of a band that is to be split. */
public interface RowSource {

  /** Fills in the pixels of even and of odd number of one row. */
  void read(int row, float[] evens, float[] odds);
}
