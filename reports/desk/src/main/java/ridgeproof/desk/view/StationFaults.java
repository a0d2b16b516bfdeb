package ridgeproof.desk.view;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import ridgeproof.desk.view.ShiftPage.Fault;
import ridgeproof.ledger.health.HealthFinding;
import ridgeproof.ledger.health.LevelSeries;
import ridgeproof.ledger.health.StationHealth;
import ridgeproof.ledger.report.FaultPicture;
import ridgeproof.report.TextSanitizer;

/** Findings on the health of stations, as the desk shows them. */
final class StationFaults {

  private final Texts texts;

  StationFaults(Texts texts) {
    this.texts = texts;
  }

  /** What a ledger tells; empty health where it cannot be read. */
  ShiftPage.FromLedger fromLedger(Optional<StationHealth> health) {
    if (health.isEmpty()) {
      return new ShiftPage.FromLedger(List.of(), List.of(), texts.of("shift.ledger.unread"));
    }
    List<Fault> faults =
        health.get().findings().stream()
            .filter(finding -> finding.operator().isEmpty())
            .map(finding -> fault(finding, finding.station()))
            .toList();
    List<String> people = health.get().people().entrySet().stream().map(this::people).toList();
    return new ShiftPage.FromLedger(
        people, faults, faults.isEmpty() ? texts.of("shift.ledger.none") : "");
  }

  private String people(Map.Entry<String, Integer> station) {
    return texts.of(
        "shift.ledger.people",
        TextSanitizer.of(station.getKey()),
        texts.counted("shift.people", station.getValue()));
  }

  /** A finding about the station of that section, whose name stands above it. */
  Fault fault(HealthFinding finding) {
    return fault(finding, "");
  }

  private Fault fault(HealthFinding finding, String station) {
    String title = finding.fault().title();
    String dated =
        finding
            .since()
            .map((LocalDate since) -> texts.of("shift.since", title, since))
            .orElse(title);
    return new Fault(
        station.isEmpty() ? dated : texts.of("shift.of", TextSanitizer.of(station), dated),
        texts.of("shift.found", TextSanitizer.of(finding.observed())),
        finding.fault().remedy(),
        FaultPicture.of(finding, UnaryOperator.identity()),
        finding.evidence() instanceof LevelSeries series ? numbers(series.values()) : "",
        finding.evidence() instanceof LevelSeries series ? series.at() : 0);
  }

  /** As JSON. */
  static String numbers(List<Double> values) {
    return values.stream()
        .map(value -> String.format(Locale.ROOT, "%.4f", value))
        .collect(Collectors.joining(",", "[", "]"));
  }
}
