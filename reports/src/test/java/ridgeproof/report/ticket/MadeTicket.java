package ridgeproof.report.ticket;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RecommendedAction;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.examination.safecopy.FindingChange;
import ridgeproof.examination.safecopy.FindingChange.Reason;
import ridgeproof.examination.safecopy.SafeCopy;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.report.FileFacts;
import ridgeproof.report.PilotCard;
import ridgeproof.report.Renderings;
import ridgeproof.report.Reports;
import ridgeproof.report.ticket.Ticket.Line;
import ridgeproof.report.ticket.Ticket.Section;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.spec.agency.RelaxedRule;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.rule.Severity;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Source.Knowledge;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;

/** Reports with findings in words of their own, and tickets about them. */
final class MadeTicket {

  static final FileFacts FILE = new FileFacts("specimen-ada.an2", 12345, "a".repeat(64));

  private static final Source SOURCE = new Source("ITL2015", "Field 1.009", Knowledge.PUBLISHED);

  private MadeTicket() {}

  static PilotCard card() {
    return PilotCard.ascii()
        .header(9, "PILOT-0002")
        .header(10, "PILOT-0001")
        .particular(67, "HARBORLIGHT\u001fTENFOLD 3\u001fSN-SPECIMEN-7");
  }

  static FindingsReport report(Finding... findings) {
    return report(card(), findings);
  }

  /** A report of structure; the two values that a report may have besides are left out. */
  static FindingsReport report(PilotCard card, Finding... findings) {
    return with(
        Reports.examine(card.bytes(), Depth.STRUCTURE),
        List.of(findings),
        Stream.of(findings)
            .filter(finding -> finding.severity() != Severity.NOTE)
            .map(f -> new RecommendedAction(f.remedy(), f.severity(), List.of(f)))
            .toList());
  }

  static FindingsReport with(
      FindingsReport base, List<Finding> findings, List<RecommendedAction> actions) {
    return new FindingsReport(
        base.transaction(),
        base.tables(),
        base.depth(),
        LocalDate.of(2026, 3, 2),
        base.images(),
        Optional.empty(),
        false,
        List.of(),
        findings,
        findings,
        actions,
        Optional.empty(),
        Verdict.HOLD);
  }

  static FindingsReport with(FindingsReport base, Depth depth, List<ExaminedImage> images) {
    return new FindingsReport(
        base.transaction(),
        base.tables(),
        depth,
        base.asOf(),
        images,
        base.profile(),
        base.profileNamed(),
        base.relaxed(),
        base.findings(),
        base.everyFinding(),
        base.actions(),
        base.sequence(),
        base.verdict());
  }

  /** The rules that a profile made laxer, and prints none of which has its like. */
  static FindingsReport with(FindingsReport base, List<RelaxedRule> relaxed) {
    SequenceComparison sequence =
        new SequenceComparison(new SequenceResult(List.of(), List.of(), 1), Map.of(), Map.of());
    return new FindingsReport(
        base.transaction(),
        base.tables(),
        base.depth(),
        base.asOf(),
        base.images(),
        base.profile(),
        base.profileNamed(),
        relaxed,
        base.findings(),
        base.everyFinding(),
        base.actions(),
        Optional.of(sequence),
        base.verdict());
  }

  static Finding finding(String rule, Severity severity, Location place, Observed observed) {
    return finding(rule, severity, place, observed, SOURCE);
  }

  static Finding finding(
      String rule, Severity severity, Location place, Observed observed, Source source) {
    return new Finding(
        new RuleRow(rule, severity, "Title of " + rule, "", "", source),
        severity,
        place,
        observed,
        "what " + rule + " requires",
        "Why " + rule + " matters.",
        "What to do about " + rule + ".",
        source,
        List.of());
  }

  static Finding finding(String rule, Severity severity) {
    return finding(rule, severity, Location.file(), Observed.of("something"));
  }

  static Location record(int ordinal) {
    return Location.inRecord(ordinal, 14).withIdc(OptionalInt.of(ordinal - 2));
  }

  static Location field(int record, int type, int field) {
    return Location.inRecord(record, type).in(new FieldNumber(type, field));
  }

  static FindingChange change(String rule, Location place, Reason reason) {
    return new FindingChange(
        finding(rule, Severity.ADVICE, place, Observed.of("something")), reason);
  }

  static AttachedCopy copy(List<FindingChange> lost, List<FindingChange> gained) {
    return new AttachedCopy(
        new FileFacts("ticket-copy.an2", 12345, "b".repeat(64)),
        new SafeCopy(ByteSource.of(new byte[0]), lost, gained, true));
  }

  /** Everything that a ticket may be asked to say but the control number. */
  static TicketRequest request() {
    return TicketRequest.standard()
        .withTime(Instant.parse("2026-03-02T10:15:00Z"))
        .withCommandLine("ridgeproof ticket FILE --safe-copy")
        .withMessage("E0004 record length")
        .withCopy(copy(List.of(change("RP-IMG-990", record(3), Reason.IMAGE_REPLACED)), List.of()));
  }

  /** A finding of each kind. */
  static FindingsReport whole() {
    Location item = field(2, 2, 67).subfield(1, new ByteRange(400, 9));
    return report(
        finding("RP-STR-004", Severity.BLOCKING, field(3, 14, 1), Observed.of("length 812"))
            .explaining(2),
        finding("RP-TXN-060", Severity.LIKELY, field(1, 1, 9), Observed.of("PILOT-0002")),
        finding("RP-FLD-990", Severity.ADVICE, item, Observed.of("`HARBOR|LIGHT`")),
        finding(
            "RP-RDG-990",
            Severity.NOTE,
            record(4).withPosition(OptionalInt.of(2)),
            Observed.of("23 degrees"),
            new Source("TRADE", "", Knowledge.COMMON_PRACTICE)));
  }

  static Ticket ticket(FindingsReport report, TicketRequest request) {
    return Ticket.of(FILE, report, Renderings.TOOL, request);
  }

  static List<Section> sections(FindingsReport report, TicketRequest request) {
    return new TicketContents(FILE, report, Renderings.TOOL, request).sections();
  }

  static List<Line> section(String title, FindingsReport report, TicketRequest request) {
    return sections(report, request).stream()
        .filter(section -> section.title().equals(title))
        .findFirst()
        .orElseThrow()
        .lines();
  }

  static List<Line> section(String title, FindingsReport report) {
    return section(title, report, TicketRequest.standard());
  }
}
