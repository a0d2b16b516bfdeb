package ridgeproof.calibration.print;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.examination.facts.RidgeFacts.Impression;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ReadingLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;

/** The prints of real people in public reference transactions, measured as drawn ones are. */
public final class ReferencePrints {

  private static final int LAST_ROLLED = 10;
  private static final double USUAL_PPI = 500;
  private static final List<Integer> FINGERPRINT_RECORDS = List.of(3, 4, 5, 6, 14);

  /** The pixels of one position code. */
  public record Image(int box, double ppi, GrayImage gray) {

    public boolean isRolled() {
      return box <= LAST_ROLLED;
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
    return CardDraw.withWidthRatios(prints);
  }

  /**
   * Every fingerprint image of one file.
   *
   * @throws IOException if it cannot be read
   */
  public static List<Image> images(Path file) throws IOException {
    SpecTables tables = SpecTables.open();
    Transaction transaction =
        new TransactionReader(tables, ReadingLimits.standard())
            .read(ByteSource.of(Files.readAllBytes(file)));
    ImageExtraction extraction = new ImageExtraction(tables, DecodingLimits.standard());
    List<Image> images = new ArrayList<>();
    for (ExaminedImage image : extraction.imagesOf(transaction)) {
      boolean fingers = FINGERPRINT_RECORDS.contains(image.record().type());
      int box = image.position().orElse(0);
      if (fingers && !FingerPosition.shownBy(box).isEmpty()) {
        Optional<GrayImage> pixels = extraction.decode(image).pixels();
        double ppi = image.density().map(d -> d.horizontalPpi()).orElse(USUAL_PPI);
        pixels.ifPresent(gray -> images.add(new Image(box, ppi, gray)));
      }
    }
    return images;
  }

  private static List<MeasuredPrint> measured(GrayImage gray, double ppi, int box) {
    List<MeasuredPrint> prints = new ArrayList<>();
    CardDraw.values(gray, ppi, box)
        .forEach(
            (finger, values) ->
                prints.add(
                    new MeasuredPrint(
                        0,
                        1,
                        box,
                        finger,
                        box <= LAST_ROLLED ? Impression.ROLLED : Impression.PLAIN,
                        Optional.empty(),
                        0,
                        values)));
    return prints;
  }
}
