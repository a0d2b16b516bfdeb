package ridgeproof.ridges.matching;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.cbor.CBORFactory;
import com.machinezoo.sourceafis.FingerprintImage;
import com.machinezoo.sourceafis.FingerprintImageOptions;
import com.machinezoo.sourceafis.FingerprintMatcher;
import com.machinezoo.sourceafis.FingerprintTemplate;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.ridges.map.BlockGrid;
import ridgeproof.ridges.map.RidgeMaps;
import ridgeproof.ridges.map.RidgeMask;
import ridgeproof.ridges.map.RidgeRegion;
import ridgeproof.ridges.map.RidgeSmoothing;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.map.WorkingResolution;

/**
 * The minutiae of one print, ready to be compared with those of others. The extractor keeps the 100
 * most clustered at most, so that a whole roll has as many as a part of it.
 */
public final class Minutiae {

  /** Blocks around the print that are shown to the extractor. */
  private static final int RIM = 2;

  private static final double PAPER = 0.9;

  /** Around a print whose mask may be too narrow, millimetres. */
  private static final double RIM_MM = 2;

  /**
   * The largest area that is shown to the extractor, at 500 ppi: more than a roll from nail to
   * nail. Its work grows with the square of the minutiae.
   */
  private static final double MAX_PIXELS = 700_000;

  /** The same of ridges without order, where it finds a minutia at every step. */
  private static final double MAX_DISORDERED_PIXELS = 100_000;

  /**
   * Of the blocks of a print, those with clear ridges; of 160 real prints none had less than 0.8.
   */
  private static final double ORDERED = 0.2;

  /** How many the extractor keeps. */
  private static final int MOST = 100;

  private final FingerprintTemplate template;

  /** In the order of the template. */
  private final List<Minutia> all;

  private final List<Minutia> list;
  private final int reliable;
  private final boolean cutShort;

  private Minutiae(
      FingerprintTemplate template,
      List<Minutia> all,
      List<Minutia> list,
      int reliable,
      boolean cutShort) {
    this.template = template;
    this.all = all;
    this.list = list;
    this.reliable = reliable;
    this.cutShort = cutShort;
  }

  /** The minutiae of an image that shows nothing but one print; pixels per inch. */
  public static Minutiae of(byte[] gray, int width, int height, double ppi) {
    FingerprintImageOptions options = new FingerprintImageOptions().dpi(ppi);
    FingerprintTemplate template =
        new FingerprintTemplate(new FingerprintImage(width, height, gray, options));
    List<Minutia> all = read(template.toByteArray(), 1, 0, 0);
    return new Minutiae(template, all, all, all.size(), all.size() >= MOST);
  }

  /**
   * Once more, of pixels as they are: neither smoothed nor masked, with a rim around the print.
   *
   * @param print in pixels of the image
   */
  public static Minutiae again(GrayImage image, double ppi, RotatedBox print) {
    double rim = 2 * RIM_MM * ppi / PixelDensity.MM_PER_INCH;
    double width = print.width() + rim;
    double height = print.height() + rim;
    double shrunk = shrunk(width * height * Math.pow(WorkingResolution.PPI / ppi, 2), MAX_PIXELS);
    GrayImage cut =
        new RotatedBox(
                print.centreX(), print.centreY(), shrunk * width, shrunk * height, print.degrees())
            .cut(image);
    return of(cut.toArray(), cut.width(), cut.height(), ppi);
  }

  /** Of one print among others: what lies around it is painted over as paper. */
  public static Minutiae of(RidgeMaps maps, RidgeRegion region) {
    BlockGrid grid = maps.grid();
    boolean[] shown = RidgeMask.dilate(region.mask(), grid, RIM);
    int left = Math.max(0, region.left() - RIM) * BlockGrid.BLOCK;
    int top = Math.max(0, region.top() - RIM) * BlockGrid.BLOCK;
    int right = grid.right(Math.min(grid.columns() - 1, region.right() + RIM));
    int bottom = grid.bottom(Math.min(grid.rows() - 1, region.bottom() + RIM));
    ClearRidges ridges = new ClearRidges(maps, region);
    double most = ridges.share() < ORDERED ? MAX_DISORDERED_PIXELS : MAX_PIXELS;
    double shrunk = shrunk((double) (right - left) * (bottom - top), most);
    int width = (int) (shrunk * (right - left));
    int height = (int) (shrunk * (bottom - top));
    left += (right - left - width) / 2;
    top += (bottom - top - height) / 2;
    byte[] gray = RidgeSmoothing.cut(maps, shown, left, top, width, height, paper(maps, region));
    FingerprintImageOptions options = new FingerprintImageOptions().dpi(WorkingResolution.PPI);
    FingerprintTemplate template =
        new FingerprintTemplate(new FingerprintImage(width, height, gray, options));
    List<Minutia> all = read(template.toByteArray(), 1 / maps.scale(), left, top);
    return new Minutiae(
        template,
        all,
        all.stream().filter(ridges::surround).toList(),
        (int) all.stream().filter(ridges::support).count(),
        all.size() >= MOST);
  }

