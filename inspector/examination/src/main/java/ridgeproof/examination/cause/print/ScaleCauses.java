package ridgeproof.examination.cause.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.rules.image.MeasuredPrints;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.measure.Enlargement;
import ridgeproof.imagery.measure.GrayLevelStatistics;
import ridgeproof.imagery.measure.RidgePeriod;
import ridgeproof.spec.limit.ResolutionClass;
import ridgeproof.transaction.record.WholeNumber;

/**
 * What is wrong with the scale of images: its unit, the two directions, a scan at half the
 * resolution, a note in the image that says something else. What all images share is one finding.
 */
public final class ScaleCauses implements CauseRule {

  private static final String UNIT = "RP-IMG-052";
  private static final String ENLARGED = "RP-IMG-053";
  private static final String NOTES = "RP-IMG-054";
  private static final String SIDES = "RP-IMG-055";
  private static final String NOTE = "RP-IMG-004";

  private static final int INCHES = 1;
  private static final int CENTIMETRES = 2;
  private static final double CM_PER_INCH = 2.54;

  /** Millimetres from ridge to ridge that a wrong unit is told by; the units differ by 2.54. */
  private static final double MIN_MM = 0.33;

  private static final double MAX_MM = 0.65;

  /** Of 160 prints of two sensors none came below this, of enlarged ones nearly all. */
  private static final double UNEVEN = 0.75;

  /** The same where most images of a file agree, which also have no fine detail. */
  private static final double UNEVEN_TOGETHER = 0.9;

  private static final double FINE_TOGETHER = 0.015;
  private static final int SEVERAL = 3;
  private static final double NEARLY_ALL = 0.8;

  @Override
  public Set<String> ids() {
    return Set.of(UNIT, ENLARGED, NOTES, SIDES);
  }

  @Override
  public void establish(ExaminationInput examinee, List<Finding> found, CauseLog causes) {
    List<ExaminedImage> prints = examinee.prints();
    units(prints, examinee.tables().resolutionClasses(), causes);
    sides(prints, causes);
    enlarged(new MeasuredPrints(examinee).scanned(), causes);
    notes(found, causes);
  }

  private static void units(
      List<ExaminedImage> prints, List<ResolutionClass> classes, CauseLog causes) {
    List<ExaminedImage> wrong =
        prints.stream().filter(image -> hasOtherUnit(image, classes)).toList();
    if (wrong.isEmpty()) {
      return;
    }
    ExaminedImage first = wrong.get(0);
    boolean inches = unit(first).orElse(0) == INCHES;
    causes.add(
        UNIT,
        wrong.size() == 1
            ? first.layout().scaleUnits().map(first::at).orElseThrow()
            : Location.file(),
        Observed.of(
            String.format(
                Locale.ROOT,
                "%s, %s in %s",
                inches ? "unit 1 (pixels per inch)" : "unit 2 (pixels per centimeter)",
                number(scale(first)),
                wrong.size() == 1 ? "1 image" : wrong.size() + " images")),
        inches ? "unit 2 (pixels per centimeter)" : "unit 1 (pixels per inch)",
        List.of(Measure.of("stated resolution", first.density().get().meanPpi(), "ppi")),
        ofScale(wrong));
  }

  /** Whether only in the other unit the number is a resolution and the ridges those of people. */
  private static boolean hasOtherUnit(ExaminedImage image, List<ResolutionClass> classes) {
    int unit = unit(image).orElse(0);
    Optional<Double> mm = millimetres(image);
    if (unit != INCHES && unit != CENTIMETRES || mm.isEmpty()) {
      return false;
    }
    double ppi = image.density().orElseThrow().meanPpi();
    double factor = unit == INCHES ? CM_PER_INCH : 1 / CM_PER_INCH;
    boolean known = classes.stream().anyMatch(resolution -> resolution.admits(ppi));
    boolean knownInOther = classes.stream().anyMatch(resolution -> resolution.admits(ppi * factor));
    return !known && knownInOther && !fits(mm.get()) && fits(mm.get() / factor);
  }

  private static boolean fits(double millimetres) {
    return millimetres >= MIN_MM && millimetres <= MAX_MM;
  }

  private static Optional<Double> millimetres(ExaminedImage image) {
    Optional<RidgePeriod> ridges = image.print().flatMap(GrayLevelStatistics::ridges);
    return ridges.isEmpty() || image.density().isEmpty()
        ? Optional.empty()
        : Optional.of(ridges.get().millimetres(image.density().get().meanPpi()));
  }

