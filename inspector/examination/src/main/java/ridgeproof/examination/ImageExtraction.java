package ridgeproof.examination;

import java.util.List;
import java.util.Locale;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.Transaction;

/** Takes the images out of a transaction. */
public final class ImageExtraction {

  private final SpecTables tables;
  private final RecordImageDecoder decoder;

  public ImageExtraction(SpecTables tables, DecodingLimits limits) {
    this.tables = tables;
    this.decoder = new RecordImageDecoder(limits);
  }

  /** Every image record, in the order of the file, none of them opened. */
  public List<ExaminedImage> imagesOf(Transaction transaction) {
    return new ImageRecords(transaction, tables).all();
  }

  /** Decodes one. */
  public DecodedImage decode(ExaminedImage image) {
    return new DecodedImage(
        name(image),
        image.data().flatMap(data -> decoder.decode(image, data, ImageHeaders.read(data)).image()));
  }

  private static String name(ExaminedImage image) {
    StringBuilder name = new StringBuilder();
    name.append(String.format(Locale.ROOT, "record-%02d", image.record().ordinal()));
    if (image.position().isPresent()) {
      name.append(String.format(Locale.ROOT, "-position-%02d", image.position().getAsInt()));
    }
    if (image.record().idc().isPresent()) {
      name.append(String.format(Locale.ROOT, "-idc-%02d", image.record().idc().getAsInt()));
    }
    return name.toString();
  }
}
