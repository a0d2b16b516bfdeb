package ridgeproof.spec.agency;

import java.util.List;
import java.util.Map;
import ridgeproof.spec.SubmissionProfile.NeededPrint;
import ridgeproof.spec.rule.Severity;
import ridgeproof.spec.table.Source;

/**
 * What one receiving agency asks for beyond the published documents.
 *
 * @param hasBase whether a submission is named whose prints are needed; else the file implies it
 * @param prints those of the base and the agency's own
 * @param severities what the agency makes of a rule, by the id of the rule
 * @param accepted deviations that the agency takes for a while
 * @param relaxed every rule that is laxer than published, by its severity or its limit
 */
public record AgencyProfile(
    String name,
    String title,
    boolean hasBase,
    List<NeededPrint> prints,
    List<AgencyField> fields,
    Map<String, Severity> severities,
    AgencyLimits limits,
    List<AcceptedDeviation> accepted,
    List<RelaxedRule> relaxed) {

  /** The document that findings of a profile cite. */
  public static final String DOCUMENT = "PROFILE";

  public AgencyProfile {
    prints = List.copyOf(prints);
    fields = List.copyOf(fields);
    severities = Map.copyOf(severities);
    accepted = List.copyOf(accepted);
    relaxed = List.copyOf(relaxed);
  }

  /** The profile as the source of a requirement. */
  public Source source() {
    return source("");
  }

  /** The profile, and where the agency has written the requirement. */
  public Source source(String place) {
    return new Source(
        DOCUMENT, place.isEmpty() ? name : name + ", " + place, Source.Knowledge.PUBLISHED);
  }
}
