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
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.examination.facts.ImageOpener;
import ridgeproof.examination.facts.ImageRecords;
import ridgeproof.examination.facts.RidgeAnalyzer;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.examination.rules.ridges.MatchLimits;
import ridgeproof.examination.submission.AppliedProfile;
import ridgeproof.examination.xml.FormFindings;
import ridgeproof.examination.xml.PlacedFindings;
import ridgeproof.examination.xml.SchemaCheck;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.ridges.matching.SequenceLimits;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;

/**
 * Examines transactions: reads, runs the rules, establishes causes, and comes to a verdict. Safe to
 * share between threads.
 */
public final class Examiner {

  private final SpecTables tables;
  private final ParseLimits limits;
  private final Optional<SchemaCheck> schemas;

  public Examiner(SpecTables tables, ParseLimits limits) {
    this(tables, limits, Optional.empty());
  }

  /**
   * @param schemas what transactions in XML are checked against too
   */
  public Examiner(SpecTables tables, ParseLimits limits, Optional<SchemaCheck> schemas) {
    this.tables = tables.withRules(RuleSet.rows());
    this.limits = limits;
    this.schemas = schemas;
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
    Optional<SequenceComparison> sequence = sequence(images, options);
    AppliedProfile heldTo = AppliedProfile.of(options, transaction, images, tables);
    ExaminationInput examinee = examinee(transaction, images, sequence, heldTo, options);
    Judgement judgement = judgement(transaction, options);
    Attribution attribution = attribute(examinee, found(examinee, judgement), judgement);
    CaptureRemedies remedies = new CaptureRemedies(images, tables);
    List<Finding> every = inOrder(attribution.every().stream().map(remedies::suited).toList());
    List<Finding> findings =
        Repetitions.gathered(inOrder(attribution.shown().stream().map(remedies::suited).toList()));
    if (transaction.isXml()) {
      PlacedFindings places = new PlacedFindings(transaction, tables, every);
      every = places.of(every);
      findings = places.of(findings);
    }
    return new FindingsReport(
        transaction,
        tables,
        options.depth(),
        options.today(),
        images,
        heldTo.profile(),
        heldTo.named(),
        judgement.relaxed(attribution.every()),
        findings,
        every,
        RecommendedAction.of(findings, images, tables),
        sequence,
        Verdict.of(transaction, findings));
  }

  private ExaminationInput examinee(
      Transaction transaction,
      List<ExaminedImage> images,
      Optional<SequenceComparison> sequence,
      AppliedProfile heldTo,
      ExaminationOptions options) {
    return new ExaminationInput(
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
  private List<Finding> found(ExaminationInput examinee, Judgement judgement) {
    List<Finding> found = new ArrayList<>(examinee.transaction().findings());
    if (!examinee.transaction().records().isEmpty()) {
      FindingLog log = new FindingLog(tables, limits.maxFindings());
      RuleSet.standard().forEach(rule -> rule.check(examinee, log));
      found.addAll(log.findings());
    }
    if (examinee.transaction().isXml()) {
      FindingLog log = new FindingLog(tables, limits.maxFindings());
      schemas.ifPresent(check -> check.check(examinee.transaction(), log));
      found.addAll(log.findings());
      found = new ArrayList<>(FormFindings.withoutDoubles(found));
    }
    found.replaceAll(judgement::of);
    return found;
  }

  private Attribution attribute(
      ExaminationInput examinee, List<Finding> found, Judgement judgement) {
    ExaminationOptions options = examinee.options();
    CauseLog log = CauseSet.establish(examinee, found, bytes -> structure(bytes, options));
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
    AppliedProfile heldTo = AppliedProfile.of(options, transaction, images, tables);
    ExaminationOptions shallow = options.withDepth(Depth.STRUCTURE);
    ExaminationInput examinee = examinee(transaction, images, Optional.empty(), heldTo, shallow);
    return new Reading(transaction, found(examinee, judgement(transaction, shallow)));
  }

  /** By record, those of the file as a whole first, and the worst first. */
  static List<Finding> inOrder(List<Finding> findings) {
    return findings.stream()
        .sorted(
            Comparator.comparingInt((Finding finding) -> finding.location().record().orElse(0))
                .thenComparing(Finding::severity))
        .toList();
  }

  /** Compares the prints, where they were measured. */
  private Optional<SequenceComparison> sequence(
      List<ExaminedImage> images, ExaminationOptions options) {
    return options.depth() == Depth.RIDGES
        ? SequenceComparison.of(
            images, new ImageExtraction(tables, options.imageLimits()), sequenceLimits(options))
        : Optional.empty();
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

  private Optional<RidgeAnalyzer> sight(Transaction transaction, ExaminationOptions options) {
    return options.depth() == Depth.RIDGES
        ? Optional.of(new RidgeAnalyzer(transaction, tables))
        : Optional.empty();
  }

  private Judgement judgement(Transaction transaction, ExaminationOptions options) {
    return Judgement.of(options.agency(), options.today(), transaction, tables);
  }
}
