package ridgeproof.examination;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageCodec.StatedSize;
import ridgeproof.imagery.codec.ImageCodecs;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.Transaction;

/** Takes the images out of a transaction. */
public final class ImageExtraction {

  private final ImageCodecs codecs = ImageCodecs.standard();
  private final SpecTables tables;
  private final DecodingLimits limits;

  public ImageExtraction(SpecTables tables, DecodingLimits limits) {
    this.tables = tables;
    this.limits = limits;
  }

  /** Every image record, in the order of the file, none of them opened. */
  public List<ExaminedImage> imagesOf(Transaction transaction) {
    return new ImageRecords(transaction, tables).all();
  }

  /** Decodes one. */
  public DecodedImage decode(ExaminedImage image) {
    StatedSize stated = image.statedSize();
    return new DecodedImage(
        name(image),
        image
            .data()
            .flatMap(data -> codecs.decode(data, ImageHeaders.read(data), stated, limits).image()));
  }

  /** The single fingers that the record marks in its image, in the order of the record. */
  public List<Segment> segmentsOf(ExaminedImage image) {
    return Segment.of(image.record());
  }

  /** Cuts a segment out; no pixels where no part of it lies within the image. */
  public DecodedImage cut(ExaminedImage image, GrayImage pixels, Segment segment) {
    return new DecodedImage(
        name(image, OptionalInt.of(segment.position()), segment.kind().label())
            + (segment.repetition() == 1 ? "" : "-" + segment.repetition()),
        segment.cutFrom(pixels));
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
