package ridgeproof.examination.rules.descriptive;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.spec.descriptive.NumberRule;
import ridgeproof.spec.descriptive.NumberRule.Kind;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.Reference;
import ridgeproof.spec.table.Source;

/** Numbers have the forms in which they are issued, and measures lie in their ranges. */
final class NumberFormRule implements Rule {

  private static final Set<FieldNumber> NAMES =
      Set.of(FieldNumber.parse("2.018"), FieldNumber.parse("2.019"));

  @Override
  public Set<String> ids() {
    return Set.of(
        "RP-PTL-030", "RP-PTL-031", "RP-PTL-032", "RP-PTL-033", "RP-PTL-034", "RP-PTL-040");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    Optional<DescriptiveText> particulars = DescriptiveText.of(examinee);
    if (particulars.isEmpty()) {
      return;
    }
    Map<FieldNumber, List<NumberRule>> byField =
        examinee.tables().particulars().numberRules().stream()
            .collect(
                Collectors.groupingBy(
                    NumberRule::field, LinkedHashMap::new, Collectors.toUnmodifiableList()));
    byField.forEach(
        (field, rules) ->
            particulars
                .get()
                .conforming(new Reference.OfField(field))
                .forEach(entry -> check(entry, field, rules, log)));
  }

  private static void check(
      DescriptiveText.Entry entry, FieldNumber field, List<NumberRule> rules, FindingLog log) {
    if (first(rules, Kind.UNKNOWN, entry).isPresent()) {
      return;
    }
    if (matchesNone(rules, Kind.SHAPE, entry)) {
      report(NAMES.contains(field) ? "RP-PTL-040" : "RP-PTL-030", entry, rules, Kind.SHAPE, log);
      return;
    }
    if (first(rules, Kind.NEVER_ISSUED, entry).isPresent()) {
      report("RP-PTL-032", entry, rules, Kind.NEVER_ISSUED, log);
      return;
    }
    first(rules, Kind.FILLER, entry)
        .ifPresent(rule -> add("RP-PTL-033", entry, "the real value", rule.source(), log));
    if (matchesNone(rules, Kind.FORM, entry)) {
      report("RP-PTL-031", entry, rules, Kind.FORM, log);
    }
    if (matchesNone(rules, Kind.RANGE, entry)) {
      report("RP-PTL-034", entry, rules, Kind.RANGE, log);
    }
  }

  private static Optional<NumberRule> first(
      List<NumberRule> rules, Kind kind, DescriptiveText.Entry entry) {
    return rules.stream()
        .filter(rule -> rule.kind() == kind && rule.matches(entry.text()))
        .findFirst();
  }

  private static boolean matchesNone(
      List<NumberRule> rules, Kind kind, DescriptiveText.Entry entry) {
    return rules.stream().anyMatch(rule -> rule.kind() == kind)
        && first(rules, kind, entry).isEmpty();
  }

  /** Names every rule of the kind, since naming the one that was broken would tell the entry. */
  private static void report(
      String id, DescriptiveText.Entry entry, List<NumberRule> rules, Kind kind, FindingLog log) {
    List<NumberRule> same = rules.stream().filter(rule -> rule.kind() == kind).toList();
    String meanings =
        same.stream()
            .map(rule -> spoken(rule.meaning()))
            .collect(Collectors.joining(kind == Kind.NEVER_ISSUED ? "; " : ", or "));
    add(id, entry, meanings, same.get(0).source(), log);
  }

  private static void add(
      String id, DescriptiveText.Entry entry, String required, Source source, FindingLog log) {
    log.add(id, entry.location(), entry.observed(), required, Optional.of(source), List.of());
  }

  private static String spoken(String meaning) {
    return Character.toLowerCase(meaning.charAt(0)) + meaning.substring(1);
  }
}
