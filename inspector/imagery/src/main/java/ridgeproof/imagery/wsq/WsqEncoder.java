package ridgeproof.imagery.wsq;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.codestream.CodestreamWriter;
import ridgeproof.imagery.wsq.codestream.HuffmanTable;
import ridgeproof.imagery.wsq.codestream.MarkerSegmentSyntax;
import ridgeproof.imagery.wsq.codestream.QuantizationTable;
import ridgeproof.imagery.wsq.codestream.WsqDecimal;
import ridgeproof.imagery.wsq.codestream.WsqMarker;
import ridgeproof.imagery.wsq.entropy.HuffmanBlockEncoder;
import ridgeproof.imagery.wsq.entropy.HuffmanCode;
import ridgeproof.imagery.wsq.subband.Quantization;
import ridgeproof.imagery.wsq.subband.SubbandTree;
import ridgeproof.imagery.wsq.wavelet.FilterPair;
import ridgeproof.imagery.wsq.wavelet.LiftingScheme;
import ridgeproof.imagery.wsq.wavelet.RowSource;
import ridgeproof.imagery.wsq.wavelet.WaveletAnalysis;

/**
 * Encodes gray images as WSQ with the 9/7 filters and three blocks, of which the second and third
 * share a Huffman table (WSQ specification IAFIS-IC-0110, from memory).
 *
 * <p>Any size from 1 to 65535 pixels a side gives a legal codestream. The specification is made for
 * fingerprints: it drops the finest diagonal detail (subbands 60 to 63) and every subband whose
 * variance is below 1.01, which in an image of a few pixels may be all of them. What is left then
 * is the mean gray level.
 */
public final class WsqEncoder {

  private static final int MAX_SIDE = 0xFFFF;
  private static final int MAX_MANTISSA = 0xFFFF;
  private static final long MAX_FILTER_MANTISSA = 0xFFFFFFFFL;
  private static final int GRAYS = 256;
  private static final double HALF_RANGE = 128;
  private static final int ENCODER_ALGORITHM = 0;
  private static final int[] LAST_SUBBANDS = {18, 51, 59};
  private static final int SYMBOLS = 256;

  private final GrayImage image;
  private final WsqEncoding options;
  private final CodestreamWriter out = new CodestreamWriter();

  private WsqEncoder(GrayImage image, WsqEncoding options) {
    this.image = image;
    this.options = options;
  }

  /**
   * Encodes an image.
   *
   * @throws IllegalArgumentException when a side is longer than 65535 pixels
   */
  public static byte[] encode(GrayImage image, WsqEncoding options) {
    if (image.width() > MAX_SIDE || image.height() > MAX_SIDE) {
      throw new IllegalArgumentException(image.width() + " x " + image.height() + " pixels");
    }
    return new WsqEncoder(image, options).encode();
  }

  private byte[] encode() {
    byte[] pixels = image.toArray();
    GrayRange range = GrayRange.of(pixels);
    WsqDecimal shift = WsqDecimal.closestTo(range.mean(), MAX_MANTISSA);
    WsqDecimal scale = WsqDecimal.closestTo(range.halfWidth() / HALF_RANGE, MAX_MANTISSA);
    SubbandTree tree = new SubbandTree(image.width(), image.height());
    LiftingScheme ladder = LiftingScheme.of(FilterPair.STANDARD).orElseThrow();
    WaveletAnalysis analysis =
        new WaveletAnalysis(ladder, tree, normalized(pixels, shift.value(), scale.value()));
    QuantizationTable table = BitAllocation.table(analysis, tree, options.bitsPerPixel());
    out.marker(WsqMarker.SOI);
    writeComment();
    writeFilters();
    writeQuantization(table);
    writeFrame(shift, scale);
    writeBlocks(blocks(analysis, table));
    out.marker(WsqMarker.EOI);
    return out.toArray();
  }

  private record GrayRange(int least, int most, double mean) {
    static GrayRange of(byte[] pixels) {
      int least = GRAYS;
      int most = -1;
      long sum = 0;
      for (byte pixel : pixels) {
        int gray = pixel & 0xFF;
        least = Math.min(least, gray);
        most = Math.max(most, gray);
        sum += gray;
      }
      return new GrayRange(least, most, (double) sum / pixels.length);
    }

    double halfWidth() {
      return least == most ? HALF_RANGE : Math.max(most - mean, mean - least);
    }
  }

  private RowSource normalized(byte[] pixels, double shift, double scale) {
    float[] levels = new float[GRAYS];
    for (int gray = 0; gray < GRAYS; gray++) {
      levels[gray] = (float) ((gray - shift) / scale);
    }
    int width = image.width();
    return (row, evens, odds) -> {
      int at = row * width;
      int pairs = width / 2;
      for (int i = 0; i < pairs; i++) {
        evens[i] = levels[pixels[at + 2 * i] & 0xFF];
        odds[i] = levels[pixels[at + 2 * i + 1] & 0xFF];
      }
      if (width % 2 == 1) {
        evens[pairs] = levels[pixels[at + width - 1] & 0xFF];
      }
    };
  }

