package ridgeproof.examination;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.ridges.SequenceLimits;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.agency.AgencyProfile;
import ridgeproof.transaction.ByteSource;
import ridgeproof.transaction.ReadingLimits;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.TransactionReader;

/**
 * Examines transactions: reads, runs the rules, and comes to a verdict. Safe to share between
 * threads.
 */
public final class Examiner {

  private final SpecTables tables;
  private final ReadingLimits limits;

  public Examiner(SpecTables tables, ReadingLimits limits) {
    this.tables = tables;
    this.limits = limits;
  }

  /** Every row of the catalogue that the rules in code and in the layouts can report. */
  public static Set<String> ruleIds() {
    return new TreeSet<>(RuleSet.ids());
  }

  public FindingsReport examine(ByteSource source, ExaminationOptions options) {
    Transaction transaction = new TransactionReader(tables, limits).read(source);
    List<ExaminedImage> images = new ImageRecords(transaction, tables).all();
    if (options.depth() != Depth.STRUCTURE) {
      images = new ImageOpener(options, sight(transaction, options)).open(images);
    }
    Optional<SequenceFacts> sequence =
        SequenceFacts.of(
            images, new ImageExtraction(tables, options.imageLimits()), sequenceLimits(options));
    HeldTo heldTo = HeldTo.of(options, images, tables);
    List<Finding> findings = new ArrayList<>(transaction.findings());
    if (!transaction.records().isEmpty()) {
      Examinee examinee =
          new Examinee(
              transaction,
              tables,
              options.depth(),
              images,
              heldTo.profile().filter(profile -> !profile.prints().isEmpty()),
              heldTo.named(),
              options,
              sequence);
      FindingLog log = new FindingLog(tables, limits.maxFindings());
      RuleSet.standard().forEach(rule -> rule.check(examinee, log));
      findings.addAll(log.findings());
    }
    findings.replaceAll(finding -> judged(finding, options));
    findings.sort(
        Comparator.comparingInt((Finding finding) -> finding.location().record().orElse(0))
            .thenComparing(Finding::severity));
    return new FindingsReport(
        transaction,
        tables,
        options.depth(),
        images,
        heldTo.profile(),
        heldTo.named(),
        options.agency().map(AgencyProfile::relaxed).orElse(List.of()),
        List.copyOf(findings),
        RecommendedAction.of(findings, images, tables),
        sequence,
        Verdict.of(transaction, findings));
  }

  /** The agency's similarity, or the usual one. */
  private SequenceLimits sequenceLimits(ExaminationOptions options) {
    SequenceLimits usual = MatchLimits.usual(tables);
    return options.agency().stream()
        .flatMapToDouble(agency -> agency.limits().fingerMatch().stream())
        .mapToObj(usual::withThreshold)
        .findFirst()
        .orElse(usual);
  }

  private Optional<RidgeSight> sight(Transaction transaction, ExaminationOptions options) {
    return options.depth() == Depth.RIDGES
        ? Optional.of(new RidgeSight(transaction, tables))
        : Optional.empty();
  }

  /** The finding as the agency's profile judges it. */
  private static Finding judged(Finding finding, ExaminationOptions options) {
    return options
        .agency()
        .map(agency -> agency.severities().get(finding.ruleId()))
        .map(finding::withSeverity)
        .orElse(finding);
  }
}
