package ridgeproof.examination.rules.consistency;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.spec.consistency.FeatureFrame;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * The image that a feature record says its features were taken from has the size of the one with
 * its IDC. Sizes are compared in millimetres, because features may come from a copy at another
 * resolution.
 */
final class FeatureImageSizeRule implements Rule {

  private static final int PPI = 1;

  private record Size(double width, double height) {

    double percentFrom(Size other) {
      return Math.max(
              Math.abs(width - other.width) / other.width,
              Math.abs(height - other.height) / other.height)
          * 100;
    }

    String inWords() {
      return String.format(Locale.ROOT, "%.1f x %.1f mm", width, height);
    }
  }

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-031");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    FeatureImageIndex described = new FeatureImageIndex(examinee);
    double most = examinee.tables().agreements().threshold("frame-tolerance");
    for (FeatureFrame frame : examinee.tables().agreements().featureFrames()) {
      for (LogicalRecord record :
          examinee.transaction().recordsOfType(frame.width().recordType())) {
        List<ExaminedImage> images = described.of(record);
        Optional<Size> stated = stated(record, frame);
        Optional<Size> imaged = images.size() == 1 ? imaged(images.get(0)) : Optional.empty();
        if (stated.isPresent() && imaged.isPresent()) {
          check(record, frame, stated.get(), imaged.get(), most, log);
        }
      }
    }
  }

  private static void check(
      LogicalRecord record,
      FeatureFrame frame,
      Size stated,
      Size imaged,
      double most,
      FindingLog log) {
    double percent = stated.percentFrom(imaged);
    if (percent > most) {
      log.add(
          "RP-TXN-031",
          Location.of(record, record.field(frame.width()).orElseThrow()),
          Observed.of(stated.inWords()),
          imaged.inWords() + ", as the image has",
          Optional.of(frame.source()),
          List.of(Measure.against("difference", percent, "percent", most)));
    }
  }

  private static Optional<Size> stated(LogicalRecord record, FeatureFrame frame) {
    OptionalInt units = record.number(frame.scaleUnits().field());
    OptionalInt across = record.number(frame.horizontalScale().field());
    OptionalInt down = record.number(frame.verticalScale().field());
    if (units.isEmpty() || across.isEmpty() || down.isEmpty()) {
      return Optional.empty();
    }
    return size(
        record.number(frame.width().field()),
        record.number(frame.height().field()),
        units.getAsInt() == PPI
            ? new PixelDensity(across.getAsInt(), down.getAsInt())
            : PixelDensity.ofPpcm(across.getAsInt(), down.getAsInt()));
  }

  private static Optional<Size> imaged(ExaminedImage image) {
    return image.density().flatMap(density -> size(image.trueWidth(), image.trueHeight(), density));
  }

  private static Optional<Size> size(OptionalInt width, OptionalInt height, PixelDensity density) {
    if (width.orElse(0) == 0
        || height.orElse(0) == 0
        || density.horizontalPpi() <= 0
        || density.verticalPpi() <= 0) {
      return Optional.empty();
    }
    return Optional.of(
        new Size(
            width.getAsInt() / density.horizontalPpi() * PixelDensity.MM_PER_INCH,
            height.getAsInt() / density.verticalPpi() * PixelDensity.MM_PER_INCH));
  }
}