  private static List<HuffmanBlockEncoder> blocks(
      WaveletAnalysis analysis, QuantizationTable table) {
    Quantization quantization = new Quantization(table);
    List<HuffmanBlockEncoder> blocks = new ArrayList<>();
    int subband = 0;
    for (int last : LAST_SUBBANDS) {
      HuffmanBlockEncoder block = new HuffmanBlockEncoder();
      for (; subband <= last; subband++) {
        if (quantization.isCoded(subband)) {
          block.add(
              analysis.coefficients(subband),
              analysis.gain(subband),
              quantization.width(subband),
              quantization.zeroWidth(subband));
        }
      }
      block.finish();
      blocks.add(block);
    }
    return blocks;
  }

  private void writeComment() {
    String text =
        String.join(
            "\n",
            "NIST_COM 9",
            "PIX_WIDTH " + image.width(),
            "PIX_HEIGHT " + image.height(),
            "PIX_DEPTH 8",
            "PPI " + options.ppi(),
            "LOSSY 1",
            "COLORSPACE GRAY",
            "COMPRESSION WSQ",
            String.format(Locale.ROOT, "WSQ_BITRATE %f", options.bitsPerPixel()));
    byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
    out.marker(WsqMarker.COM);
    out.uint16(2 + bytes.length);
    out.bytes(bytes);
  }

  private void writeFilters() {
    List<WsqDecimal> low = numbers(FilterPair.STANDARD.lowPassAnalysis());
    List<WsqDecimal> high = numbers(FilterPair.STANDARD.highPassAnalysis());
    out.marker(WsqMarker.DTT);
    out.uint16(4 + 6 * (low.size() + high.size()));
    out.uint8(2 * low.size() - 1);
    out.uint8(2 * high.size() - 1);
    out.signedNumbers(low);
    out.signedNumbers(high);
  }

  private static List<WsqDecimal> numbers(double[] values) {
    List<WsqDecimal> numbers = new ArrayList<>();
    for (double value : values) {
      numbers.add(WsqDecimal.closestTo(value, MAX_FILTER_MANTISSA));
    }
    return numbers;
  }

  private void writeQuantization(QuantizationTable table) {
    out.marker(WsqMarker.DQT);
    out.uint16(MarkerSegmentSyntax.QUANTIZATION_LENGTH);
    out.shortNumber(table.binCenter());
    for (int subband = 0; subband < SubbandTree.SUBBANDS; subband++) {
      out.shortNumber(table.binWidths().get(subband));
      out.shortNumber(table.zeroBinWidths().get(subband));
    }
  }

  private void writeFrame(WsqDecimal shift, WsqDecimal scale) {
    out.marker(WsqMarker.SOF);
    out.uint16(MarkerSegmentSyntax.FRAME_LENGTH);
    out.uint8(0);
    out.uint8(GRAYS - 1);
    out.uint16(image.height());
    out.uint16(image.width());
    out.shortNumber(shift);
    out.shortNumber(scale);
    out.uint8(ENCODER_ALGORITHM);
    out.uint16(options.softwareImplementation());
  }

  private void writeBlocks(List<HuffmanBlockEncoder> blocks) {
    HuffmanCode first = code(0, blocks.subList(0, 1));
    HuffmanCode others = code(1, blocks.subList(1, blocks.size()));
    writeTable(first);
    writeBlock(first, blocks.get(0));
    writeTable(others);
    blocks.subList(1, blocks.size()).forEach(block -> writeBlock(others, block));
  }

  private static HuffmanCode code(int id, List<HuffmanBlockEncoder> blocks) {
    int[] frequencies = new int[SYMBOLS];
    blocks.forEach(block -> block.countInto(frequencies));
    return HuffmanCode.of(id, frequencies);
  }

  private void writeTable(HuffmanCode code) {
    HuffmanTable table = code.table();
    out.marker(WsqMarker.DHT);
    out.uint16(2 + 1 + HuffmanTable.MAX_CODE + table.symbols().size());
    out.uint8(table.id());
    table.codesOfLength().forEach(out::uint8);
    table.symbols().forEach(out::uint8);
  }

  private void writeBlock(HuffmanCode code, HuffmanBlockEncoder block) {
    out.marker(WsqMarker.SOB);
    out.uint16(MarkerSegmentSyntax.BLOCK_LENGTH);
    out.uint8(code.table().id());
    block.write(code, out);
  }
}
