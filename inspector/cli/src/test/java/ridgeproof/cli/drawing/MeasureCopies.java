package ridgeproof.cli.drawing;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ridgeproof.corpus.fault.Fault;
import ridgeproof.corpus.fault.FaultCatalogue;
import ridgeproof.corpus.fault.FaultComposer;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.safecopy.Deidentifier;
import ridgeproof.examination.safecopy.SafeCopy;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

class MeasureCopies {
  @Test
  void measure() throws Exception {
    Examiner examiner = new Examiner(SpecTables.open(), ParseLimits.standard());
    FaultComposer composer = new FaultComposer();
    ExaminationOptions options =
        ExaminationOptions.standard().withDepth(Depth.RIDGES).withToday(LocalDate.of(2026, 12, 1));
    String only = System.getProperty("faults.only", "[IRQG].*");
    List<Fault> faults =
        FaultCatalogue.faults().stream().filter(f -> f.id().matches(only)).toList();
    Path out = Path.of(System.getProperty("faults.out", "/tmp/lead/r17/measure.txt"));
    try (PrintWriter w = new PrintWriter(Files.newBufferedWriter(out), true)) {
      faults.parallelStream()
          .forEach(
              fault -> {
                try {
                  byte[] bytes = composer.compose(fault);
                  FindingsReport report = examiner.examine(ByteSource.of(bytes), options);
                  SafeCopy copy =
                      new Deidentifier(examiner, options, new SyntheticPrints()).of(report);
                  FindingsReport again = examiner.examine(copy.bytes(), options);
                  String a = first(report), b = first(again);
                  String gained =
                      copy.gained().stream()
                          .filter(c -> c.finding().severity() == Severity.BLOCKING)
                          .map(c -> text(c.finding()))
                          .distinct()
                          .collect(Collectors.joining(", "));
                  String likely =
                      copy.gained().stream()
                          .filter(c -> c.finding().severity() == Severity.LIKELY)
                          .map(c -> text(c.finding()))
                          .distinct()
                          .collect(Collectors.joining(", "));
                  String lost =
                      copy.lost().stream()
                          .filter(c -> c.finding().severity().compareTo(Severity.NOTE) < 0)
                          .map(c -> text(c.finding()))
                          .distinct()
                          .limit(6)
                          .collect(Collectors.joining(", "));
                  synchronized (w) {
                    w.printf(
                        "%s %s|%s|%s|first %s|copy %s|BLOCKING %s|LIKELY %s|lost %s%n",
                        a.equals(b) && gained.isEmpty() ? "ok  " : a.equals(b) ? "GAIN" : "DIFF",
                        fault.id(),
                        fault.base(),
                        fault.fault(),
                        a,
                        b,
                        gained,
                        likely,
                        lost);
                  }
                } catch (RuntimeException e) {
                  synchronized (w) {
                    w.printf("EXC  %s %s%n", fault.id(), e);
                    e.printStackTrace(w);
                  }
                }
              });
    }
  }

  static String first(FindingsReport report) {
    Optional<Finding> f =
        report.actions().stream()
            .flatMap(a -> a.findings().stream().sorted(Comparator.comparing(Finding::severity)))
            .filter(x -> x.severity() != Severity.NOTE)
            .findFirst();
    return f.map(MeasureCopies::text).orElse("none");
  }

  static String text(Finding f) {
    return f.ruleId()
        + f.location().record().stream().mapToObj(r -> " r" + r).findFirst().orElse("")
        + f.location().position().stream().mapToObj(r -> " p" + r).findFirst().orElse("")
        + f.location().field().map(x -> " " + x).orElse("");
  }
}
