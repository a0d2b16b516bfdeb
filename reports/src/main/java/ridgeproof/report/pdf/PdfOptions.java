package ridgeproof.report.pdf;

import java.time.Instant;
import java.util.Optional;
import java.util.function.Function;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.imagery.GrayImage;

/**
 * How a report becomes a PDF.
 *
 * @param generatedAt the time to print; without it no time is printed
 * @param pixels decodes an image, empty where it cannot be decoded; without it outlines are drawn,
 *     for the images themselves are personal data
 */
public record PdfOptions(
    PaperSize paper,
    Optional<Instant> generatedAt,
    Optional<Function<ExaminedImage, Optional<GrayImage>>> pixels) {

  /** A4, no time, outlines in place of images. */
  public static PdfOptions standard() {
    return new PdfOptions(PaperSize.A4, Optional.empty(), Optional.empty());
  }
}
