package ridgeproof.calibration.fault;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import ridgeproof.corpus.fault.Fault;
import ridgeproof.corpus.fault.FaultComposer;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/**
 * Examines faulty files as a user's are, on one day.
 *
 * <p><b>New</b> is a finding that the clean file does not have: the same rule, field, finger and
 * value. <b>First</b> is the finding that the first of the recommended actions begins with, leaving
 * out those that are not new; within an action the worst comes first. Notes count for nothing: no
 * user has to act on them. Nor does the same rule on a further finger of the same image: it is one
 * capture.
 */
public final class FaultTrial {

  /** After every date of the clean files, and fixed, so that the document does not age. */
  private static final LocalDate DAY = LocalDate.of(2026, 12, 1);

  private static final int MAX_OTHERS = 2;

  private final Examiner examiner = new Examiner(SpecTables.open(), ParseLimits.standard());
  private final FaultComposer composer;
  private final ExaminationOptions options;
  private final Map<String, List<String>> clean = new ConcurrentHashMap<>();

  public FaultTrial(Depth depth) {
    this(depth, new FaultComposer());
  }

  /**
   * @param composer makes the files, clean and faulty
   */
  public FaultTrial(Depth depth, FaultComposer composer) {
    this.composer = composer;
    options = ExaminationOptions.standard().withDepth(depth).withToday(DAY);
  }

  /** How these faults fare, on all cores, in their order. */
  public List<FaultResult> run(Collection<Fault> faults) {
    faults.stream().map(Fault::base).distinct().forEach(this::cleanKeys);
    return faults.parallelStream().map(this::run).toList();
  }

  /** What an examination reports above a note in a clean file. */
  public List<Finding> accusations(String base) {
    return accusations(composer.clean(base));
  }

  /** What an examination reports above a note. */
  public List<Finding> accusations(byte[] file) {
    return aboveNotes(examine(file).findings());
  }

  private FaultResult run(Fault fault) {
    FindingsReport report = examine(composer.compose(fault));
    List<String> known = new ArrayList<>(cleanKeys(fault.base()));
    List<Finding> fresh =
        aboveNotes(report.findings()).stream().filter(f -> !known.remove(key(f))).toList();
    List<NewFinding> found =
        report.actions().stream()
            .flatMap(
                action ->
                    action.findings().stream().sorted(Comparator.comparing(Finding::severity)))
            .filter(fresh::contains)
            .map(finding -> NewFinding.of(finding, report.imagesByRecord()))
            .collect(Collectors.toList());
    Optional<NewFinding> first = found.stream().findFirst();
    int others = Math.max(0, distinct(found) - 1);
    return new FaultResult(
        fault, outcome(fault, first, others), report.verdict(), first, others, found);
  }

  private static int distinct(List<NewFinding> found) {
    int count = 0;
    for (int i = 0; i < found.size(); i++) {
      NewFinding one = found.get(i);
      count += found.subList(0, i).stream().anyMatch(one::repeats) ? 0 : 1;
    }
    return count;
  }

  private static FaultOutcome outcome(Fault fault, Optional<NewFinding> first, int others) {
    if (first.isEmpty()) {
      return FaultOutcome.MISSED;
    }
    NewFinding finding = first.get();
    boolean placed = fault.places().isEmpty() || fault.places().stream().anyMatch(finding::liesIn);
    if (!fault.rules().contains(finding.rule()) || !placed) {
      return FaultOutcome.MISATTRIBUTED;
    }
    return others > Math.max(MAX_OTHERS, fault.others())
        ? FaultOutcome.FLOODED
        : FaultOutcome.NAMED;
  }

  private FindingsReport examine(byte[] file) {
    return examiner.examine(ByteSource.of(file), options);
  }

  private List<String> cleanKeys(String base) {
    return clean.computeIfAbsent(
        base, name -> accusations(name).stream().map(FaultTrial::key).toList());
  }

  private static List<Finding> aboveNotes(List<Finding> findings) {
    return findings.stream().filter(f -> f.severity() != Severity.NOTE).toList();
  }

  private static String key(Finding finding) {
    return finding.ruleId()
        + finding.location().field()
        + finding.location().position()
        + finding.observed().text();
  }
}
