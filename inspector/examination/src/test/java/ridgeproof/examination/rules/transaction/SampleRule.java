package ridgeproof.examination.rules.transaction;

import java.util.List;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.rule.Severity;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Source.Knowledge;

/** A sample: an office that wants no more than ten images in a file. */
final class SampleRule implements Rule {

  private static final int MAX_IMAGES = 10;

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-990");
  }

  @Override
  public List<RuleRow> rows() {
    return List.of(
        new RuleRow(
            "RP-TXN-990",
            Severity.ADVICE,
            "More images than the office wants",
            "The office prints ten images on a page.",
            "Export only the ten rolled prints.",
            new Source("DESIGN", "", Knowledge.COMMON_PRACTICE)));
  }

  @Override
  public void check(ExaminationInput input, FindingLog log) {
    int images = input.images().size();
    if (images > MAX_IMAGES) {
      log.add(
          "RP-TXN-990", Location.file(), Observed.of(images + " images"), "at most " + MAX_IMAGES);
    }
  }
}