  private static OptionalInt unit(ExaminedImage image) {
    return image
        .layout()
        .scaleUnits()
        .flatMap(image.record()::field)
        .map(field -> WholeNumber.parse(field.text()))
        .orElse(OptionalInt.empty());
  }

  private static double scale(ExaminedImage image) {
    double ppi = image.density().orElseThrow().meanPpi();
    return unit(image).orElse(0) == CENTIMETRES ? ppi / CM_PER_INCH : ppi;
  }

  /** Everything that goes by the resolution of these images. */
  private static Consequences ofScale(List<ExaminedImage> images) {
    return Consequences.ofRules(
            "RP-RDG",
            "RP-SEQ",
            "RP-IMG-004",
            "RP-IMG-008",
            "RP-IMG-009",
            "RP-IMG-010",
            "RP-IMG-012",
            "RP-IMG-024",
            "RP-IMG-039",
            "RP-IMG-019")
        .inRecords(ExaminedImage.ordinals(images))
        .or(Consequences.ofRules("RP-IMG-040"));
  }

  private static void sides(List<ExaminedImage> prints, CauseLog causes) {
    for (ExaminedImage image : prints) {
      boolean exchanged =
          image
              .header()
              .filter(header -> header.width() != header.height() && header.width() > 0)
              .filter(header -> image.width().orElse(0) == header.height())
              .filter(header -> image.height().orElse(0) == header.width())
              .isPresent();
      if (exchanged) {
        causes.add(
            SIDES,
            image.at(image.layout().width()),
            Observed.of(
                String.format(
                    Locale.ROOT,
                    "record %d x %d pixels",
                    image.width().getAsInt(),
                    image.height().getAsInt())),
            String.format(
                Locale.ROOT,
                "%d x %d pixels, as the image has",
                image.height().getAsInt(),
                image.width().getAsInt()),
            List.of(),
            Consequences.ofRules(
                    "RP-IMG-001", "RP-IMG-002", "RP-IMG-009", "RP-IMG-010", "RP-IMG-019")
                .inRecords(ExaminedImage.ordinals(List.of(image))));
      }
    }
  }

  private static void enlarged(List<ExaminedImage> prints, CauseLog causes) {
    List<ExaminedImage> single = new ArrayList<>();
    List<ExaminedImage> together = new ArrayList<>();
    for (ExaminedImage image : prints) {
      Enlargement signs = image.print().orElseThrow().enlargement();
      boolean uneven = signs.evenness() < UNEVEN;
      if (uneven) {
        single.add(image);
      }
      if (uneven || signs.evenness() < UNEVEN_TOGETHER && signs.fineDetail() < FINE_TOGETHER) {
        together.add(image);
      }
    }
    if (together.size() >= SEVERAL && together.size() >= NEARLY_ALL * prints.size()) {
      report(
          together,
          Location.file(),
          String.format(Locale.ROOT, "%d of %d images", together.size(), prints.size()),
          causes);
    } else {
      single.forEach(image -> report(List.of(image), image.atData(), "the image", causes));
    }
  }

  private static void report(
      List<ExaminedImage> images, Location place, String which, CauseLog causes) {
    Enlargement signs = images.get(0).print().orElseThrow().enlargement();
    causes.add(
        ENLARGED,
        place,
        Observed.of(which + " enlarged from half the stated resolution"),
        "images at the resolution at which they were scanned",
        List.of(
            Measure.against("evenness of neighboring pixels", signs.evenness(), "", UNEVEN),
            Measure.of("fine detail", signs.fineDetail(), "")),
        Consequences.ofRules("RP-RDG").inRecords(ExaminedImage.ordinals(images)));
  }

  /** The same other resolution inside of several images is one setting of one encoder. */
  private static void notes(List<Finding> found, CauseLog causes) {
    List<Finding> notes = found.stream().filter(finding -> finding.ruleId().equals(NOTE)).toList();
    long texts = notes.stream().map(finding -> finding.observed().text()).distinct().count();
    if (notes.size() >= SEVERAL && texts == 1) {
      causes.add(
          NOTES,
          Location.file(),
          Observed.of(
              String.format(
                  Locale.ROOT, "%s, in %d images", notes.get(0).observed().text(), notes.size())),
          notes.get(0).required(),
          List.of(),
          Consequences.exactly(notes));
    }
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }
}
