package ridgeproof.corpus.scenario;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ridgeproof.corpus.composition.ComposedTransaction;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/** Examines a composed file and keeps what its story's expectation is about. */
public final class Expected {

  public static final SpecTables TABLES = SpecTables.open();

  private static final Set<String> OF_RIDGES = Set.of("RDG", "SEQ");

  private Expected() {}

  /** The findings above a NOTE of the areas that the story names. */
  public static List<Finding> compared(ComposedTransaction composed) {
    Expectation expects = composed.scenario().expects();
    return examine(composed).findings().stream()
        .filter(f -> f.severity() != Severity.NOTE && expects.covers(f.ruleId()))
        .toList();
  }

  public static List<String> rules(List<Finding> findings) {
    return findings.stream().map(Finding::ruleId).distinct().sorted().toList();
  }

  static String verdict(List<Finding> findings) {
    if (findings.stream().anyMatch(f -> f.severity() == Severity.BLOCKING)) {
      return "HOLD";
    }
    return findings.stream().anyMatch(f -> f.severity() == Severity.LIKELY) ? "REVIEW" : "READY";
  }

  public static FindingsReport examine(ComposedTransaction composed) {
    String profile = composed.scenario().expects().profile();
    Optional<SubmissionProfile> named =
        TABLES.profiles().stream().filter(p -> p.name().equals(profile)).findFirst();
    if (!profile.isEmpty() && named.isEmpty()) {
      throw new AssertionError("no profile " + profile);
    }
    // A story that names areas may leave the ridges out, which take most of the time.
    boolean ridges = composed.scenario().expects().areas().stream().anyMatch(OF_RIDGES::contains);
    ExaminationOptions options =
        ExaminationOptions.standard()
            .withToday(LocalDate.of(2026, 3, 2))
            .withDepth(ridges ? Depth.RIDGES : Depth.IMAGES);
    return new Examiner(TABLES, ParseLimits.standard())
        .examine(ByteSource.of(composed.bytes()), named.map(options::withProfile).orElse(options));
  }
}
