package ridgeproof.examination.rules.layout;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.ValueRule;
import ridgeproof.spec.limit.MinimumResolution;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * Fields 1.011 and 1.012 agree with each other and with the field ISR of the binary records. Which
 * resolutions images may have is a matter of the limits of images.
 */
final class HeaderResolutionRule implements Rule {

  private static final FieldNumber NATIVE = new FieldNumber(1, 11);
  private static final FieldNumber NOMINAL = new FieldNumber(1, 12);
  private static final Set<Integer> TYPES_WITH_ISR = Set.of(3, 4, 5, 6);
  private static final int ISR_FIELD = 5;
  private static final int ISR_NATIVE = 1;

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-016", "RP-TXN-017", "RP-TXN-018");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    double slack = 1 + examinee.tables().agreements().threshold("resolution-tolerance") / 100;
    examinee
        .transaction()
        .header()
        .ifPresent(
            header -> {
              checkMinimum(header, examinee, slack, log);
              OptionalDouble scanned = resolution(header, NATIVE);
              OptionalDouble sent = resolution(header, NOMINAL);
              if (scanned.isPresent() && sent.isPresent()) {
                checkOrder(header, scanned.getAsDouble(), sent.getAsDouble(), slack, log);
                checkIsr(examinee, scanned.getAsDouble(), sent.getAsDouble(), slack, log);
              }
            });
  }

  private static void checkMinimum(
      LogicalRecord header, ExaminationInput examinee, double slack, FindingLog log) {
    for (FieldNumber number : List.of(NATIVE, NOMINAL)) {
      Optional<MinimumResolution> least =
          examinee.tables().agreements().minimumResolutions().stream()
              .filter(row -> row.field().equals(number))
              .filter(row -> !examinee.transaction().recordsOfType(row.recordType()).isEmpty())
              .max(Comparator.comparingDouble(MinimumResolution::ppmm));
      OptionalDouble found = resolution(header, number);
      if (least.isPresent()
          && found.isPresent()
          && found.getAsDouble() * slack < least.get().ppmm()) {
        log.add(
            "RP-TXN-017",
            Location.of(header, header.field(number).orElseThrow()),
            Observed.of(String.format(Locale.ROOT, "%.2f pixels per mm", found.getAsDouble())),
            String.format(Locale.ROOT, "at least %.2f pixels per mm", least.get().ppmm()),
            Optional.of(least.get().source()),
            List.of(
                Measure.against(
                    "resolution", found.getAsDouble(), "pixels per mm", least.get().ppmm())));
      }
    }
  }

  private static void checkOrder(
      LogicalRecord header, double scanned, double sent, double slack, FindingLog log) {
    if (sent > scanned * slack) {
      log.add(
          "RP-TXN-016",
          Location.of(header, header.field(NOMINAL).orElseThrow()),
          Observed.of(String.format(Locale.ROOT, "%.2f in 1.012, %.2f in 1.011", sent, scanned)),
          "1.012 at most 1.011",
          List.of(Measure.against("nominal resolution", sent, "pixels per mm", scanned)));
    }
  }

  private static void checkIsr(
      ExaminationInput examinee, double scanned, double sent, double slack, FindingLog log) {
    if (scanned <= sent * slack && sent <= scanned * slack) {
      return;
    }
    List<LogicalRecord> claiming =
        examinee.transaction().records().stream()
            .filter(record -> TYPES_WITH_ISR.contains(record.type()))
            .filter(record -> record.number(ISR_FIELD).orElse(0) == ISR_NATIVE)
            .toList();
    if (!claiming.isEmpty()) {
      LogicalRecord first = claiming.get(0);
      log.add(
          "RP-TXN-018",
          Location.of(first, first.field(ISR_FIELD).orElseThrow()),
          Observed.of(
              String.format(
                  Locale.ROOT,
                  "records with ISR 1: %d; 1.011 is %.2f, 1.012 is %.2f",
                  claiming.size(),
                  scanned,
                  sent)),
          "ISR 0, or 1.012 equal to 1.011");
    }
  }

  /** What a field of the header says, where it names a resolution at all. */
  private static OptionalDouble resolution(LogicalRecord header, FieldNumber number) {
    return header
        .text(number.field())
        .map(ValueRule::asNumber)
        .filter(value -> value.isPresent() && value.getAsDouble() > 0)
        .orElse(OptionalDouble.empty());
  }
}
