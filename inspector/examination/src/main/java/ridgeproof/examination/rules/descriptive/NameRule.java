package ridgeproof.examination.rules.descriptive;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;

/** Names are written as bureaus search them: surname, comma, first names, suffix. */
final class NameRule implements Rule {

  private static final String NAME = "2.018";
  private static final String ALIAS = "2.019";
  private static final Pattern EXPECTED =
      Pattern.compile("[A-Za-z'-]+( [A-Za-z'-]+)*, ?[A-Za-z'-]+( [A-Za-z'-]+)*");
  private static final Pattern SUFFIX_WITH_SURNAME =
      Pattern.compile("[^,]+[ .](JR|SR|II|III|IV)\\.?,.*|[^,]+, ?(JR|SR|II|III|IV)\\.?( .*)?");

  @Override
  public Set<String> ids() {
    return Set.of("RP-PTL-041", "RP-PTL-042", "RP-PTL-043");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    DescriptiveText.of(examinee).ifPresent(particulars -> check(particulars, log));
  }

  private static void check(DescriptiveText particulars, FindingLog log) {
    Stream.of(NAME, ALIAS)
        .flatMap(field -> particulars.conforming(field).stream())
        .filter(entry -> entry.text().indexOf(',') > 0)
        .forEach(entry -> checkForm(entry, log));
    Set<String> names =
        particulars.conforming(NAME).stream()
            .map(entry -> spoken(entry.text()))
            .collect(Collectors.toSet());
    particulars.conforming(ALIAS).stream()
        .filter(entry -> names.contains(spoken(entry.text())))
        .forEach(
            entry ->
                log.add(
                    "RP-PTL-043", entry.location(), entry.observed(), "another name, or no alias"));
  }

  private static void checkForm(DescriptiveText.Entry entry, FindingLog log) {
    if (SUFFIX_WITH_SURNAME.matcher(entry.text().toUpperCase(Locale.ROOT)).matches()) {
      log.add("RP-PTL-042", entry.location(), entry.observed(), "the suffix last");
    } else if (!EXPECTED.matcher(entry.text()).matches()) {
      log.add(
          "RP-PTL-041",
          entry.location(),
          entry.observed(),
          "letters, hyphens, one comma, and single spaces");
    }
  }

  private static String spoken(String name) {
    return name.replace(", ", ",").strip().toUpperCase(Locale.ROOT);
  }
}
