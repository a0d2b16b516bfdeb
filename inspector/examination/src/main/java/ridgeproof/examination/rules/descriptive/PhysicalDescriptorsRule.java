package ridgeproof.examination.rules.descriptive;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.spec.descriptive.Plausible;

/** Ranges run from the least to the greatest, and height and weight go together. */
final class PhysicalDescriptorsRule implements Rule {

  private static final String HEIGHT = "2.027";
  private static final String WEIGHT = "2.029";
  private static final String AGE_RANGE = "2.023";
  private static final String HEIGHT_RANGE = "2.028";
  private static final String WEIGHT_RANGE = "2.030";
  private static final double KG_PER_POUND = 0.45359237;
  private static final double METRES_PER_INCH = 0.0254;
  private static final int INCHES_PER_FOOT = 12;

  @Override
  public Set<String> ids() {
    return Set.of("RP-PTL-035", "RP-PTL-036");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    DescriptiveText.of(examinee)
        .ifPresent(
            particulars -> {
              checkRange(particulars, AGE_RANGE, PhysicalDescriptorsRule::number, log);
              checkRange(particulars, HEIGHT_RANGE, PhysicalDescriptorsRule::inches, log);
              checkRange(particulars, WEIGHT_RANGE, PhysicalDescriptorsRule::number, log);
              checkBuild(particulars, examinee, log);
            });
  }

  private static void checkRange(
      DescriptiveText particulars,
      String field,
      Function<String, OptionalDouble> measure,
      FindingLog log) {
    for (DescriptiveText.Entry entry : particulars.conforming(field)) {
      int half = entry.text().length() / 2;
      OptionalDouble least = measure.apply(entry.text().substring(0, half));
      OptionalDouble most = measure.apply(entry.text().substring(half));
      if (least.isPresent() && most.isPresent() && least.getAsDouble() > most.getAsDouble()) {
        log.add("RP-PTL-035", entry.location(), entry.observed(), "the lowest value first");
      }
    }
  }

  private static void checkBuild(
      DescriptiveText particulars, ExaminationInput examinee, FindingLog log) {
    List<DescriptiveText.Entry> heights = particulars.conforming(HEIGHT);
    List<DescriptiveText.Entry> weights = particulars.conforming(WEIGHT);
    Optional<Plausible> build =
        examinee.tables().particulars().plausible("body-mass", particulars.kindOfTransaction());
    if (heights.isEmpty() || weights.isEmpty() || build.isEmpty()) {
      return;
    }
    DescriptiveText.Entry weight = weights.get(0);
    double metres = inches(heights.get(0).text()).orElse(0) * METRES_PER_INCH;
    double kilograms = number(weight.text()).orElse(0) * KG_PER_POUND;
    if (metres > 0 && kilograms > 0 && !build.get().holds(kilograms / (metres * metres))) {
      log.add(
          "RP-PTL-036",
          weight.location(),
          weight.observed(
              String.format(Locale.ROOT, "%.0f cm and %.0f kg", metres * 100, kilograms)),
          String.format(
              Locale.ROOT,
              "%.0f to %.0f %s",
              build.get().least(),
              build.get().most(),
              build.get().unit()),
          Optional.of(build.get().source()),
          List.of());
    }
  }

  private static OptionalDouble number(String text) {
    return text.chars().allMatch(c -> c >= '0' && c <= '9')
        ? OptionalDouble.of(Integer.parseInt(text))
        : OptionalDouble.empty();
  }

  /** Three characters: feet and two digits of inches, or N and inches. */
  private static OptionalDouble inches(String text) {
    OptionalDouble rest = number(text.substring(1));
    if (rest.isEmpty() || text.charAt(0) == 'N') {
      return rest;
    }
    OptionalDouble feet = number(text.substring(0, 1));
    return feet.isEmpty()
        ? feet
        : OptionalDouble.of(feet.getAsDouble() * INCHES_PER_FOOT + rest.getAsDouble());
  }
}
