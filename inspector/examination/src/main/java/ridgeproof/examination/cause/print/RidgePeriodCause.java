package ridgeproof.examination.cause.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.rules.image.MeasuredPrints;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.imagery.measure.RidgePeriod;
import ridgeproof.spec.limit.PixelLimits;
import ridgeproof.spec.limit.PixelLimits.PixelLimit;

/**
 * Ridges lie as far apart as ridges of people do at the resolution that the record states. The mean
 * over adult fingers is about 0.46 mm, 9 pixels at 500 ppi (common practice); an image of 1000 ppi
 * labelled 500 shows twice that.
 */
public final class RidgePeriodCause implements CauseRule {

  /** What goes by the resolution, and is wrong where that is. */
  private static final Consequences OF_SCALE =
      Consequences.ofRules(
          "RP-RDG",
          "RP-SEQ",
          "RP-IMG-004",
          "RP-IMG-008",
          "RP-IMG-009",
          "RP-IMG-010",
          "RP-IMG-012",
          "RP-IMG-019",
          "RP-IMG-024",
          "RP-IMG-054");

  private record Period(ExaminedImage image, RidgePeriod ridges, double millimetres) {}

  @Override
  public Set<String> ids() {
    return Set.of("RP-IMG-039", "RP-IMG-040");
  }

  @Override
  public void establish(ExaminationInput examinee, List<Finding> found, CauseLog log) {
    if (examinee.depth() == Depth.STRUCTURE) {
      return;
    }
    PixelLimits limits = examinee.tables().pixelLimits();
    PixelLimit shortest = limits.limit("shortest-ridge-period");
    PixelLimit longest = limits.limit("longest-ridge-period");
    List<Period> periods = periods(examinee, limits);
    List<Period> tooShort =
        periods.stream().filter(p -> p.millimetres() < shortest.value()).toList();
    List<Period> tooLong = periods.stream().filter(p -> p.millimetres() > longest.value()).toList();
    if (isNearlyAll(tooShort, periods, limits)) {
      reportFile(tooShort, periods, shortest, log);
    } else {
      reportEach(tooShort, shortest, limits, log);
    }
    if (isNearlyAll(tooLong, periods, limits)) {
      reportFile(tooLong, periods, longest, log);
    } else {
      reportEach(tooLong, longest, limits, log);
    }
  }

  private static List<Period> periods(ExaminationInput examinee, PixelLimits limits) {
    List<Period> periods = new ArrayList<>();
    for (ExaminedImage image : new MeasuredPrints(examinee).gray()) {
      Optional<RidgePeriod> ridges = image.print().get().ridges();
      Optional<PixelDensity> density = image.density();
      if (ridges.isPresent() && density.isPresent() && isClear(ridges.get(), limits)) {
        double millimetres = ridges.get().millimetres(density.get().meanPpi());
        periods.add(new Period(image, ridges.get(), millimetres));
      }
    }
    return periods;
  }

  private static boolean isClear(RidgePeriod ridges, PixelLimits limits) {
    return ridges.windows() >= limits.value("ridge-windows-shared")
        && ridges.coherentShare() >= limits.limit("ridge-share").share()
        && ridges.spread() <= limits.limit("ridge-spread").share() * ridges.pixels();
  }

  private static boolean isNearlyAll(List<Period> odd, List<Period> periods, PixelLimits limits) {
    return odd.size() >= limits.value("ridge-images")
        && odd.size() >= limits.limit("ridge-agreement").share() * periods.size();
  }

  private static void reportEach(
      List<Period> odd, PixelLimit limit, PixelLimits limits, CauseLog log) {
    for (Period period : odd) {
      if (period.ridges().windows() >= limits.value("ridge-windows")) {
        ExaminedImage image = period.image();
        Location place = image.layout().horizontalScale().map(image::at).orElse(image.location());
        log.add(
            "RP-IMG-039",
            place,
            Observed.of(observed(period)),
            required(period, limit),
            evidence(period, limit),
            OF_SCALE.inRecords(Set.of(image.record().ordinal())));
      }
    }
  }

  private static void reportFile(
      List<Period> odd, List<Period> periods, PixelLimit limit, CauseLog log) {
    List<Period> sorted = new ArrayList<>(odd);
    sorted.sort((one, other) -> Double.compare(one.millimetres(), other.millimetres()));
    Period median = sorted.get(sorted.size() / 2);
    Set<Integer> others =
        ExaminedImage.ordinals(
            periods.stream().filter(period -> !odd.contains(period)).map(Period::image).toList());
    log.add(
        "RP-IMG-040",
        Location.file(),
        Observed.of(
            observed(median)
                + String.format(
                    Locale.ROOT, ", as in %d of %d images", odd.size(), periods.size())),
        required(median, limit),
        evidence(median, limit),
        OF_SCALE
            .onlyWhere(finding -> isOfScale(finding, others))
            .or(Consequences.ofRules("RP-TXN-016", "RP-TXN-017", "RP-TXN-018")));
  }

  /** What is seen of an image of which the scale is right stays, but for how others match it. */
  private static boolean isOfScale(Finding finding, Set<Integer> others) {
    return finding.ruleId().startsWith("RP-SEQ")
        || finding.location().record().stream().noneMatch(others::contains);
  }

  private static String observed(Period period) {
    return String.format(
        Locale.ROOT,
        "ridges %.1f pixels apart, %.2f mm at %.0f ppi",
        period.ridges().pixels(),
        period.millimetres(),
        period.image().density().orElseThrow().meanPpi());
  }

  private static String required(Period period, PixelLimit limit) {
    return String.format(
        Locale.ROOT,
        "about 0.46 mm, at %s %.2f mm",
        period.millimetres() < limit.value() ? "least" : "most",
        limit.value());
  }

  private static List<Measure> evidence(Period period, PixelLimit limit) {
    return List.of(
        Measure.against("ridge distance", period.millimetres(), "mm", limit.value()),
        Measure.of("ridge distance", period.ridges().pixels(), "pixels"),
        Measure.of("windows with clear ridges", period.ridges().windows(), ""));
  }
}
