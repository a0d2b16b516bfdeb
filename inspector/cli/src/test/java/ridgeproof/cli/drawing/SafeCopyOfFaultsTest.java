package ridgeproof.cli.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ridgeproof.corpus.fault.Fault;
import ridgeproof.corpus.fault.FaultCatalogue;
import ridgeproof.corpus.fault.FaultComposer;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.safecopy.Deidentifier;
import ridgeproof.examination.safecopy.FindingChange;
import ridgeproof.examination.safecopy.SafeCopy;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/** What is wrong with the prints of a file can be seen in its safe copy, at the same finger. */
@Tag("slow")
class SafeCopyOfFaultsTest {

  private static final ExaminationOptions OPTIONS =
      ExaminationOptions.standard().withDepth(Depth.RIDGES).withToday(LocalDate.of(2026, 12, 1));
  private static final Examiner EXAMINER = new Examiner(SpecTables.open(), ParseLimits.standard());
  private static final FaultComposer COMPOSER = new FaultComposer();

  /**
   * One of each kind of fault that prints have; {@code -Dridgeproof.safe-copies=more} takes more of
   * them, and two minutes.
   */
  static List<Fault> faults() {
    List<String> ids = new ArrayList<>(List.of("I050", "I067", "Q003", "R008"));
    if (System.getProperty("ridgeproof.safe-copies", "").equals("more")) {
      ids.addAll(
          List.of(
              "I021", "I036", "I039", "I040", "I042", "I053", "I058", "I059", "I064", "I068",
              "I070", "I074", "I076", "I077", "I078", "Q006", "Q010", "Q011", "Q016", "R014",
              "R026"));
    }
    return FaultCatalogue.faults().stream().filter(fault -> ids.contains(fault.id())).toList();
  }

  private static String first(FindingsReport report) {
    Optional<Finding> first =
        report.actions().stream()
            .flatMap(
                action ->
                    action.findings().stream().sorted(Comparator.comparing(Finding::severity)))
            .filter(finding -> finding.severity() != Severity.NOTE)
            .findFirst();
    return first
        .map(
            finding ->
                finding.ruleId()
                    + " "
                    + finding.location().record()
                    + finding.location().position()
                    + finding.location().field())
        .orElse("");
  }

  @ParameterizedTest
  @MethodSource("faults")
  void theFirstFindingIsTheSameAndNoneIsAddedForWhichABureauWouldRejectTheFile(Fault fault) {
    FindingsReport original = EXAMINER.examine(ByteSource.of(COMPOSER.compose(fault)), OPTIONS);
    SafeCopy copy = new Deidentifier(EXAMINER, OPTIONS, new SyntheticPrints()).of(original);
    String name = fault.id() + " " + fault.fault();
    assertEquals(first(original), first(EXAMINER.examine(copy.bytes(), OPTIONS)), name);
    assertEquals(
        List.of(),
        copy.gained().stream()
            .map(FindingChange::finding)
            .filter(finding -> finding.severity() == Severity.BLOCKING)
            .toList(),
        name);
  }
}
