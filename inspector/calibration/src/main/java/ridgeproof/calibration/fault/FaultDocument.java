package ridgeproof.calibration.fault;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import ridgeproof.corpus.fault.FaultArea;
import ridgeproof.finding.Finding;

/** The document of the fault catalogue, without dates, so that the same code writes the same. */
final class FaultDocument {

  private static final int NAMED_OTHERS = 3;

  private final List<FaultResult> results;
  private final StringBuilder text = new StringBuilder();

  FaultDocument(List<FaultResult> results) {
    this.results = results;
  }

  /**
   * The whole text.
   *
   * @param command that makes it
   * @param clean what is reported of each clean file
   * @param reference what is reported of each reference file; empty without them
   */
  String write(
      String command, Map<String, List<Finding>> clean, Map<String, List<Finding>> reference) {
    line("# The fault catalogue");
    line("");
    line(
        "%d files with one fault each, made from %d clean ones (`corpus/src/main/resources/ridgeproof/corpus/fault/faults.csv`,",
        results.size(), clean.size());
    line("`corpus/generate faults --output DIR`), examined by");
    line("");
    line("    %s", command);
    line("");
    line(
        "- **New** is a finding that the clean file does not have. Notes are left out: nobody has to act on them.");
    line("- **First** is the finding that the first recommended action begins with.");
    line(
        "- **Named first**: it is the rule that the catalogue asks for, at the finger or field that it asks for, with at most two other new findings (or as many as its row allows). The same rule on a further finger of the same image is no other finding.");
    line(
        "- **Flooded**: named, among more. **Misattributed**: another fault, finger or field comes first. **Missed**: nothing is new.");
    line("");
    areas();
    notNamed();
    accusations("Clean files", clean);
    if (!reference.isEmpty()) {
      accusations("Public reference files", reference);
    }
    everyFault();
    return text.toString();
  }

  private void areas() {
    line(
        "| area | files | named first | flooded | misattributed | missed | unknowable | median of others |");
    line("|---|---:|---:|---:|---:|---:|---:|---:|");
    for (FaultArea area : FaultArea.values()) {
      row(area.name().toLowerCase(Locale.ROOT), result -> result.fault().area() == area);
    }
    row("**all**", result -> true);
    line("");
    line(
        "Missed ones that nobody can know from the file alone are counted as unknowable, not as missed.");
    line("");
  }

  private void row(String name, Predicate<FaultResult> which) {
    List<FaultResult> these = results.stream().filter(which).toList();
    long unknowable = these.stream().filter(FaultDocument::isUnknowable).count();
    line(
        "| %s | %d | %d (%.1f %%) | %d | %d | %d | %d | %d |",
        name,
        these.size(),
        count(these, FaultOutcome.NAMED),
        100.0 * count(these, FaultOutcome.NAMED) / Math.max(1, these.size() - unknowable),
        count(these, FaultOutcome.FLOODED),
        count(these, FaultOutcome.MISATTRIBUTED),
        count(these, FaultOutcome.MISSED) - unknowable,
        unknowable,
        median(these));
  }

  private static boolean isUnknowable(FaultResult result) {
    return result.outcome() == FaultOutcome.MISSED && result.fault().isUnknowable();
  }

  private static long count(List<FaultResult> results, FaultOutcome outcome) {
    return results.stream().filter(result -> result.outcome() == outcome).count();
  }

  private static int median(List<FaultResult> results) {
    List<Integer> others = results.stream().map(FaultResult::others).sorted().toList();
    return others.isEmpty() ? 0 : others.get(others.size() / 2);
  }

  private void notNamed() {
    line("## What is not named first");
    line("");
    for (FaultOutcome outcome : FaultOutcome.values()) {
      if (outcome != FaultOutcome.NAMED && count(results, outcome) > 0) {
        line("### %s", outcome.words());
        line("");
        line("| id | base | fault | asked for | first | others | why |");
        line("|---|---|---|---|---|---|---|");
        results.stream().filter(r -> r.outcome() == outcome).forEach(this::notNamed);
        line("");
      }
    }
  }

  private void notNamed(FaultResult result) {
    line(
        "| %s | %s | %s | %s | %s | %s | %s |",
        result.fault().id(),
        result.fault().base(),
        result.fault().fault(),
        asked(result),
        result.first().map(NewFinding::toString).orElse(""),
        others(result),
        result.fault().open());
  }

  /** How many, and the first few of them. */
  private static String others(FaultResult result) {
    return result.others()
        + result.found().stream()
            .skip(1)
            .limit(NAMED_OTHERS)
            .map(NewFinding::toString)
            .collect(Collectors.joining("; ", result.others() > 0 ? ": " : "", ""));
  }

  private static String asked(FaultResult result) {
    String places =
        result.fault().places().stream().map(Object::toString).collect(Collectors.joining(", "));
    return String.join(", ", result.fault().rules()) + (places.isEmpty() ? "" : "; " + places);
  }

  private void accusations(String title, Map<String, List<Finding>> files) {
    line("## %s", title);
    line("");
    line("| file | findings above a note | rules |");
    line("|---|---:|---|");
    new TreeMap<>(files)
        .forEach(
            (name, findings) ->
                line(
                    "| %s | %d | %s |",
                    name,
                    findings.size(),
                    findings.stream()
                        .map(Finding::ruleId)
                        .distinct()
                        .sorted()
                        .collect(Collectors.joining(", "))));
    line("");
  }

  private void everyFault() {
    line("## Every fault");
    line("");
    line("| id | base | fault | first finding | outcome | others | verdict |");
    line("|---|---|---|---|---|---:|---|");
    for (FaultResult result : results) {
      line(
          "| %s | %s | %s | %s | %s | %d | %s |",
          result.fault().id(),
          result.fault().base(),
          result.fault().fault(),
          result.first().map(NewFinding::toString).orElse(""),
          result.outcome().words(),
          result.others(),
          result.verdict());
    }
  }

  private void line(String format, Object... arguments) {
    text.append(arguments.length == 0 ? format : String.format(Locale.ROOT, format, arguments))
        .append('\n');
  }
}
