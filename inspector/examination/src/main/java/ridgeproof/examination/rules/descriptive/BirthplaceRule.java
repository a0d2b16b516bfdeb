package ridgeproof.examination.rules.descriptive;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.layout.CodeTable;

/** Places of birth are states where there are states, and citizenships are countries. */
final class BirthplaceRule implements Rule {

  private static final String BIRTHPLACE = "2.020";
  private static final String CITIZENSHIP = "2.021";
  private static final String UNITED_STATES = "US";
  private static final Set<String> PARTS_OF_COUNTRIES = Set.of("state", "province");

  @Override
  public Set<String> ids() {
    return Set.of("RP-PTL-010", "RP-PTL-011", "RP-PTL-012", "RP-PTL-013");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    DescriptiveText.of(examinee).ifPresent(found -> check(found, examinee.tables(), log));
  }

  private static void check(DescriptiveText particulars, SpecTables tables, FindingLog log) {
    CodeTable places = tables.codes("birthplaces");
    List<DescriptiveText.Entry> citizenships = particulars.conforming(CITIZENSHIP);
    boolean american =
        citizenships.isEmpty()
            || citizenships.stream().anyMatch(entry -> entry.text().equals(UNITED_STATES));
    for (DescriptiveText.Entry entry : particulars.conforming(BIRTHPLACE)) {
      Optional<Code> mistaken = american ? postal(entry.text(), tables) : Optional.empty();
      if (entry.text().equals(UNITED_STATES)) {
        log.add("RP-PTL-010", entry.location(), entry.observed(), "the code of the state");
      } else if (mistaken.isPresent()) {
        reportPostal(entry, mistaken.get(), tables, log);
      } else if (places.find(entry.text()).isEmpty()) {
        log.add("RP-PTL-011", entry.location(), entry.observed(), "a code from the domain's list");
      }
    }
    for (DescriptiveText.Entry entry : citizenships) {
      Optional<Code> place = places.find(entry.text());
      if (place.isEmpty()) {
        log.add("RP-PTL-011", entry.location(), entry.observed(), "a code from the domain's list");
      } else if (PARTS_OF_COUNTRIES.contains(place.get().property("kind"))) {
        log.add(
            "RP-PTL-013",
            entry.location(),
            entry.observed("\"" + entry.text() + "\", " + place.get().name()),
            "the code of a country");
      }
    }
  }

  /** The state whose postal abbreviation this is, where the list has another code for it. */
  private static Optional<Code> postal(String text, SpecTables tables) {
    return exceptions(tables).stream()
        .filter(state -> state.property("postal").equalsIgnoreCase(text))
        .findFirst();
  }

  private static List<Code> exceptions(SpecTables tables) {
    return tables.codes("us-states").codes().stream()
        .filter(state -> !state.property("postal").isEmpty())
        .filter(state -> !state.property("postal").equals(state.code()))
        .toList();
  }

  /** What is required names every exception, since naming the one would tell the birthplace. */
  private static void reportPostal(
      DescriptiveText.Entry entry, Code state, SpecTables tables, FindingLog log) {
    String meant = tables.codes("birthplaces").find(entry.text()).map(Code::name).orElse("unused");
    log.add(
        "RP-PTL-012",
        entry.location(),
        entry.observed(
            String.format(
                Locale.ROOT,
                "\"%s\", %s in postal addresses, %s here",
                entry.text(),
                state.name(),
                meant)),
        "in the domain's list, "
            + exceptions(tables).stream()
                .map(code -> code.code() + " is " + code.name())
                .collect(Collectors.joining(", ")));
  }
}
