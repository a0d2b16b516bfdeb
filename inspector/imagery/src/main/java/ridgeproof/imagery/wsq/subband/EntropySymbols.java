package ridgeproof.imagery.wsq.subband;

/**
 * The symbols that WSQ codes with Huffman tables (WSQ specification IAFIS-IC-0110, from memory): 1
 * to 100 is a run of so many zeros, 101 to 106 are followed by plain bits, 107 to 254 is the
 * coefficient {@code symbol - 180}.
 */
public final class EntropySymbols {

  public static final int MAX_RUN_SYMBOL = 100;
  public static final int POSITIVE_8 = 101;
  public static final int NEGATIVE_8 = 102;
  public static final int POSITIVE_16 = 103;
  public static final int NEGATIVE_16 = 104;
  public static final int RUN_8 = 105;
  public static final int RUN_16 = 106;
  public static final int FIRST_VALUE = 107;
  public static final int LAST_VALUE = 254;
  public static final int ZERO_VALUE = 180;

  private EntropySymbols() {}

  public static boolean isRun(int symbol) {
    return symbol >= 1 && symbol <= MAX_RUN_SYMBOL;
  }

  public static boolean isValue(int symbol) {
    return symbol >= FIRST_VALUE && symbol <= LAST_VALUE;
  }

  /** Plain bits after the symbol's code. */
  public static int extraBits(int symbol) {
    return switch (symbol) {
      case POSITIVE_8, NEGATIVE_8, RUN_8 -> 8;
      case POSITIVE_16, NEGATIVE_16, RUN_16 -> 16;
      default -> 0;
    };
  }
}
