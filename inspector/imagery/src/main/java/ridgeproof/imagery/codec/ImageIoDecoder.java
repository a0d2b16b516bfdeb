package ridgeproof.imagery.codec;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageDefect.Kind;
import ridgeproof.transaction.record.ByteSource;

/** Decodes with a reader of javax.imageio, within the limits. */
final class ImageIoDecoder {

  /** Opens readers. */
  interface ReaderSource {

    /** Bytes that the reader may read past the end of a codestream that is cut off. */
    default int padding() {
      return 0;
    }

    /**
     * Opens a reader that has no input yet, on the thread that it will read on.
     *
     * @param warnings takes what the library says other than to the reader's listeners
     */
    ImageReader open(Consumer<String> warnings) throws IOException;
  }

  /** Warnings about what surrounds the pixels and leaves them as they are. */
  private static final Pattern HARMLESS =
      Pattern.compile("icc|profile|metadata|thumbnail|jfif", Pattern.CASE_INSENSITIVE);

  private static final int MAX_WARNINGS = 1;

  /** Readers of facsimiles keep several numbers for each column. */
  private static final int MAX_COLUMNS = 1 << 20;

  /** Red, green, blue and transparency. */
  private static final int MAX_BANDS = 4;

  private final ByteSource codestream;
  private final ReaderSource readers;
  private final DecodingLimits limits;
  private final CancellableInput input;
  private volatile ImageReader reader;

  private ImageIoDecoder(ByteSource codestream, ReaderSource readers, DecodingLimits limits) {
    this.codestream = codestream;
    this.readers = readers;
    this.limits = limits;
    this.input = new CancellableInput(codestream, readers.padding());
  }

  static Decoding run(ByteSource codestream, ReaderSource readers, DecodingLimits limits) {
    ImageIoDecoder decoding = new ImageIoDecoder(codestream, readers, limits);
    return DecodingTimeout.run(
        decoding::decode, decoding::cancel, codestream.origin(), decoding::progress, limits);
  }

  /** How far the library has read, which is shortly behind what it stumbled over. */
  private int place() {
    return codestream.origin() + Math.min(input.farthest(), codestream.length());
  }

  private String progress() {
    return String.format(
        Locale.ROOT,
        ", having read %d of %d bytes",
        place() - codestream.origin(),
        codestream.length());
  }

  private void cancel() {
    input.cancel();
    ImageReader running = reader;
    if (running == null) {
      return;
    }
    try {
      running.abort();
    } catch (IllegalStateException e) {
      // The JDK's JPEG reader lets no other thread abort it; its next read of the input fails.
    }
  }

  private Decoding decode() throws IOException {
    List<ImageDefect> warnings = new ArrayList<>();
    ImageReader opened = readers.open(warning -> warn(warnings, warning));
    reader = opened;
    try {
      opened.addIIOReadWarningListener((source, warning) -> warn(warnings, warning));
      opened.setInput(input, true, true);
      Optional<ImageDefect> refusal = refusal(opened);
      if (refusal.isPresent()) {
        return Decoding.failed(refusal.get());
      }
      GrayImage image = GrayConverter.of(opened.read(0));
      if (input.readPastEnd()) {
        warn(warnings, "cut off");
      }
      return new Decoding(Optional.of(image), warnings);
    } finally {
      opened.dispose();
    }
  }

  /** What the library itself will allocate by: the image, its tiles and the samples of a pixel. */
  private Optional<ImageDefect> refusal(ImageReader opened) throws IOException {
    Optional<ImageDefect> ofImage =
        ImageSizeGuard.refusal(
            opened.getWidth(0), opened.getHeight(0), codestream.origin(), limits);
    if (ofImage.isPresent()) {
      return ofImage;
    }
    if (opened.getWidth(0) > MAX_COLUMNS) {
      return Optional.of(
          new ImageDefect(
              Kind.LIMIT,
              codestream.origin(),
              String.format(
                  Locale.ROOT, "%d pixels wide (limit %d)", opened.getWidth(0), MAX_COLUMNS)));
    }
    Iterator<ImageTypeSpecifier> types = opened.getImageTypes(0);
    if (types.hasNext() && types.next().getNumBands() > MAX_BANDS) {
      return Optional.of(
          new ImageDefect(Kind.DAMAGE, codestream.origin(), "too many samples in a pixel"));
    }
    return ImageSizeGuard.refusal(
        opened.getTileWidth(0), opened.getTileHeight(0), codestream.origin(), limits);
  }

  private void warn(List<ImageDefect> warnings, String warning) {
    if (warnings.size() < MAX_WARNINGS && !HARMLESS.matcher(warning).find()) {
      warnings.add(
          new ImageDefect(
              Kind.DAMAGE, place(), "the decoder warns of damaged image data up to here"));
    }
  }
}
