package ridgeproof.report.comparison;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.comparison.FingerComparison;
import ridgeproof.examination.comparison.ImageDifference;
import ridgeproof.examination.comparison.ImageLevel;
import ridgeproof.examination.comparison.PrintComparison;
import ridgeproof.examination.comparison.PrintComparison.Answer;
import ridgeproof.examination.comparison.RecordPair;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.comparison.ValueDifference;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.report.FieldValues;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.TruncatedText;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.transaction.record.LogicalRecord;

/** The words in which two transactions are compared. */
final class ComparisonPhrases {

  private static final int LENGTH_FIELD = 1;
  private static final int IDC_FIELD = 2;
  private static final int HEADER = 1;

  /** So many characters are shown before the first that differs. */
  private static final int ALIKE_BEFORE = 40;

  private final TransactionComparison comparison;
  private final Map<Integer, ExaminedImage> firstImages;
  private final Map<Integer, ExaminedImage> secondImages;
  private final ReportPhrases wording;
  private final FieldValues first;
  private final FieldValues second;
  private final boolean showPersonal;

  ComparisonPhrases(TransactionComparison comparison, boolean showPersonal) {
    SpecTables tables = comparison.first().tables();
    this.wording = new ReportPhrases(tables);
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
    List<Integer> items =
        IntStream.rangeClosed(difference.item().orElse(1), difference.items()).boxed().toList();
    return items.stream()
            .anyMatch(
                item ->
                    first.isPrivate(difference.field(), item)
                        || second.isPrivate(difference.field(), item))
        || difference.first().filter(text -> isCut(first, difference, items, text)).isPresent()
        || difference.second().filter(text -> isCut(second, difference, items, text)).isPresent();
  }

  /** Whether a part of a text is longer than any of its items may be. */
  private static boolean isCut(
      FieldValues values, ValueDifference difference, List<Integer> items, String text) {
    return !items.isEmpty()
        && Stream.of(text.split(" \\|\\|? "))
            .anyMatch(
                part ->
                    items.stream().allMatch(item -> values.isCut(difference.field(), item, part)));
  }

  /** A text of a difference as it may be shown: of a long one the part that differs. */
  String shown(ValueDifference difference, String text) {
    return masks(difference)
        ? TextSanitizer.MASKED
        : TruncatedText.from(
            TextSanitizer.of(text), Math.max(0, parting(difference) - ALIKE_BEFORE));
  }

  /** The first character that differs in two texts of which one is too long to be shown. */
  private static int parting(ValueDifference difference) {
    String left = TextSanitizer.of(difference.first().orElse(""));
    String right = TextSanitizer.of(difference.second().orElse(""));
    if (left.isEmpty()
        || right.isEmpty()
        || !TruncatedText.cuts(left) && !TruncatedText.cuts(right)) {
      return 0;
    }
    int parting = Arrays.mismatch(left.codePoints().toArray(), right.codePoints().toArray());
    return Math.max(0, parting);
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
    if (difference.first().isEmpty()) {
      return "added " + quoted(difference, difference.second());
    }
    if (difference.second().isEmpty()) {
      return "removed " + quoted(difference, difference.first());
    }
    return masks(difference)
        ? "changed, values " + TextSanitizer.MASKED
        : quoted(difference, difference.first())
            + " became "
            + quoted(difference, difference.second());
  }

  private String quoted(ValueDifference difference, Optional<String> text) {
    String shown = shown(difference, text.orElse(""));
    return masks(difference) ? shown : "\"" + shown + "\"";
  }

  /** The gray levels, sizes or reason behind the level of an image; empty for the same image. */
  static String words(ImageDifference image) {
    if (image instanceof ImageDifference.SamePixels) {
      return "the compressed bytes differ, the pixels do not";
    }
    if (image instanceof ImageDifference.DifferentPixels pixels) {
      // Pixels of two captures have nothing to do with each other.
      return pixels.isSameCapture()
          ? String.format(
              Locale.ROOT,
              "%,d of %,d pixels differ (%.1f %%), by %d gray levels or less, %.2f on average",
              pixels.pixels(),
              pixels.ofPixels(),
              100 * pixels.share(),
              pixels.largest(),
              pixels.mean())
          : "";
    }
    if (image instanceof ImageDifference.DifferentSize size) {
      return String.format(
          Locale.ROOT,
          "%d x %d became %d x %d pixels",
          size.firstWidth(),
          size.firstHeight(),
          size.secondWidth(),
          size.secondHeight());
    }
    if (image instanceof ImageDifference.NotDecoded decoded) {
      return decoded.first()
          ? "different bytes; the second cannot be decoded"
          : decoded.second()
              ? "different bytes; the first cannot be decoded"
              : "different bytes; neither can be decoded";
    }
    return image instanceof ImageDifference.NotOpened
        ? "different bytes; images were not decoded"
        : "";
  }

