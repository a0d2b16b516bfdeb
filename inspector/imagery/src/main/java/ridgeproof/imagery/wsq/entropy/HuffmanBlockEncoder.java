package ridgeproof.imagery.wsq.entropy;

import java.util.Arrays;
import ridgeproof.imagery.wsq.codestream.CodestreamWriter;
import ridgeproof.imagery.wsq.subband.EntropySymbols;

/** The symbols of one block with their plain bits: {@code plain << 8 | symbol}. */
public final class HuffmanBlockEncoder {

  private static final int MAX_8 = 0xFF;
  private static final int MAX_16 = 0xFFFF;
  private static final int SYMBOL_MASK = 0xFF;
  private static final int PLAIN_SHIFT = 8;

  private int[] symbols = new int[1024];
  private int size;
  private int run;

  /** Quantizes the coefficients of a subband, each times its gain, and takes their symbols. */
  public void add(float[] coefficients, double gain, double width, double zeroWidth) {
    float factor = (float) (gain / width);
    float dead = (float) (zeroWidth / (2 * width));
    for (float coefficient : coefficients) {
      float scaled = coefficient * factor;
      if (scaled > dead) {
        value((int) Math.min(scaled - dead, MAX_16 - 1) + 1);
      } else if (scaled < -dead) {
        value(-(int) Math.min(-scaled - dead, MAX_16 - 1) - 1);
      } else {
        run++;
      }
    }
  }

  /** Ends the run of zeros at the end of the block. */
  public void finish() {
    for (; run > 0; run -= Math.min(run, MAX_16)) {
      if (run <= EntropySymbols.MAX_RUN_SYMBOL) {
        put(run);
      } else if (run <= MAX_8) {
        put(run << PLAIN_SHIFT | EntropySymbols.RUN_8);
      } else {
        put(Math.min(run, MAX_16) << PLAIN_SHIFT | EntropySymbols.RUN_16);
      }
    }
  }

  public void countInto(int[] frequencies) {
    for (int i = 0; i < size; i++) {
      frequencies[symbols[i] & SYMBOL_MASK]++;
    }
  }

  public void write(HuffmanCode code, CodestreamWriter out) {
    for (int i = 0; i < size; i++) {
      int symbol = symbols[i] & SYMBOL_MASK;
      out.bits(code.code(symbol), code.length(symbol));
      int extra = EntropySymbols.extraBits(symbol);
      if (extra > 0) {
        out.bits(symbols[i] >>> PLAIN_SHIFT, extra);
      }
    }
    out.endBits();
  }

  private void value(int quantized) {
    finish();
    int symbol = quantized + EntropySymbols.ZERO_VALUE;
    if (symbol >= EntropySymbols.FIRST_VALUE && symbol <= EntropySymbols.LAST_VALUE) {
      put(symbol);
      return;
    }
    int magnitude = Math.abs(quantized);
    boolean small = magnitude <= MAX_8;
    int escape;
    if (quantized > 0) {
      escape = small ? EntropySymbols.POSITIVE_8 : EntropySymbols.POSITIVE_16;
    } else {
      escape = small ? EntropySymbols.NEGATIVE_8 : EntropySymbols.NEGATIVE_16;
    }
    put(magnitude << PLAIN_SHIFT | escape);
  }

  private void put(int symbol) {
    if (size == symbols.length) {
      symbols = Arrays.copyOf(symbols, 2 * size);
    }
    symbols[size++] = symbol;
  }
}
