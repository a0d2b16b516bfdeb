package ridgeproof.examination;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ridgeproof.examination.accepted.Judgement;
import ridgeproof.examination.cause.Attribution;
import ridgeproof.examination.cause.Cause;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.Repetitions;
import ridgeproof.examination.cause.transport.Reading;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.Examinee;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.examination.facts.ImageOpener;
import ridgeproof.examination.facts.ImageRecords;
import ridgeproof.examination.facts.RidgeSight;
import ridgeproof.examination.facts.SequenceFacts;
import ridgeproof.examination.rules.ridges.MatchLimits;
import ridgeproof.examination.submission.HeldTo;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.ridges.matching.SequenceLimits;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ReadingLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;

/**
 * Examines transactions: reads, runs the rules, establishes causes, and comes to a verdict. Safe to
 * share between threads.
 */
public final class Examiner {

  private final SpecTables tables;
  private final ReadingLimits limits;

  public Examiner(SpecTables tables, ReadingLimits limits) {
    this.tables = tables;
    this.limits = limits;
  }

  /** Every row of the catalogue that the rules and the causes can report. */
  public static Set<String> ruleIds() {
    Set<String> ids = new TreeSet<>(RuleSet.ids());
    ids.addAll(CauseSet.ids());
    return ids;
  }

  public FindingsReport examine(ByteSource source, ExaminationOptions options) {
    Transaction transaction = new TransactionReader(tables, limits).read(source);
    List<ExaminedImage> images = new ImageRecords(transaction, tables).all();
    if (options.depth() != Depth.STRUCTURE) {
      images = new ImageOpener(options, sight(transaction, options)).open(images, source.length());
    }
    Optional<SequenceFacts> sequence =
        SequenceFacts.of(
            images, new ImageExtraction(tables, options.imageLimits()), sequenceLimits(options));
    HeldTo heldTo = HeldTo.of(options, transaction, images, tables);
    Examinee examinee = examinee(transaction, images, sequence, heldTo, options);
    List<Finding> found = found(examinee);
    Attribution attribution = attribute(examinee, found);
    CaptureRemedies remedies = new CaptureRemedies(images, tables);
    List<Finding> findings =
        Repetitions.gathered(inOrder(attribution.shown().stream().map(remedies::suited).toList()));
    return new FindingsReport(
        transaction,
        tables,
        options.depth(),
        options.today(),
        images,
        heldTo.profile(),
        heldTo.named(),
        judgement(transaction, options).relaxed(attribution.every()),
        findings,
        inOrder(attribution.every().stream().map(remedies::suited).toList()),
        RecommendedAction.of(findings, images, tables),
        sequence,
        Verdict.of(transaction, findings));
  }

  private Examinee examinee(
      Transaction transaction,
      List<ExaminedImage> images,
      Optional<SequenceFacts> sequence,
      HeldTo heldTo,
      ExaminationOptions options) {
    return new Examinee(
        transaction,
        tables,
        options.depth(),
        images,
        heldTo.profile().filter(profile -> !profile.prints().isEmpty()),
        heldTo.named(),
        options,
        sequence);
  }

  /** What reading and the rules found, as the agency's profile judges it. */
  private List<Finding> found(Examinee examinee) {
    List<Finding> found = new ArrayList<>(examinee.transaction().findings());
    if (!examinee.transaction().records().isEmpty()) {
      FindingLog log = new FindingLog(tables, limits.maxFindings());
      RuleSet.standard().forEach(rule -> rule.check(examinee, log));
      found.addAll(log.findings());
    }
    found.replaceAll(judgement(examinee.transaction(), examinee.options())::of);
    return found;
  }

  private Attribution attribute(Examinee examinee, List<Finding> found) {
    ExaminationOptions options = examinee.options();
    CauseLog log = CauseSet.establish(examinee, found, bytes -> structure(bytes, options));
    Judgement judgement = judgement(examinee.transaction(), options);
    List<Finding> all = new ArrayList<>(found);
    log.revealed().forEach(finding -> all.add(judgement.of(finding)));
    return Attribution.of(
        all,
        log.causes().stream()
            .map(cause -> new Cause(judgement.of(cause.finding()), cause.consequences()))
            .toList());
  }

  /** What reading other bytes and the rules that open no image find. */
  private Reading structure(ByteSource bytes, ExaminationOptions options) {
    Transaction transaction = new TransactionReader(tables, limits).read(bytes);
    List<ExaminedImage> images = new ImageRecords(transaction, tables).all();
    HeldTo heldTo = HeldTo.of(options, transaction, images, tables);
    ExaminationOptions shallow = options.withDepth(Depth.STRUCTURE);
    return new Reading(
        transaction, found(examinee(transaction, images, Optional.empty(), heldTo, shallow)));
  }

  /** By record, those of the file as a whole first, and the worst first. */
  static List<Finding> inOrder(List<Finding> findings) {
    return findings.stream()
        .sorted(
            Comparator.comparingInt((Finding finding) -> finding.location().record().orElse(0))
                .thenComparing(Finding::severity))
        .toList();
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

  private Judgement judgement(Transaction transaction, ExaminationOptions options) {
    return Judgement.of(options.agency(), options.today(), transaction, tables);
  }
}
