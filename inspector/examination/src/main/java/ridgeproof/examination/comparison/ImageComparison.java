package ridgeproof.examination.comparison;

import java.nio.ByteBuffer;
import java.util.Optional;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.imagery.GrayImage;
import ridgeproof.transaction.record.ByteSource;

/** Compares two images: their bytes, then their pixels. */
final class ImageComparison {

  private final ImageExtraction extraction;
  private final boolean decoding;

  /**
   * @param decoding whether images whose bytes differ are decoded
   */
  ImageComparison(ImageExtraction extraction, boolean decoding) {
    this.extraction = extraction;
    this.decoding = decoding;
  }

  /** The difference; empty where neither has image data. */
  Optional<ImageDifference> of(ExaminedImage first, ExaminedImage second) {
    if (first.data().isEmpty() && second.data().isEmpty()) {
      return Optional.empty();
    }
    boolean sameBytes = sameBytes(first.data(), second.data());
    if (sameBytes && sameShape(first, second)) {
      return Optional.of(new ImageDifference.SameBytes());
    }
    if (!decoding) {
      return Optional.of(new ImageDifference.NotOpened());
    }
    Optional<GrayImage> left = extraction.decode(first).pixels();
    Optional<GrayImage> right = extraction.decode(second).pixels();
    if (left.isEmpty() || right.isEmpty()) {
      return Optional.of(new ImageDifference.NotDecoded(left.isPresent(), right.isPresent()));
    }
    ImageDifference found = pixels(left.get(), right.get());
    boolean same = sameBytes && found instanceof ImageDifference.SamePixels;
    return Optional.of(same ? new ImageDifference.SameBytes() : found);
  }

  private static boolean sameBytes(Optional<ByteSource> first, Optional<ByteSource> second) {
    return first.isPresent() && second.isPresent() && first.get().hasSameBytes(second.get());
  }

  /** Raw pixels mean another picture when the record gives them another width. */
  private static boolean sameShape(ExaminedImage first, ExaminedImage second) {
    return first.width().equals(second.width())
        && first.height().equals(second.height())
        && first.compression().equals(second.compression());
  }

  private static ImageDifference pixels(GrayImage first, GrayImage second) {
    if (first.width() != second.width() || first.height() != second.height()) {
      return new ImageDifference.DifferentSize(
          first.width(), first.height(), second.width(), second.height());
    }
    ByteBuffer left = first.asBuffer();
    ByteBuffer right = second.asBuffer();
    int largest = 0;
    long sum = 0;
    long differing = 0;
    double[] sums = new double[5];
    while (left.hasRemaining()) {
      int a = left.get() & 0xFF;
      int b = right.get() & 0xFF;
      int difference = Math.abs(a - b);
      sums[0] += a;
      sums[1] += b;
      sums[2] += a * a;
      sums[3] += b * b;
      sums[4] += a * b;
      largest = Math.max(largest, difference);
      sum += difference;
      differing += difference == 0 ? 0 : 1;
    }
    long count = (long) first.width() * first.height();
    return differing == 0
        ? new ImageDifference.SamePixels()
        : new ImageDifference.DifferentPixels(
            largest, (double) sum / count, differing, count, correlation(sums, count));
  }

  /**
   * @param sums of the first, of the second, of their squares, and of their product
   */
  private static double correlation(double[] sums, long count) {
    double first = sums[2] - sums[0] * sums[0] / count;
    double second = sums[3] - sums[1] * sums[1] / count;
    double both = sums[4] - sums[0] * sums[1] / count;
    return first <= 0 || second <= 0 ? 0 : both / Math.sqrt(first * second);
  }
}
