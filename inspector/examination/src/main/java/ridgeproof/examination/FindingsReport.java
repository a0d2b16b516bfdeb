package ridgeproof.examination;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.agency.RelaxedRule;
import ridgeproof.transaction.Transaction;

/**
 * All that an examination found.
 *
 * @param images every image record, in the order of the file
 * @param profile what the file was held to
 * @param profileNamed whether the user named it; else the file implied it
 * @param relaxed every rule that the agency's profile made laxer than published
 * @param findings in the order of the file, those of the file as a whole first
 * @param actions what to do, the most pressing first
 * @param sequence whether rolls and plain prints are of the same fingers; empty where none were
 *     compared
 */
public record FindingsReport(
    Transaction transaction,
    SpecTables tables,
    Depth depth,
    List<ExaminedImage> images,
    Optional<SubmissionProfile> profile,
    boolean profileNamed,
    List<RelaxedRule> relaxed,
    List<Finding> findings,
    List<RecommendedAction> actions,
    Optional<SequenceFacts> sequence,
    Verdict verdict) {

  /** The findings by ordinal of their record; those of the file as a whole under 0. */
  public Map<Integer, List<Finding>> findingsByRecord() {
    return findings.stream()
        .collect(Collectors.groupingBy(finding -> finding.location().record().orElse(0)));
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
