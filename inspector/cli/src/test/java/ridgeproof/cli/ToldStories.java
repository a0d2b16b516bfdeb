package ridgeproof.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.composition.TransactionComposer;
import ridgeproof.corpus.scenario.DemonstrationSet;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.safecopy.Deidentifier;
import ridgeproof.examination.safecopy.SafeCopy;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/** Every demonstration story, composed, examined and copied once for all tests. */
final class ToldStories {

  static final SpecTables TABLES = SpecTables.open();
  static final Examiner EXAMINER = new Examiner(TABLES, ParseLimits.standard());

  private static final Set<String> OF_RIDGES = Set.of("RDG", "SEQ");

  /** One story. */
  record Told(Scenario scenario, byte[] bytes, FindingsReport report, SafeCopy copy) {

    String name() {
      return scenario.name();
    }

    @Override
    public String toString() {
      return name();
    }
  }

  /** A class of its own: the threads that tell the stories wait for no class that is still made. */
  private static final class Library {
    static final List<Told> ALL = tell();
  }

  private ToldStories() {}

  static List<Told> all() {
    return Library.ALL;
  }

  /**
   * What that file is to be held to, and as deep as its story goes: most of the time goes into
   * ridges, which few stories are about.
   */
  static ExaminationOptions options(Scenario scenario) {
    boolean ridges =
        scenario.expects().findings().stream()
            .anyMatch(rule -> OF_RIDGES.contains(rule.substring(3, 6)));
    ExaminationOptions options =
        ExaminationOptions.standard()
            .withToday(LocalDate.of(2026, 3, 2))
            .withDepth(ridges ? Depth.RIDGES : Depth.IMAGES);
    return TABLES.profiles().stream()
        .filter(profile -> profile.name().equals(scenario.expects().profile()))
        .findFirst()
        .map(options::withProfile)
        .orElse(options);
  }

  private static List<Told> tell() {
    TransactionComposer composer = new TransactionComposer(new SubjectCache());
    Function<Scenario, Told> telling =
        scenario -> {
          byte[] bytes = composer.compose(scenario).bytes();
          ExaminationOptions options = options(scenario);
          FindingsReport report = EXAMINER.examine(ByteSource.of(bytes), options);
          return new Told(scenario, bytes, report, new Deidentifier(EXAMINER, options).of(report));
        };
    return DemonstrationSet.scenarios().parallelStream().map(telling).toList();
  }
}
