package ridgeproof.imagery.wsq.wavelet;

/** Takes the rows of a synthesised band from the top. */
interface RowSink {

  /**
   * One row, apart in its pixels of even and of odd number.
   *
   * @param evens the first {@code (width + 1) / 2} are pixels 0, 2, 4, ...
   * @param odds the first {@code width / 2} are pixels 1, 3, 5, ...
   */
  void accept(int row, float[] evens, float[] odds);
}
