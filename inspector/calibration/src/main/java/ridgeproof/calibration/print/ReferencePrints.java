package ridgeproof.calibration.print;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;

/** The prints of real people in public reference transactions, measured as drawn ones are. */
public final class ReferencePrints {

  private static final double USUAL_PPI = 500;
  private static final List<Integer> FINGERPRINT_RECORDS = List.of(3, 4, 5, 6, 14);

  /**
   * The pixels of one image.
   *
   * @param record number of the record in the file, from 1
   * @param box its position code, 0 without one
   */
  public record Image(int record, int box, double ppi, GrayImage gray) {

    public boolean isRolled() {
      return FingerPosition.isRolledBox(box);
    }
  }

  private ReferencePrints() {}

  /**
   * Every finger of every fingerprint image of one file.
   *
   * @throws IOException if it cannot be read
   */
  static List<MeasuredPrint> of(Path file) throws IOException {
    List<MeasuredPrint> prints = new ArrayList<>();
    for (Image image : images(file)) {
      prints.addAll(measured(image.gray(), image.ppi(), image.box()));
    }
    return LabelledPrints.withWidthRatios(prints);
  }

  /**
   * Every fingerprint image of one file.
   *
   * @throws IOException if it cannot be read
   */
  public static List<Image> images(Path file) throws IOException {
    return images(
        file,
        image ->
            FINGERPRINT_RECORDS.contains(image.record().type())
                && !FingerPosition.shownBy(image.position().orElse(0)).isEmpty());
  }

  /**
   * Every image of one file that can be decoded and meets a condition.
   *
   * @throws IOException if it cannot be read
   */
  public static List<Image> images(Path file, Predicate<ExaminedImage> wanted) throws IOException {
    SpecTables tables = SpecTables.open();
    Transaction transaction =
        new TransactionReader(tables, ParseLimits.standard())
            .read(ByteSource.of(Files.readAllBytes(file)));
    ImageExtraction extraction = new ImageExtraction(tables, DecodingLimits.standard());
    List<Image> images = new ArrayList<>();
    for (ExaminedImage image : extraction.imagesOf(transaction)) {
      if (wanted.test(image)) {
        int box = image.position().orElse(0);
        Optional<GrayImage> pixels = extraction.decode(image).pixels();
        double ppi = image.density().map(d -> d.horizontalPpi()).orElse(USUAL_PPI);
        pixels.ifPresent(gray -> images.add(new Image(image.record().ordinal(), box, ppi, gray)));
      }
    }
    return images;
  }

  private static List<MeasuredPrint> measured(GrayImage gray, double ppi, int box) {
    List<MeasuredPrint> prints = new ArrayList<>();
    LabelledPrints.values(gray, ppi, box)
        .forEach(
            (finger, values) ->
                prints.add(
                    new MeasuredPrint(
                        0,
                        1,
                        box,
                        finger,
                        FingerPosition.isRolledBox(box) ? Impression.ROLLED : Impression.PLAIN,
                        Optional.empty(),
                        0,
                        values)));
    return prints;
  }
}
