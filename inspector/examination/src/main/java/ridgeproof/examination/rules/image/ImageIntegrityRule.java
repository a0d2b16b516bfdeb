package ridgeproof.examination.rules.image;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.MissingFingers;
import ridgeproof.examination.facts.Positions;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.finding.Quantity;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.table.Source;
import ridgeproof.transaction.record.ByteRange;

/** The image is there and its bytes are whole. */
final class ImageIntegrityRule implements Rule {

  private static final String FILE_LIMIT = "RP-IMG-070";

  @Override
  public Set<String> ids() {
    return Set.of(
        "RP-IMG-006",
        "RP-IMG-007",
        "RP-IMG-011",
        "RP-IMG-013",
        "RP-IMG-014",
        "RP-IMG-015",
        FILE_LIMIT,
        "RP-IMG-050");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    MissingFingers missing = new MissingFingers(examinee);
    Positions positions = new Positions(examinee.tables());
    for (ExaminedImage image : examinee.images()) {
      if (image.data().isEmpty()) {
        // A record that declares all its fingers missing has no image, and that is right.
        if (!MissingFingers.isDeclaredIn(image) || !missing.isAllOf(image, positions)) {
          log.add("RP-IMG-013", image.location(), Observed.of("no image data"), "an image");
        }
      } else {
        checkByteCount(image, log);
        reportDefects(image, examinee.tables(), log);
      }
    }
    reportFileLimit(examinee.images(), log);
  }

  /** One finding for the file: past the limit every further image would have the same. */
  private static void reportFileLimit(List<ExaminedImage> images, FindingLog log) {
    List<ExaminedImage> left =
        images.stream().filter(image -> fileLimit(image).isPresent()).toList();
    if (!left.isEmpty()) {
      ExaminedImage first = left.get(0);
      ImageDefect defect = fileLimit(first).orElseThrow();
      log.add(
          FILE_LIMIT,
          first.location().at(new ByteRange(defect.offset(), 0)),
          Observed.of(
              String.format(
                  Locale.ROOT,
                  "%d of %d images not fully examined: %s",
                  left.size(),
                  images.size(),
                  defect.detail())),
          "images of a plausible size for this file");
    }
  }

  private static Optional<ImageDefect> fileLimit(ExaminedImage image) {
    return image.decodingDefects().stream()
        .filter(defect -> defect.kind() == ImageDefect.Kind.FILE_LIMIT)
        .findFirst();
  }

  private static void checkByteCount(ExaminedImage image, FindingLog log) {
    boolean raw = image.statedFormat().filter(format -> format == ImageFormat.RAW).isPresent();
    boolean looksRaw =
        image.header().map(header -> header.format() == ImageFormat.RAW).orElse(true);
    if (!raw
        || !looksRaw
        || image.width().isEmpty()
        || image.height().isEmpty()
        || image.bitsPerPixel().isEmpty()) {
      return;
    }
    long row = ((long) image.width().getAsInt() * image.bitsPerPixel().getAsInt() + 7) / 8;
    long expected = row * image.height().getAsInt();
    int found = image.data().get().length();
    if (found != expected) {
      log.add(
          "RP-IMG-011",
          image.atData(),
          Observed.of(Quantity.of(found, "byte")),
          String.format(
              Locale.ROOT,
              "%s for %d x %d pixels of %s",
              Quantity.of(expected, "byte"),
              image.width().getAsInt(),
              image.height().getAsInt(),
              Quantity.of(image.bitsPerPixel().getAsInt(), "bit")));
    }
  }

  private static void reportDefects(ExaminedImage image, SpecTables tables, FindingLog log) {
    // The header walk and the decoder may meet the same damage.
    Set<ImageDefect> defects = new LinkedHashSet<>();
    image.header().ifPresent(header -> defects.addAll(header.defects()));
    image.decodingDefects().stream()
        .filter(defect -> defects.stream().noneMatch(other -> isSameRest(defect, other)))
        .toList()
        .forEach(defects::add);
    defects.forEach(defect -> report(image, defect, tables, log));
    boolean unknown =
        image.header().isPresent()
            && image.pixels().isEmpty()
            && defects.stream().noneMatch(ImageIntegrityRule::stopsDecoding);
    if (unknown) {
      log.add(
          "RP-IMG-014",
          image.atData(),
          Observed.of(found(image.header().get().format())),
          "a format that can be decoded");
    }
  }

  /** The same bytes behind the image, whatever marker they stand behind. */
  private static boolean isSameRest(ImageDefect one, ImageDefect other) {
    return one.kind() == ImageDefect.Kind.TRAILING_BYTES
        && other.kind() == ImageDefect.Kind.TRAILING_BYTES
        && one.offset() == other.offset();
  }

  /** What begins like no format is taken for plain pixels, which the record does not say it is. */
  private static String found(ImageFormat format) {
    return format == ImageFormat.RAW ? "bytes of no known format" : format.label();
  }

  /** Whether it tells by itself why there are no pixels. */
  private static boolean stopsDecoding(ImageDefect defect) {
    return switch (defect.kind()) {
      case DAMAGE, LIMIT, FILE_LIMIT -> true;
      case ODDITY, TRAILING_BYTES -> false;
    };
  }

  /** The document that the format of the image follows, not that of another format. */
  private static Optional<Source> source(ExaminedImage image, SpecTables tables) {
    ImageFormat format =
        image.header().map(ImageHeader::format).or(image::statedFormat).orElse(ImageFormat.RAW);
    return tables.formatSource(format.name());
  }

  private static void report(
      ExaminedImage image, ImageDefect defect, SpecTables tables, FindingLog log) {
    Location place = image.location().at(new ByteRange(defect.offset(), 0));
    switch (defect.kind()) {
      case DAMAGE ->
          log.add(
              "RP-IMG-006",
              place,
              Observed.of(defect.detail()),
              "a complete codestream",
              source(image, tables),
              List.of());
      case ODDITY ->
          log.add(
              "RP-IMG-050",
              place,
              Observed.of(defect.detail()),
              "a table of class 0",
              source(image, tables),
              List.of());
      case TRAILING_BYTES ->
          log.add("RP-IMG-007", place, Observed.of(defect.detail()), "the image only");
      case LIMIT ->
          log.add("RP-IMG-015", place, Observed.of(defect.detail()), "an image within the limit");
      case FILE_LIMIT -> {
        // One finding for the whole file tells of it.
      }
    }
  }
}
