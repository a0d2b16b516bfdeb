package ridgeproof.examination.rules.consistency;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.spec.consistency.FeaturePoints;
import ridgeproof.spec.layout.ItemReference;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.record.WholeNumber;

/**
 * Features lie within the area that their record states or, where it states none, within the image
 * of the same IDC. Which corner coordinates begin at makes no difference to that.
 */
final class FeatureCoordinatesRule implements Rule {

  private static final double UNITS_PER_MM = 100;
  private static final int PACKED_DIGITS = 4;

  /** An area from the origin, in the unit of the coordinates. */
  private record Area(double width, double height) {

    boolean holds(Point point, double margin) {
      return point.x() <= width + margin && point.y() <= height + margin;
    }
  }

  private record Point(int x, int y) {}

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-028");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    FeatureImageIndex described = new FeatureImageIndex(examinee);
    double margin = examinee.tables().agreements().threshold("feature-margin") * UNITS_PER_MM;
    for (FeaturePoints layout : examinee.tables().agreements().featurePoints()) {
      for (LogicalRecord record :
          examinee.transaction().recordsOfType(layout.field().recordType())) {
        Optional<Field> field = record.field(layout.field());
        if (field.isPresent()) {
          // Pixels are counted, so that they need no margin.
          double beyond = layout.inPixels() ? 0 : margin;
          area(record, layout, described)
              .ifPresent(area -> check(record, field.get(), layout, area, beyond, log));
        }
      }
    }
  }

  private static void check(
      LogicalRecord record,
      Field field,
      FeaturePoints layout,
      Area area,
      double margin,
      FindingLog log) {
    int outside = 0;
    int first = 0;
    for (int i = 1; i <= field.subfields().size(); i++) {
      Optional<Point> point = point(field.subfields().get(i - 1), layout);
      if (point.isPresent() && !area.holds(point.get(), margin)) {
        outside++;
        first = first == 0 ? i : first;
      }
    }
    if (outside > 0) {
      Subfield subfield = field.subfields().get(first - 1);
      log.add(
          "RP-TXN-028",
          Location.of(record, field).subfield(first, subfield.range()),
          Observed.of(
              String.format(
                  Locale.ROOT,
                  "%s: %d of %d outside, first at number %d",
                  layout.feature(),
                  outside,
                  field.subfields().size(),
                  first)),
          layout.inPixels()
              ? String.format(Locale.ROOT, "within %.0f x %.0f pixels", area.width(), area.height())
              : String.format(
                  Locale.ROOT,
                  "within %.1f x %.1f mm",
                  area.width() / UNITS_PER_MM,
                  area.height() / UNITS_PER_MM),
          Optional.of(layout.source()),
          List.of());
    }
  }

  private static Optional<Point> point(Subfield subfield, FeaturePoints layout) {
    String text = subfield.text(layout.firstItem());
    if (layout.packed() && text.length() < 2 * PACKED_DIGITS) {
      return Optional.empty();
    }
    OptionalInt x = WholeNumber.parse(layout.packed() ? text.substring(0, PACKED_DIGITS) : text);
    OptionalInt y =
        WholeNumber.parse(
            layout.packed()
                ? text.substring(PACKED_DIGITS, 2 * PACKED_DIGITS)
                : subfield.text(layout.firstItem() + 1));
    return x.isPresent() && y.isPresent()
        ? Optional.of(new Point(x.getAsInt(), y.getAsInt()))
        : Optional.empty();
  }

  private static Optional<Area> area(
      LogicalRecord record, FeaturePoints layout, FeatureImageIndex described) {
    OptionalInt width = stated(record, layout.frameWidth());
    OptionalInt height = stated(record, layout.frameHeight());
    return width.isPresent() && height.isPresent()
        ? Optional.of(new Area(width.getAsInt(), height.getAsInt()))
        : imaged(described.of(record), layout);
  }

  private static OptionalInt stated(LogicalRecord record, Optional<ItemReference> reference) {
    return reference
        .flatMap(
            item ->
                record
                    .field(item.field())
                    .filter(field -> !field.isData())
                    .map(field -> WholeNumber.parse(field.subfields().get(0).text(item.item()))))
        .orElse(OptionalInt.empty());
  }

  /** The largest extent of the images, where each states its size. */
  private static Optional<Area> imaged(List<ExaminedImage> images, FeaturePoints layout) {
    double width = 0;
    double height = 0;
    for (ExaminedImage image : images) {
      OptionalDouble unitsAcross = unitsPerPixel(image, layout, true);
      OptionalDouble unitsDown = unitsPerPixel(image, layout, false);
      if (image.trueWidth().isEmpty()
          || image.trueHeight().isEmpty()
          || unitsAcross.isEmpty()
          || unitsDown.isEmpty()) {
        return Optional.empty();
      }
      width = Math.max(width, image.trueWidth().getAsInt() * unitsAcross.getAsDouble());
      height = Math.max(height, image.trueHeight().getAsInt() * unitsDown.getAsDouble());
    }
    return images.isEmpty() ? Optional.empty() : Optional.of(new Area(width, height));
  }

  private static OptionalDouble unitsPerPixel(
      ExaminedImage image, FeaturePoints layout, boolean across) {
    if (layout.inPixels()) {
      return OptionalDouble.of(1);
    }
    return image
        .density()
        .map(density -> across ? density.horizontalPpi() : density.verticalPpi())
        .filter(ppi -> ppi > 0)
        .map(ppi -> OptionalDouble.of(PixelDensity.MM_PER_INCH * UNITS_PER_MM / ppi))
        .orElse(OptionalDouble.empty());
  }
}
