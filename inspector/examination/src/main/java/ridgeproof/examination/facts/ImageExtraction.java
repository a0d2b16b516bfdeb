package ridgeproof.examination.facts;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.Transaction;

/** Takes the images out of a transaction. */
public final class ImageExtraction {

  private final SpecTables tables;
  private final DecodingLimits limits;
  private final RecordImageDecoder decoder = new RecordImageDecoder();

  public ImageExtraction(SpecTables tables, DecodingLimits limits) {
    this.tables = tables;
    this.limits = limits;
  }

  /**
   * Every image record, in the order of the file. None of them is opened; those that are too much
   * for one file are marked so.
   */
  public List<ExaminedImage> imagesOf(Transaction transaction) {
    FileBudget budget = new FileBudget(limits, transaction.source().length());
    return new ImageRecords(transaction, tables)
        .all().stream().map(image -> planned(image, budget)).toList();
  }

  private static ExaminedImage planned(ExaminedImage image, FileBudget budget) {
    Optional<ImageHeader> header = image.data().map(ImageHeaders::read);
    return header
        .flatMap(read -> budget.take(image, read))
        .map(
            defect ->
                image.opened(
                    header.orElseThrow(), Optional.empty(), List.of(defect), Optional.empty()))
        .orElse(image);
  }

  /** Decodes one, unless it is too much for its file. */
  public DecodedImage decode(ExaminedImage image) {
    boolean refused = FileBudget.refused(image);
    return new DecodedImage(
        name(image),
        image
            .data()
            .filter(data -> !refused)
            .flatMap(data -> decoder.decode(image, data, ImageHeaders.read(data), limits).image()));
  }

  /** The single fingers that the record marks in its image, in the order of the record. */
  public List<MarkedFinger> markedFingersOf(ExaminedImage image) {
    return MarkedFinger.of(image, tables);
  }

  /** Cuts one out; no pixels where no part of it lies within the image. */
  public DecodedImage cut(ExaminedImage image, GrayImage pixels, MarkedFinger finger) {
    return new DecodedImage(
        name(image, OptionalInt.of(finger.position()), finger.label())
            + (finger.repetition() == 1 ? "" : "-" + finger.repetition()),
        finger.cutFrom(pixels));
  }

  private static String name(ExaminedImage image) {
    return name(image, image.position(), "position");
  }

  private static String name(ExaminedImage image, OptionalInt position, String label) {
    StringBuilder name = new StringBuilder();
    name.append(String.format(Locale.ROOT, "record-%02d", image.record().ordinal()));
    if (position.isPresent()) {
      name.append(String.format(Locale.ROOT, "-%s-%02d", label, position.getAsInt()));
    }
    if (image.record().idc().isPresent()) {
      name.append(String.format(Locale.ROOT, "-idc-%02d", image.record().idc().getAsInt()));
    }
    return name.toString();
  }
}
