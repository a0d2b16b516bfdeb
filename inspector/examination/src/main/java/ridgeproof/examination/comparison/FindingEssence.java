package ridgeproof.examination.comparison;

import java.util.List;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;

/** What makes a finding the same in both: all but its byte offsets and its record's ordinal. */
record FindingEssence(String rule, String place, String observed, String required) {

  static FindingEssence of(Finding finding) {
    Location at = finding.location();
    return new FindingEssence(
        finding.ruleId(),
        List.of(at.recordType(), at.idc(), at.field(), at.subfield(), at.item(), at.position())
            .toString(),
        finding.observed().text(),
        finding.required());
  }
}
