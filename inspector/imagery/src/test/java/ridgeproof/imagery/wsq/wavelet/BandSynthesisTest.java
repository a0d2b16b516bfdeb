package ridgeproof.imagery.wsq.wavelet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ridgeproof.imagery.wsq.codestream.DecodingDeadline;
import ridgeproof.imagery.wsq.codestream.WsqLimits;
import ridgeproof.imagery.wsq.subband.Band;
import ridgeproof.imagery.wsq.subband.SubbandNode;

/** What is taken apart by the definition of the filters must come together again. */
public class BandSynthesisTest {

  private static final double ROOT = Math.sqrt(2);
  private static final FilterPair FIVE_THREE =
      new FilterPair(
          true,
          new double[] {0.75 * ROOT, 0.25 * ROOT, -0.125 * ROOT},
          new double[] {ROOT / 2, -ROOT / 4});
  private static final FilterPair HAAR =
      new FilterPair(false, new double[] {ROOT / 2}, new double[] {ROOT / 2});
  private static final FilterPair TWO_SIX =
      new FilterPair(
          false, new double[] {ROOT / 2}, new double[] {ROOT / 2, -ROOT / 16, -ROOT / 16});
  private static final FilterPair SIX_TWO =
      new FilterPair(
          false, new double[] {ROOT / 2, ROOT / 16, -ROOT / 16}, new double[] {ROOT / 2});

  /** Pairs that reconstruct perfectly, of odd and of even lengths. */
  public static final List<FilterPair> PAIRS =
      List.of(FilterPair.STANDARD, FIVE_THREE, HAAR, TWO_SIX, SIX_TWO);

  @Test
  void liftingInvertsOddFilters() {
    for (FilterPair filters : new FilterPair[] {FilterPair.STANDARD, FIVE_THREE, swapped()}) {
      assertInverts(filters, new LiftingSynthesis(LiftingScheme.of(filters).orElseThrow()));
    }
  }

  @Test
  void convolutionInvertsOddFilters() {
    for (FilterPair filters : new FilterPair[] {FilterPair.STANDARD, FIVE_THREE, swapped()}) {
      assertInverts(filters, new ConvolutionSynthesis(filters));
    }
  }

  @Test
  void convolutionInvertsEvenFilters() {
    for (FilterPair filters : new FilterPair[] {HAAR, TWO_SIX, SIX_TWO}) {
      assertInverts(filters, new ConvolutionSynthesis(filters));
    }
  }

  @Test
  void evenFiltersHaveNoLadder() {
    assertTrue(LiftingScheme.of(HAAR).isEmpty());
  }

  @Test
  void oddFiltersThatReconstructNothingHaveNoLadder() {
    FilterPair filters =
        new FilterPair(true, new double[] {1, 0.3, 0.2}, new double[] {1, 0.7, 0.4});
    assertTrue(LiftingScheme.of(filters).isEmpty());
  }

  @Test
  void theStandardPairHasFourLiftingSteps() {
    assertEquals(4, LiftingScheme.of(FilterPair.STANDARD).orElseThrow().weights().length);
  }

  private static FilterPair swapped() {
    return new FilterPair(
        true, FilterPair.STANDARD.lowPassSynthesis(), FilterPair.STANDARD.highPassSynthesis());
  }

  private static void assertInverts(FilterPair filters, BandSynthesis synthesis) {
    Random random = new Random(3);
    for (int width = 1; width <= 24; width++) {
      for (int height = 1; height <= 24; height += 1 + width % 3) {
        double[][] image = new double[height][width];
        double constant = random.nextDouble();
        for (double[] row : image) {
          for (int x = 0; x < width; x++) {
            row[x] = width == 1 || height == 1 ? constant : random.nextDouble();
          }
        }
        double[][] back = synthesized(filters, synthesis, image);
        for (int y = 0; y < height; y++) {
          for (int x = 0; x < width; x++) {
            assertEquals(image[y][x], back[y][x], 1e-4, width + " x " + height);
          }
        }
      }
    }
  }

  private static double[][] synthesized(
      FilterPair filters, BandSynthesis synthesis, double[][] image) {
    int height = image.length;
    int width = image[0].length;
    double[][] rows = new double[height][];
    for (int y = 0; y < height; y++) {
      rows[y] = analyzed(filters, image[y]);
    }
    double[][] columns = new double[width][];
    for (int x = 0; x < width; x++) {
      double[] column = new double[height];
      for (int y = 0; y < height; y++) {
        column[y] = rows[y][x];
      }
      columns[x] = analyzed(filters, column);
    }
    int lows = (width + 1) / 2;
    int lowRows = (height + 1) / 2;
    double low = synthesis.lowFactor();
    double high = synthesis.highFactor();
    double[][] back = new double[height][width];
    SubbandNode node = new SubbandNode(width, height, -1, null, null, null, null);
    synthesis.synthesize(
        node,
        band(columns, 0, lows, 0, lowRows, low * low),
        band(columns, lows, width, 0, lowRows, low * high),
        band(columns, 0, lows, lowRows, height, low * high),
        band(columns, lows, width, lowRows, height, high * high),
        (row, evens, odds) -> {
          for (int x = 0; x < width; x++) {
            back[row][x] = (x % 2 == 0 ? evens : odds)[x / 2];
          }
        },
        new DecodingDeadline(WsqLimits.standard()));
    return back;
  }

  private static Band band(
      double[][] columns, int left, int right, int top, int bottom, double factor) {
    float[] values = new float[(right - left) * (bottom - top)];
    for (int y = top; y < bottom; y++) {
      for (int x = left; x < right; x++) {
        values[(y - top) * (right - left) + x - left] = (float) (columns[x][y] * factor);
      }
    }
    return new Band(values, 0);
  }

  /** Low-pass samples, then high-pass samples, straight from the definition. */
  private static double[] analyzed(FilterPair filters, double[] signal) {
    int lows = (signal.length + 1) / 2;
    double[] result = new double[signal.length];
    double[] low = filters.lowPassAnalysis();
    double[] high = filters.highPassAnalysis();
    for (int n = 0; n < lows; n++) {
      result[n] = filtered(filters.isOdd(), low, signal, 2 * n, 1);
    }
    for (int n = 0; n < signal.length / 2; n++) {
      int center = filters.isOdd() ? 2 * n + 1 : 2 * n;
      result[lows + n] = filtered(filters.isOdd(), high, signal, center, filters.isOdd() ? 1 : -1);
    }
    return result;
  }

  private static double filtered(
      boolean odd, double[] half, double[] signal, int center, int rightSign) {
    double sum = 0;
    for (int j = 0; j < half.length; j++) {
      if (odd) {
        sum += half[j] * at(signal, center + j, true);
        sum += j == 0 ? 0 : half[j] * at(signal, center - j, true);
      } else {
        sum += rightSign * half[j] * at(signal, center + 1 + j, false);
        sum += half[j] * at(signal, center - j, false);
      }
    }
    return sum;
  }

  private static double at(double[] signal, int position, boolean wholeSample) {
    int size = signal.length;
    int at = position;
    while (at < 0 || at >= size) {
      if (size == 1) {
        return signal[0];
      }
      if (at < 0) {
        at = wholeSample ? -at : -1 - at;
      } else {
        at = wholeSample ? 2 * size - 2 - at : 2 * size - 1 - at;
      }
    }
    return signal[at];
  }
}