  /** The level of the images of a pair, and for how many fingers it holds. */
  static String level(RecordPair pair, ImageLevel level) {
    List<PrintComparison> prints = pair.fingers().map(FingerComparison::prints).orElse(List.of());
    if (level != ImageLevel.CANNOT_BE_TOLD || pair.fingers().isEmpty()) {
      return level.words();
    }
    if (prints.isEmpty()) {
      return level.words() + ": the records name different fingers";
    }
    long same = prints.stream().filter(p -> p.answer() == Answer.SAME_FINGER).count();
    return same == 0
        ? level.words()
        : level.words() + " for every finger: " + same + " of " + prints.size() + " match";
  }

  static String answer(PrintComparison print) {
    return switch (print.answer()) {
      case SAME_FINGER -> "same finger";
      case DIFFERENT_FINGER -> "different finger";
      case CANNOT_BE_TOLD -> "not determined";
    };
  }

  String finger(PrintComparison print) {
    return wording.position(print.finger().code());
  }

  /** Why the answer about a finger is what it is. */
  String reason(PrintComparison print) {
    return print.reason().words()
        + print
            .other()
            .map(
                other ->
                    String.format(
                        Locale.ROOT,
                        ": %s, similarity %.0f",
                        wording.position(other.code()),
                        print.otherSimilarity()))
            .orElse("");
  }

  static String similarity(PrintComparison print) {
    return String.format(Locale.ROOT, "%.0f", print.similarity());
  }

  /** Whether two answers can be told in one line. */
  static boolean alike(PrintComparison one, PrintComparison other) {
    return one.reason() == other.reason() && one.other().isEmpty() && other.other().isEmpty();
  }

  /** The long name of the field of a difference; empty text where no layout has it. */
  String fieldName(ValueDifference difference) {
    return first
        .row(difference.field())
        .or(() -> second.row(difference.field()))
        .map(FieldRow::name)
        .orElse("");
  }

  /** What differs of two records beside their fields and images. */
  List<String> remarks(RecordPair pair) {
    List<String> lines = new ArrayList<>();
    if (pair.moved()) {
      lines.add("moved: record " + pair.second().ordinal() + " of the second file");
    }
    if (pair.otherUnread()) {
      lines.add("bytes outside any field differ");
    }
    return lines;
  }

  /** {@code added}, {@code removed} or {@code changed}. */
  static String kind(ValueDifference difference) {
    return difference.first().isEmpty()
        ? "added"
        : difference.second().isEmpty() ? "removed" : "changed";
  }

  /** Whether it is the length or the number of a record, which are only counted. */
  static boolean isLength(ValueDifference difference) {
    return difference.field().field() == LENGTH_FIELD
        || difference.field().field() == IDC_FIELD && difference.field().recordType() != HEADER;
  }

  static String lengths(int records) {
    return "record lengths and numbers (LEN, IDC): "
        + (records == 1 ? "1 difference" : records + " differences");
  }

  /** What did not count, as it was asked for. */
  String ignored() {
    List<String> names = comparison.ignored().names();
    return names.isEmpty()
        ? "No field is ignored."
        : "Ignored fields (--ignore): " + String.join(", ", names) + ".";
  }

  /** How many records and images agree, and how far. */
  List<String> summary() {
    long differing = comparison.pairs().stream().filter(RecordPair::differs).count();
    List<String> lines = new ArrayList<>();
    lines.add(
        "Records: "
            + differing
            + " different, "
            + (comparison.pairs().size() - differing)
            + " the same, "
            + comparison.removed().size()
            + " only in the first file, "
            + comparison.added().size()
            + " only in the second file.");
    Map<ImageLevel, Long> levels = new EnumMap<>(ImageLevel.class);
    comparison.pairs().stream()
        .flatMap(pair -> pair.level().stream())
        .forEach(level -> levels.merge(level, 1L, Long::sum));
    if (!levels.isEmpty()) {
      lines.add(
          levels.entrySet().stream()
              .map(entry -> entry.getValue() + " " + entry.getKey().words())
              .collect(Collectors.joining("; ", "Images: ", ".")));
    }
    return lines;
  }

  /** Which of the two answers the other, by their control numbers. */
  List<String> references() {
    List<String> lines = new ArrayList<>();
    if (comparison.secondRefersToFirst()) {
      lines.add("The second file refers to the first: its 1.010 is 1.009 of the first file.");
    }
    if (comparison.firstRefersToSecond()) {
      lines.add("The first file refers to the second: its 1.010 is 1.009 of the second file.");
    }
    return lines;
  }

  /** What the reader must not take the comparison for. */
  List<String> cautions() {
    List<String> lines = new ArrayList<>();
    lines.add(
        switch (comparison.depth()) {
          case STRUCTURE -> "Only the bytes of images were compared (--depth structure).";
          case IMAGES ->
              "Whether two images show the same finger was not checked (--depth images).";
          case RIDGES ->
              String.format(
                  Locale.ROOT,
                  "Fingers were compared by a minutiae matcher. Prints match from a similarity of"
                      + " %.0f on (about one false match in ten thousand, as its authors state).",
                  comparison.first().tables().pixelLimits().value("finger-match"));
        });
    lines.addAll(ReportPhrases.CAUTIONS);
    return lines;
  }
}
