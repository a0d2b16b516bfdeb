package ridgeproof.examination;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.MissingFingers;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.examination.submission.TransactionKind;
import ridgeproof.finding.CausedBy;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.agency.RelaxedRule;
import ridgeproof.transaction.Transaction;

/**
 * All that an examination found.
 *
 * @param asOf the day that dates were compared with
 * @param images every image record, in the order of the file
 * @param profile what the file was held to
 * @param profileNamed whether the user named it; else the file implied it
 * @param relaxed every rule that the agency's profile made laxer than published
 * @param findings in the order of the file, those of the file as a whole first: causes without
 *     their consequences, and a repeated fault once
 * @param everyFinding each place by itself, in the same order; consequences name their cause
 * @param actions what to do, the most pressing first
 * @param sequence whether rolls and plain prints are of the same fingers; empty where none were
 *     compared
 */
public record FindingsReport(
    Transaction transaction,
    SpecTables tables,
    Depth depth,
    LocalDate asOf,
    List<ExaminedImage> images,
    Optional<SubmissionProfile> profile,
    boolean profileNamed,
    List<RelaxedRule> relaxed,
    List<Finding> findings,
    List<Finding> everyFinding,
    List<RecommendedAction> actions,
    Optional<SequenceComparison> sequence,
    Verdict verdict) {

  /** The report with one more finding, which no examination of a single file can make. */
  FindingsReport plus(Finding finding) {
    List<Finding> more = Examiner.inOrder(plus(findings, finding));
    return new FindingsReport(
        transaction,
        tables,
        depth,
        asOf,
        images,
        profile,
        profileNamed,
        relaxed,
        more,
        Examiner.inOrder(plus(everyFinding, finding)),
        RecommendedAction.of(more, images, tables),
        sequence,
        Verdict.of(transaction, more));
  }

  private static List<Finding> plus(List<Finding> findings, Finding finding) {
    return Stream.concat(findings.stream(), Stream.of(finding)).toList();
  }

  /** Each place by itself, without what is only the consequence of a cause. */
  public List<Finding> unexplained() {
    return everyFinding.stream().filter(finding -> finding.causedBy().isEmpty()).toList();
  }

  /** The findings by ordinal of their record; those of the file as a whole under 0. */
  public Map<Integer, List<Finding>> findingsByRecord() {
    return findings.stream()
        .collect(Collectors.groupingBy(finding -> finding.location().record().orElse(0)));
  }

  /**
   * What makes each record doubtful, by its ordinal: its own findings, and for those that a cause
   * explains the cause, wherever that is reported.
   */
  public Map<Integer, List<Finding>> concernsByRecord() {
    Map<CausedBy, Finding> causes =
        everyFinding.stream()
            .filter(finding -> finding.explains().isPresent())
            .collect(
                Collectors.toMap(
                    finding -> new CausedBy(finding.ruleId(), finding.location()),
                    Function.identity(),
                    (one, other) -> one));
    return everyFinding.stream()
        .collect(
            Collectors.groupingBy(
                finding -> finding.location().record().orElse(0),
                Collectors.mapping(
                    finding -> finding.causedBy().map(causes::get).orElse(finding),
                    Collectors.collectingAndThen(
                        Collectors.toList(), all -> all.stream().distinct().toList()))));
  }

  /** The fingers, by their codes, that the transaction declares amputated or unprintable. */
  public Set<Integer> missingFingers() {
    return Set.copyOf(new MissingFingers(transaction, tables).fingers());
  }

  /**
   * Why completeness was not judged by the type of transaction; empty where it was, or by prints
   * that the user named.
   */
  public Optional<String> completenessGap() {
    boolean byNamedPrints =
        profileNamed && profile.filter(needs -> !needs.prints().isEmpty()).isPresent();
    return byNamedPrints || transaction.records().isEmpty()
        ? Optional.empty()
        : new TransactionKind(transaction, tables).whyUnknown();
  }

  /** The images by ordinal of their record. */
  public Map<Integer, ExaminedImage> imagesByRecord() {
    return images.stream()
        .collect(Collectors.toMap(image -> image.record().ordinal(), Function.identity()));
  }
}
