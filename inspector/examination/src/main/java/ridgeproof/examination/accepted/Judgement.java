package ridgeproof.examination.accepted;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.agency.AcceptedDeviation;
import ridgeproof.spec.agency.AgencyProfile;
import ridgeproof.spec.agency.RelaxedRule;
import ridgeproof.spec.consistency.CaptureOrigin;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.Item;

/** How an agency judges the findings of one transaction on one day. */
public final class Judgement {

  private final Optional<AgencyProfile> agency;
  private final List<AcceptedDeviation> accepted;

  private Judgement(Optional<AgencyProfile> agency, List<AcceptedDeviation> accepted) {
    this.agency = agency;
    this.accepted = accepted;
  }

  public static Judgement of(
      Optional<AgencyProfile> agency, LocalDate day, Transaction transaction, SpecTables tables) {
    List<AcceptedDeviation> listed = agency.map(AgencyProfile::accepted).orElse(List.of());
    if (listed.isEmpty()) {
      return new Judgement(agency, listed);
    }
    String station = station(transaction, tables);
    return new Judgement(
        agency, listed.stream().filter(deviation -> deviation.holds(day, station)).toList());
  }

  /** What the fields that name the station say, with blanks between. */
  private static String station(Transaction transaction, SpecTables tables) {
    return tables.captureOrigins().stream()
        .filter(origin -> origin.kind() == CaptureOrigin.Kind.STATION)
        .map(CaptureOrigin::field)
        .flatMap(
            number ->
                transaction.recordsOfType(number.recordType()).stream()
                    .flatMap(record -> record.field(number).stream()))
        .flatMap(field -> field.subfields().stream())
        .map(subfield -> subfield.items().stream().map(Item::text).collect(Collectors.joining(" ")))
        .distinct()
        .collect(Collectors.joining("\n"));
  }

  /** The finding as the agency judges it: what is accepted is a note. */
  public Finding of(Finding finding) {
    Severity wanted =
        accepted(finding.ruleId()).isPresent()
            ? Severity.NOTE
            : agency
                .map(profile -> profile.severities().get(finding.ruleId()))
                .orElse(finding.severity());
    return wanted == finding.severity() ? finding : finding.withSeverity(wanted);
  }

  private Optional<AcceptedDeviation> accepted(String rule) {
    return accepted.stream().filter(deviation -> deviation.ruleId().equals(rule)).findFirst();
  }

  /** Every rule that the profile made laxer, and what was accepted of these findings. */
  public List<RelaxedRule> relaxed(List<Finding> findings) {
    Stream<RelaxedRule> always = agency.map(AgencyProfile::relaxed).orElse(List.of()).stream();
    Stream<RelaxedRule> here =
        findings.stream()
            .map(Finding::ruleId)
            .distinct()
            .flatMap(rule -> accepted(rule).stream())
            .map(deviation -> listed(deviation, findings));
    return Stream.concat(always, here).toList();
  }

  private static RelaxedRule listed(AcceptedDeviation deviation, List<Finding> findings) {
    List<Finding> met =
        findings.stream().filter(f -> f.ruleId().equals(deviation.ruleId())).toList();
    return new RelaxedRule(
        deviation.ruleId(), met.get(0).rule().severity().name(), deviation.inWords());
  }
}
