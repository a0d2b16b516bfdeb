package ridgeproof.examination.rules.descriptive;

import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.spec.layout.CodeTable;

/** A miscellaneous identification number says by two letters what kind of number it is. */
final class MiscellaneousNumberRule implements Rule {

  private static final String NUMBER = "2.017";
  private static final int KIND_LENGTH = 2;

  @Override
  public Set<String> ids() {
    return Set.of("RP-PTL-037");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    CodeTable kinds = examinee.tables().codes("miscellaneous-numbers");
    DescriptiveText.of(examinee).stream()
        .flatMap(particulars -> particulars.conforming(NUMBER).stream())
        .filter(entry -> entry.text().indexOf('-') == KIND_LENGTH)
        .filter(entry -> kinds.find(entry.text().substring(0, KIND_LENGTH)).isEmpty())
        .forEach(
            entry ->
                log.add(
                    "RP-PTL-037",
                    entry.location(),
                    entry.observed(),
                    "a published kind of number before the hyphen"));
  }
}
