package ridgeproof.report.summary;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.Depth;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.report.PilotCard;
import ridgeproof.report.Reports;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.rule.Severity;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Source.Knowledge;

/** A report on a card with findings in words of their own. */
final class MadeReport {

  private static final Source SOURCE = new Source("TRADE", "", Knowledge.COMMON_PRACTICE);

  private MadeReport() {}

  static FindingsReport of(Verdict verdict, PilotCard card, Finding... findings) {
    FindingsReport base = Reports.examine(card.bytes(), Depth.STRUCTURE);
    return with(base, base.profile(), verdict, findings);
  }

  static FindingsReport of(Verdict verdict, Finding... findings) {
    return of(verdict, PilotCard.ascii(), findings);
  }

  static FindingsReport with(
      FindingsReport base,
      Optional<SubmissionProfile> profile,
      Verdict verdict,
      Finding... findings) {
    return new FindingsReport(
        base.transaction(),
        base.tables(),
        base.depth(),
        base.asOf(),
        base.images(),
        profile,
        base.profileNamed(),
        base.relaxed(),
        List.of(findings),
        List.of(findings),
        List.of(),
        base.sequence(),
        verdict);
  }

  static Finding finding(String rule, Severity severity) {
    return finding(rule, severity, Location.file(), "What to do about " + rule + ".");
  }

  static Finding finding(String rule, Severity severity, Location place, String remedy) {
    return new Finding(
        new RuleRow(rule, severity, "Title of " + rule, "", remedy, SOURCE),
        severity,
        place,
        Observed.of("something"),
        "something else",
        "",
        remedy,
        SOURCE,
        List.of());
  }

  static Tally tally(FindingsReport... reports) {
    Tally tally = new Tally();
    Stream.of(reports).forEach(tally::add);
    return tally;
  }
}
