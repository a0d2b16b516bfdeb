package ridgeproof.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.IoErrorMessages;
import ridgeproof.cli.io.OutputFile;
import ridgeproof.cli.io.Progress;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.composition.TransactionComposer;
import ridgeproof.corpus.scenario.DemonstrationSet;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.report.words.Counted;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

@Command(
    name = "demo",
    description = {
      "Generates synthetic sample files with known faults and examines them.",
      "",
      "The people in the files are invented. The files are the same on every machine."
    },
    footer = {
      "",
      "Examples:",
      "  ridgeproof demo",
      "  ridgeproof demo --output samples --story clean-card --story dry-and-wet"
    })
final class DemoCommand implements Callable<Integer> {

  private static final String ROW = "%-47s  %-10s  %s";

  @Option(
      names = "--output",
      paramLabel = "DIR",
      defaultValue = "ridgeproof-demo",
      description = "the folder to write to; it is created if needed (default: ridgeproof-demo)")
  Path folder;

  @Option(
      names = "--story",
      paramLabel = "NAME",
      description = "only this story, such as clean-card; can be repeated")
  List<String> stories = List.of();

  @Option(names = "--overwrite", description = "replace existing files")
  boolean overwrite;

  private final Console console;

  DemoCommand(Console console) {
    this.console = console;
  }

  private record Told(Scenario scenario, FindingsReport report) {}

  @Override
  public Integer call() {
    List<Scenario> scenarios = chosen();
    prepare(scenarios);
    List<Told> told = tellAll(scenarios);
    console.print(String.format(Locale.ROOT, ROW, "STORY", "VERDICT", "MAIN FINDING"));
    told.forEach(this::print);
    console.print("");
    console.print(
        Counted.of(told.size(), "file") + " in " + folder + ". To see one report in full:");
    console.print("  ridgeproof examine " + file(scenarios.get(scenarios.size() - 1)));
    return ExitStatus.OK;
  }

  private List<Scenario> chosen() {
    List<String> names = DemonstrationSet.names();
    for (String story : stories) {
      if (!names.contains(story)) {
        throw CommandFailure.usage(
            "no story " + story + "; available: " + String.join(", ", names));
      }
    }
    return names.stream()
        .filter(name -> stories.isEmpty() || stories.contains(name))
        .map(DemonstrationSet::scenario)
        .toList();
  }

  /** Refuses before the work, not in the middle of it. */
  private void prepare(List<Scenario> scenarios) {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw CommandFailure.inputOutput("cannot create the folder " + IoErrorMessages.of(folder, e));
    }
    for (Scenario scenario : scenarios) {
      if (!overwrite && Files.exists(file(scenario))) {
        throw OutputFile.exists(file(scenario));
      }
    }
  }

  private Path file(Scenario scenario) {
    return folder.resolve(scenario.name() + ".an2");
  }

  private List<Told> tellAll(List<Scenario> scenarios) {
    SpecTables tables = SpecTables.open();
    Examiner examiner = new Examiner(tables, ParseLimits.standard());
    TransactionComposer composer = new TransactionComposer(new SubjectCache());
    ExecutorService pool = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    try (Progress progress = Progress.of(console, "demo", scenarios.size())) {
      List<Future<Told>> futures = new ArrayList<>();
      for (Scenario scenario : scenarios) {
        futures.add(pool.submit(() -> tell(scenario, composer, examiner, tables)));
      }
      List<Told> told = new ArrayList<>();
      for (Future<Told> future : futures) {
        told.add(future.get());
        progress.step();
      }
      return told;
    } catch (ExecutionException e) {
      if (e.getCause() instanceof CommandFailure failure) {
        throw failure;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw CommandFailure.inputOutput("interrupted");
    } finally {
      pool.shutdownNow();
    }
  }

  private Told tell(
      Scenario scenario, TransactionComposer composer, Examiner examiner, SpecTables tables) {
    byte[] bytes = composer.compose(scenario).bytes();
    OutputFile.write(file(scenario), bytes, overwrite, List.of());
    ExaminationOptions options =
        tables
            .profileNamed(scenario.expects().profile())
            .map(ExaminationOptions.standard()::withProfile)
            .orElse(ExaminationOptions.standard());
    return new Told(scenario, examiner.examine(ByteSource.of(bytes), options));
  }

  private void print(Told told) {
    Scenario scenario = told.scenario();
    Optional<Finding> main =
        told.report().findings().stream()
            .filter(finding -> finding.severity() != Severity.NOTE)
            .min(Comparator.comparing(Finding::severity));
    String id = main.map(Finding::ruleId).orElse("");
    String title = main.map(finding -> ": " + finding.rule().title()).orElse("");
    String profile = scenario.expects().profile();
    String held = profile.isEmpty() ? "" : " (--profile " + profile + ")";
    console.print(
        String.format(Locale.ROOT, ROW, scenario.story(), told.report().verdict(), id)
            .stripTrailing());
    console.print("  " + file(scenario).getFileName() + title + held);
  }
}
