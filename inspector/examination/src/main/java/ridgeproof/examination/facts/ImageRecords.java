package ridgeproof.examination.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.consistency.ImageRecordRow;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.ValueRule;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.record.WholeNumber;

/** Finds the image records of a transaction and what they state of their images. */
public final class ImageRecords {

  private static final int NO_FURTHER_POSITION = 255;
  private static final int NOMINAL_RESOLUTION = 12;
  private static final double MORE_THAN_TWO_DIGITS = 100;
  private static final int PPI = 1;
  private static final int PPCM = 2;

  private final Transaction transaction;
  private final SpecTables tables;

  public ImageRecords(Transaction transaction, SpecTables tables) {
    this.transaction = transaction;
    this.tables = tables;
  }

  public List<ExaminedImage> all() {
    List<ImageRecordRow> layouts = tables.imageRecords();
    List<ExaminedImage> images = new ArrayList<>();
    for (LogicalRecord record : transaction.records()) {
      layouts.stream()
          .filter(layout -> layout.type() == record.type())
          .findFirst()
          .ifPresent(layout -> images.add(image(record, layout)));
    }
    return List.copyOf(images);
  }

  private ExaminedImage image(LogicalRecord record, ImageRecordRow layout) {
    Optional<String> compression = layout.compression().flatMap(number -> text(record, number));
    return new ExaminedImage(
        record,
        layout,
        layout.positions().map(number -> positions(record, number)).orElse(List.of()),
        whole(record, layout.impression()),
        whole(record, Optional.of(layout.width())),
        whole(record, Optional.of(layout.height())),
        bitsPerPixel(record, layout),
        density(record, layout),
        compression,
        compression.flatMap(code -> format(layout, code)),
        record.data(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty());
  }

  private static List<Integer> positions(LogicalRecord record, FieldNumber number) {
    List<Integer> positions = new ArrayList<>();
    record
        .field(number)
        .ifPresent(
            field -> {
              for (Subfield subfield : field.subfields()) {
                WholeNumber.parse(subfield.text(1)).ifPresent(positions::add);
              }
            });
    positions.removeIf(position -> position == NO_FURTHER_POSITION);
    return List.copyOf(positions);
  }

  private static OptionalInt bitsPerPixel(LogicalRecord record, ImageRecordRow layout) {
    return layout.depth().isPresent() ? layout.depth() : whole(record, layout.bitsPerPixel());
  }

  /**
   * Tagged records state their own scale; the pixels of binary ones have the nominal resolution of
   * field 1.012.
   */
  private Optional<PixelDensity> density(LogicalRecord record, ImageRecordRow layout) {
    if (layout.scaleUnits().isEmpty()) {
      return transaction
          .header()
          .flatMap(header -> header.text(NOMINAL_RESOLUTION))
          .map(ValueRule::asNumber)
          .filter(ppmm -> ppmm.isPresent() && isPossible(ppmm.getAsDouble()))
          .map(ppmm -> PixelDensity.ofPpmm(ppmm.getAsDouble()));
    }
    OptionalInt units = whole(record, layout.scaleUnits());
    OptionalDouble horizontal = decimal(record, layout.horizontalScale());
    OptionalDouble vertical = decimal(record, layout.verticalScale());
    if (units.isEmpty() || horizontal.isEmpty() || vertical.isEmpty()) {
      return Optional.empty();
    }
    return switch (units.getAsInt()) {
      case PPI -> Optional.of(new PixelDensity(horizontal.getAsDouble(), vertical.getAsDouble()));
      case PPCM ->
          Optional.of(PixelDensity.ofPpcm(horizontal.getAsDouble(), vertical.getAsDouble()));
      default -> Optional.empty();
    };
  }

  /** Field 1.012 has two digits before its point; without the point it says nothing. */
  private static boolean isPossible(double ppmm) {
    return ppmm > 0 && ppmm < MORE_THAN_TWO_DIGITS;
  }

  private Optional<ImageFormat> format(ImageRecordRow layout, String code) {
    return tables
        .codes(layout.compressionTable())
        .find(code)
        .map(row -> row.property("format"))
        .filter(format -> !format.isEmpty())
        .map(ImageFormat::valueOf);
  }

  private static Optional<String> text(LogicalRecord record, FieldNumber number) {
    return record.field(number).map(Field::text).filter(text -> !text.isEmpty());
  }

  private static OptionalInt whole(LogicalRecord record, Optional<FieldNumber> number) {
    return number
        .flatMap(field -> text(record, field))
        .map(WholeNumber::parse)
        .orElse(OptionalInt.empty());
  }

  private static OptionalDouble decimal(LogicalRecord record, Optional<FieldNumber> number) {
    return number
        .flatMap(field -> text(record, field))
        .map(ValueRule::asNumber)
        .orElse(OptionalDouble.empty());
  }
}
