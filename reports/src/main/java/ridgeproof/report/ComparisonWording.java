package ridgeproof.report;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import ridgeproof.examination.ExaminedImage;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.comparison.ImageDifference;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.comparison.ValueDifference;
import ridgeproof.spec.FieldRow;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.LogicalRecord;

/** The words in which two transactions are compared. */
final class ComparisonWording {

  static final String NOT_LOOKED_AT =
      "Whether two images show the same finger was not looked at: pixels were compared, not ridges.";

  private final TransactionComparison comparison;
  private final Map<Integer, ExaminedImage> firstImages;
  private final Map<Integer, ExaminedImage> secondImages;
  private final Wording wording;
  private final FieldValues first;
  private final FieldValues second;
  private final boolean showPersonal;

  ComparisonWording(TransactionComparison comparison, boolean showPersonal) {
    SpecTables tables = comparison.first().tables();
    this.wording = new Wording(tables);
    this.first = new FieldValues(tables, comparison.first().transaction().version(), false);
    this.second = new FieldValues(tables, comparison.second().transaction().version(), false);
    this.comparison = comparison;
    this.firstImages = comparison.first().imagesByRecord();
    this.secondImages = comparison.second().imagesByRecord();
    this.showPersonal = showPersonal;
  }

  /** A record and the finger it shows. */
  String record(LogicalRecord record, FindingsReport report) {
    ExaminedImage image = images(report).get(record.ordinal());
    String positions = image == null ? "" : wording.positions(image);
    return wording.recordTitle(record) + (positions.isEmpty() ? "" : ", " + positions);
  }

  private Map<Integer, ExaminedImage> images(FindingsReport report) {
    return report == comparison.first() ? firstImages : secondImages;
  }

  /** Whether the texts of a difference are left out. */
  boolean masks(ValueDifference difference) {
    if (showPersonal) {
      return false;
    }
    return difference.item().isPresent()
        ? first.isPersonal(difference.field(), difference.item().getAsInt())
            || second.isPersonal(difference.field(), difference.item().getAsInt())
        : first.isPersonal(difference.field()) || second.isPersonal(difference.field());
  }

  /** Number, mnemonic, subfield and item. */
  String place(ValueDifference difference) {
    String mnemonic =
        first
            .row(difference.field())
            .or(() -> second.row(difference.field()))
            .map(FieldRow::mnemonic)
            .orElse("");
    StringBuilder place = new StringBuilder(difference.field().toString());
    place.append(mnemonic.isEmpty() ? "" : " " + mnemonic);
    difference.subfield().ifPresent(number -> place.append(" subfield ").append(number));
    difference.item().ifPresent(number -> place.append(" item ").append(number));
    return place.toString();
  }

  String change(ValueDifference difference) {
    boolean masked = masks(difference);
    if (difference.first().isEmpty()) {
      return "added " + quoted(difference.second(), masked);
    }
    if (difference.second().isEmpty()) {
      return "removed " + quoted(difference.first(), masked);
    }
    return masked
        ? "changed, values " + SafeText.MASKED
        : quoted(difference.first(), false) + " became " + quoted(difference.second(), false);
  }

  private static String quoted(Optional<String> text, boolean masked) {
    return masked ? SafeText.MASKED : "\"" + SafeText.of(text.orElse("")) + "\"";
  }

  static String level(ImageDifference image) {
    if (image instanceof ImageDifference.SameBytes) {
      return "same bytes";
    }
    if (image instanceof ImageDifference.SamePixels) {
      return "same pixels";
    }
    if (image instanceof ImageDifference.DifferentPixels) {
      return "different pixels";
    }
    return image instanceof ImageDifference.DifferentSize ? "different size" : "not decoded";
  }

  static String words(ImageDifference image) {
    if (image instanceof ImageDifference.SamePixels) {
      return "same pixels, encoded in other bytes";
    }
    if (image instanceof ImageDifference.DifferentPixels pixels) {
      return String.format(
          Locale.ROOT,
          "different pixels: %,d of %,d, by at most %d gray levels, %.2f in the mean",
          pixels.pixels(),
          pixels.ofPixels(),
          pixels.largest(),
          pixels.mean());
    }
    if (image instanceof ImageDifference.DifferentSize size) {
      return "different size: %d x %d became %d x %d pixels"
          .formatted(
              size.firstWidth(), size.firstHeight(), size.secondWidth(), size.secondHeight());
    }
    if (image instanceof ImageDifference.NotDecoded decoded) {
      String which =
          decoded.first() ? "the second" : decoded.second() ? "the first" : "neither of them";
      return decoded.first() || decoded.second()
          ? "different bytes; " + which + " cannot be decoded"
          : "different bytes; " + which + " can be decoded";
    }
    return "same bytes";
  }
}
