package ridgeproof.report.summary;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import ridgeproof.report.summary.SummaryPage.Filter;
import ridgeproof.report.summary.SummaryPage.Option;
import ridgeproof.spec.rule.Severity;

/**
 * What the files of a summary can be picked by. A row has a class for each thing that is true of
 * it, and the style sheet hides the rows without the class that was chosen: no script is needed.
 */
final class SummaryFilters {

  private static final String ANY = "any";

  private SummaryFilters() {}

  static List<Filter> of(
      List<Tally.RuleCount> rules, List<String> stations, Trend trend, boolean severities) {
    List<Filter> filters = new ArrayList<>();
    if (severities) {
      filters.add(
          new Filter(
              "by-severity",
              "Worst finding",
              options(
                  IntStream.range(0, Severity.values().length)
                      .mapToObj(i -> Severity.values()[i].name())
                      .map(name -> new Option("w-" + name, name))
                      .toList())));
    }
    if (!rules.isEmpty()) {
      filters.add(
          new Filter(
              "by-rule",
              "Rule",
              options(
                  rules.stream()
                      .map(r -> new Option(r.rule().id(), r.rule().id() + " " + r.rule().title()))
                      .toList())));
    }
    if (stations.size() > 1) {
      filters.add(
          new Filter(
              "by-station-name",
              "Station",
              options(
                  IntStream.range(0, stations.size())
                      .mapToObj(i -> new Option("s" + i, stations.get(i)))
                      .toList())));
    }
    if (trend.hasSeveralBars()) {
      filters.add(
          new Filter(
              "by-date",
              "Captured, " + trend.step() + " of",
              options(
                  trend.bars().stream().map(bar -> new Option(bar.key(), bar.label())).toList())));
    }
    return List.copyOf(filters);
  }

  private static List<Option> options(List<Option> some) {
    List<Option> options = new ArrayList<>();
    options.add(new Option(ANY, ANY));
    options.addAll(some);
    return List.copyOf(options);
  }

  /** Values are ids of rules and names of our own, which mean nothing else in a style sheet. */
  static String style(List<Filter> filters) {
    return filters.stream()
        .flatMap(
            filter ->
                filter.options().stream()
                    .filter(option -> !option.value().equals(ANY))
                    .map(
                        option ->
                            "#files:has(#"
                                + filter.id()
                                + " option[value=\""
                                + option.value()
                                + "\"]:checked) tbody tr:not(."
                                + option.value()
                                + ") { display: none; }\n"))
        .collect(Collectors.joining());
  }
}
