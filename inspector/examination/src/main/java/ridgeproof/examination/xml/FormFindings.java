package ridgeproof.examination.xml;

import java.util.List;
import java.util.Set;
import ridgeproof.finding.Finding;

/** Values whose element asks for another form, where the rules of the field say it better. */
public final class FormFindings {

  private static final String FORM = "RP-XML-007";
  private static final Set<String> AREAS_OF_VALUES = Set.of("FLD", "COD", "TXN", "PTL");

  private FormFindings() {}

  /** Without those of a value that another finding speaks of. */
  public static List<Finding> withoutDoubles(List<Finding> findings) {
    return findings.stream()
        .filter(finding -> !finding.ruleId().equals(FORM) || !isSaidBetter(finding, findings))
        .toList();
  }

  private static boolean isSaidBetter(Finding form, List<Finding> findings) {
    return findings.stream()
        .anyMatch(
            other ->
                AREAS_OF_VALUES.contains(other.rule().area())
                    && other.location().record().equals(form.location().record())
                    && other.location().field().equals(form.location().field()));
  }
}