  /** By how much each side is shortened, about the middle, so that the extractor can bear it. */
  private static double shrunk(double pixels, double most) {
    return Math.min(1, Math.sqrt(most / pixels));
  }

  /** Whether it has as many as the extractor keeps and hardly one of them lies in clear ridges. */
  public boolean isOfDisorder() {
    return cutShort && reliable < ORDERED / 2 * MOST;
  }

  private static byte paper(RidgeMaps maps, RidgeRegion region) {
    int[] counts = new int[256];
    BlockGrid grid = maps.grid();
    long total = 0;
    for (int y = region.top() * BlockGrid.BLOCK; y < grid.bottom(region.bottom()); y += 3) {
      for (int x = region.left() * BlockGrid.BLOCK; x < grid.right(region.right()); x += 3) {
        counts[maps.pixels()[y * grid.width() + x] & 0xFF]++;
        total++;
      }
    }
    long sum = 0;
    int level = 0;
    while (level < 255 && sum + counts[level] < PAPER * total) {
      sum += counts[level];
      level++;
    }
    return (byte) level;
  }

  /** The template is a CBOR map with the lists positionsX, positionsY, directions and types. */
  private static List<Minutia> read(byte[] cbor, double scale, int left, int top) {
    double[] x = {};
    double[] y = {};
    double[] directions = {};
    String types = "";
    try (JsonParser parser = new CBORFactory().createParser(cbor)) {
      while (parser.nextToken() != null) {
        if (parser.currentToken() == JsonToken.FIELD_NAME) {
          String name = parser.currentName();
          parser.nextToken();
          switch (name) {
            case "positionsX" -> x = numbers(parser);
            case "positionsY" -> y = numbers(parser);
            case "directions" -> directions = numbers(parser);
            case "types" -> types = parser.getText();
            default -> parser.skipChildren();
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the extractor's own template cannot be read", e);
    }
    List<Minutia> list = new ArrayList<>();
    for (int i = 0; i < types.length(); i++) {
      list.add(
          new Minutia(
              (x[i] + left) * scale,
              (y[i] + top) * scale,
              Math.toDegrees(directions[i]),
              types.charAt(i) == 'E'));
    }
    return List.copyOf(list);
  }

  private static double[] numbers(JsonParser parser) throws IOException {
    double[] values = new double[64];
    int count = 0;
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      values = count == values.length ? Arrays.copyOf(values, 2 * count) : values;
      values[count++] = parser.getDoubleValue();
    }
    return Arrays.copyOf(values, count);
  }

  /**
   * The minutiae of the same print seen from behind, as in a mirrored image; ready to be compared,
   * which is all that they are for: their places are those of the mirrored cut of the image.
   */
  public Minutiae mirrored() {
    byte[] cbor = MirroredTemplate.of(template.toByteArray());
    List<Minutia> all = read(cbor, 1, 0, 0);
    return new Minutiae(new FingerprintTemplate(cbor), all, all, all.size(), all.size() >= MOST);
  }

  /** Those that lie among ridges. */
  public List<Minutia> list() {
    return list;
  }

  /** How many lie among ridges. */
  public int count() {
    return list.size();
  }

  /** How many lie among clear ridges and off the border of the print. */
  public int reliable() {
    return reliable;
  }

  /** Whether the extractor kept no more, so that the print may well have more. */
  public boolean isCutShort() {
    return cutShort;
  }

  /** Similarities with several others, in their order: 0 nothing alike; grows without bound. */
  public double[] similarities(List<Minutiae> others) {
    FingerprintMatcher matcher = new FingerprintMatcher(template);
    return others.stream().mapToDouble(other -> matcher.match(other.template)).toArray();
  }

  /**
   * How another print lies on this one, by the minutiae that the matcher pairs; empty where it
   * pairs too few. Whether the two are of one finger is not said by it.
   */
  public Optional<PrintAlignment> alignment(Minutiae other) {
    try (PrintAlignment.MatchedPairs pairs = new PrintAlignment.MatchedPairs()) {
      new FingerprintMatcher(template).match(other.template);
      return pairs.alignment(all, other.all);
    }
  }
}
