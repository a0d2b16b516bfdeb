package ridgeproof.imagery.header;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import ridgeproof.finding.Quantity;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;

/** What a reader has learnt of a codestream so far. */
final class ImageHeaderBuilder {

  /** A damaged file could bring a defect for every few bytes. */
  private static final int MAX_DEFECTS = 20;

  private static final int MAX_COMMENTS = 200;

  final ByteSource source;
  ImageFormat format;
  int width;
  int height;
  int bitsPerPixel;
  int components;
  Optional<PixelDensity> density = Optional.empty();
  Optional<Boolean> lossless = Optional.empty();
  OptionalDouble quantizerRate = OptionalDouble.empty();
  private int end;
  private final Map<String, String> comments = new LinkedHashMap<>();
  private final Map<String, String> facts = new LinkedHashMap<>();
  private final List<ImageDefect> defects = new ArrayList<>();

  ImageHeaderBuilder(ByteSource source, ImageFormat format) {
    this.source = source;
    this.format = format;
    this.end = source.length();
  }

  /** Sizes as the codestream states them; what no image of ours can have counts as not stated. */
  boolean size(long statedWidth, long statedHeight, int position) {
    boolean possible =
        statedWidth > 0
            && statedHeight > 0
            && statedWidth <= Integer.MAX_VALUE
            && statedHeight <= Integer.MAX_VALUE;
    if (!possible) {
      damage(position, "states a size of " + statedWidth + " x " + statedHeight + " pixels");
      return false;
    }
    width = (int) statedWidth;
    height = (int) statedHeight;
    return true;
  }

  /** Keeps the first density that is stated. */
  void density(PixelDensity stated) {
    if (density.isEmpty() && stated.horizontalPpi() > 0 && stated.verticalPpi() > 0) {
      density = Optional.of(stated);
    }
  }

  void fact(String name, Object value) {
    facts.put(name, value.toString());
  }

  Optional<String> fact(String name) {
    return Optional.ofNullable(facts.get(name));
  }

  /** Keeps every comment; one whose key is taken gets a number. */
  void comment(String key, String value) {
    if (comments.size() >= MAX_COMMENTS) {
      return;
    }
    String free = key;
    for (int n = 2; comments.containsKey(free); n++) {
      free = key + " " + n;
    }
    comments.put(free, value);
  }

  void damage(int position, String detail) {
    add(ImageDefect.Kind.DAMAGE, position, detail);
  }

  /** The codestream ends here; what follows is no part of it. */
  void endsAt(int position) {
    end = position;
    int left = source.length() - position;
    if (left > 0) {
      add(
          ImageDefect.Kind.TRAILING_BYTES,
          position,
          Quantity.of(left, "byte") + " after the end of the " + format.label());
    }
  }

  void add(ImageDefect.Kind kind, int position, String detail) {
    if (defects.size() < MAX_DEFECTS) {
      defects.add(new ImageDefect(kind, source.origin() + position, detail));
    }
  }

  ImageHeader finish() {
    return new ImageHeader(
        format,
        width,
        height,
        bitsPerPixel,
        components,
        density,
        lossless,
        quantizerRate,
        new ByteRange(source.origin(), end),
        Collections.unmodifiableMap(comments),
        Collections.unmodifiableMap(facts),
        List.copyOf(defects));
  }
}
