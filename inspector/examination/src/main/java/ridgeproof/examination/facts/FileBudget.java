package ridgeproof.examination.facts;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.codec.ImageCodecs;
import ridgeproof.transaction.record.ByteSource;

/**
 * How much work all images of one file may be: samples counted by what their headers state, before
 * any image is decoded and in the order of the file, so that every machine decodes the same ones;
 * and time, in case that is not enough.
 */
final class FileBudget {

  private static final long BYTE_BITS = 8;

  /** Megasamples that are decoded at once, over all threads; about 12 bytes each. */
  private static final int AT_ONCE = 40;

  private static final long MEGA = 1_000_000;

  /** More than the largest slap has, 3.2 by 3 inches at 500 ppi. */
  private static final long MAX_RIDGES = 3_000_000;

  /** More than a card has whose prints are all of the largest size. */
  private static final long PLAUSIBLE_RIDGES = 13_000_000;

  private static final long PLAUSIBLE_RIDGES_PER_BYTE = 6;

  /** What a print costs, however small; a card has not so many that this matters. */
  private static final long MIN_RIDGES = 250_000;

  /** What a pixel takes while its ridges are looked at, in samples. */
  private static final long RIDGE_SAMPLES = 3;

  /** Progressive images have up to ten scans, and each goes over all samples. */
  private static final long USUAL_SCANS = 16;

  /** Samples of a JPEG 2000 code-block below which there are too many of them. */
  private static final long SMALL_BLOCK = 256;

  /** What a tile costs, however small. */
  private static final long TILE_SAMPLES = 4096;

  /** What a point of a pen costs, which draws a line across the page. */
  private static final long POINT_SAMPLES = 1000;

  private static final int POINT_BYTES = 5;

  private final DecodingLimits limits;
  private final long deadline;
  private final Semaphore room = new Semaphore(AT_ONCE, true);
  private long left;
  private long ridgesLeft;

  FileBudget(DecodingLimits limits, long fileBytes) {
    this.limits = limits;
    this.left = limits.pixelsOf(fileBytes);
    this.ridgesLeft =
        limits
            .filePixels()
            .orElse(Math.max(PLAUSIBLE_RIDGES, PLAUSIBLE_RIDGES_PER_BYTE * fileBytes));
    this.deadline = System.nanoTime() + limits.fileTime().toNanos();
  }

  /** Takes what the image needs; where not enough is left, the defect that says so. */
  Optional<ImageDefect> take(ExaminedImage image, ImageHeader header) {
    if (ImageCodecs.refusal(image.data().orElseThrow(), header, limits).isPresent()) {
      return Optional.empty(); // the decoder refuses it without any work
    }
    long needed = samplesOf(image, header) * passes(header) + TILE_SAMPLES * fact(header, "tiles");
    if (needed <= left) {
      left -= needed;
      return Optional.empty();
    }
    return over(header, "%.1f million samples, %.1f left", needed / 1e6, left / 1e6);
  }

  /** Takes what looking at the ridges needs. */
  Optional<ImageDefect> takeRidges(ImageHeader header, long workingPixels) {
    long needed = workingPixels == 0 ? 0 : Math.max(MIN_RIDGES, workingPixels);
    if (needed <= Math.min(ridgesLeft, MAX_RIDGES)) {
      ridgesLeft -= needed;
      return Optional.empty();
    }
    return over(
        header,
        "%.1f million pixels of ridges, %.1f left",
        workingPixels / 1e6,
        Math.min(ridgesLeft, MAX_RIDGES) / 1e6);
  }

  private static Optional<ImageDefect> over(ImageHeader header, String format, Object... values) {
    return Optional.of(
        new ImageDefect(
            ImageDefect.Kind.FILE_LIMIT,
            header.extent().offset(),
            String.format(Locale.ROOT, format, values)));
  }

  /** Whether an image was left undecoded because it is too much for its file. */
  static boolean refused(ExaminedImage image) {
    return image.pixels().isEmpty()
        && image.decodingDefects().stream()
            .anyMatch(defect -> defect.kind() == ImageDefect.Kind.FILE_LIMIT);
  }

  /** Bytes that the decoded pixels of all components take. */
  private static long samplesOf(ExaminedImage image, ImageHeader header) {
    return pixelsOf(image, header) * Math.max(1, (bitsOf(image, header) + 7) / BYTE_BITS);
  }

  /** Pixels, as the image states them; of uncompressed ones no more than there are. */
  static long pixelsOf(ExaminedImage image, ImageHeader header) {
    if (header.format() != ImageFormat.RAW) {
      return (long) header.width() * header.height();
    }
    if (image.statedFormat().filter(format -> format == ImageFormat.PEN_VECTORS).isPresent()) {
      int bytes = image.data().map(ByteSource::length).orElse(0);
      return bytes / POINT_BYTES * POINT_SAMPLES;
    }
    long stated = (long) image.statedSize().width() * image.statedSize().height();
    boolean coded = image.statedFormat().filter(format -> format != ImageFormat.RAW).isPresent();
    long bits = image.data().map(data -> BYTE_BITS * data.length()).orElse(0L);
    return coded ? stated : Math.min(stated, bits / bitsOf(image, header));
  }

  /** How often a decoder goes over the samples, or what small code-blocks cost as much as. */
  private static long passes(ImageHeader header) {
    String block = header.facts().getOrDefault("code-block", "");
    if (block.isEmpty()) {
      return 1 + fact(header, "scans") / USUAL_SCANS;
    }
    String[] sides = block.split(" x ");
    return 1 + SMALL_BLOCK / (Long.parseLong(sides[0]) * Long.parseLong(sides[1]));
  }

  private static long fact(ImageHeader header, String name) {
    return Long.parseLong(header.facts().getOrDefault(name, "0"));
  }

  private static long bitsOf(ExaminedImage image, ImageHeader header) {
    int bits =
        header.bitsPerPixel() > 0 ? header.bitsPerPixel() : image.statedSize().bitsPerPixel();
    return Math.max(1, bits);
  }

  /** The limits of the next image: no longer than the file has left. */
  DecodingLimits limits() {
    Duration rest = Duration.ofNanos(Math.max(0, deadline - System.nanoTime()));
    return rest.compareTo(limits.timeLimit()) < 0 ? limits.withTimeLimit(rest) : limits;
  }

  /** The defect of an image that comes when the time of the file is over. */
  Optional<ImageDefect> late(ImageHeader header) {
    return System.nanoTime() < deadline
        ? Optional.empty()
        : over(
            header,
            "the time limit for this file, %d seconds, was reached",
            limits.fileTime().toSeconds());
  }

  /** Waits until the image has room beside those that are being decoded; gives what it took. */
  int enter(ExaminedImage image, ImageHeader header, long workingPixels) {
    long needed = samplesOf(image, header) + RIDGE_SAMPLES * workingPixels;
    int permits = (int) Math.min(AT_ONCE, 1 + needed / MEGA);
    room.acquireUninterruptibly(permits);
    return permits;
  }

  void leave(int permits) {
    room.release(permits);
  }
}
