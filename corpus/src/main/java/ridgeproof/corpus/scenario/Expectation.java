package ridgeproof.corpus.scenario;

import java.util.List;
import java.util.TreeSet;

/**
 * What an examination of the file reports.
 *
 * @param profile the profile the file is held to; empty for what it implies
 * @param areas the areas that are compared; findings of others are left out of account
 * @param verdict what the findings of those areas come to
 * @param findings the rules of those areas that report something above a NOTE, each once
 */
public record Expectation(
    String profile, List<String> areas, String verdict, List<String> findings) {

  /** All areas, for a scenario that does not name its own. */
  public static final List<String> AREAS =
      List.of("STR", "FLD", "COD", "TXN", "IMG", "PTL", "RDG", "SEQ", "XML");

  public Expectation {
    profile = Defaults.orElse(profile, "");
    areas = areas == null ? AREAS : List.copyOf(areas);
    verdict = Defaults.orElse(verdict, "READY");
    findings = List.copyOf(new TreeSet<>(Defaults.list(findings)));
    for (String finding : findings) {
      if (areas.stream().noneMatch(area -> finding.startsWith("RP-" + area + "-"))) {
        throw new IllegalArgumentException(finding + " is of none of the areas " + areas);
      }
    }
  }

  static Expectation nothing() {
    return new Expectation(null, null, null, null);
  }

  /** Whether a rule is of one of the areas. */
  public boolean covers(String rule) {
    return areas.stream().anyMatch(area -> rule.startsWith("RP-" + area + "-"));
  }
}
