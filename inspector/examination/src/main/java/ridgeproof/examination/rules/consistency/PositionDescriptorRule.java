package ridgeproof.examination.rules.consistency;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Observed;
import ridgeproof.spec.consistency.DescriptorField;

/** Descriptors of joints and tips go with the positions that they describe. */
final class PositionDescriptorRule implements Rule {

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-032");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    for (DescriptorField layout : examinee.tables().agreements().descriptorFields()) {
      for (ExaminedImage image : examinee.prints()) {
        if (image.record().field(layout.field()).isPresent()
            && !image.positions().isEmpty()
            && image.positions().stream().noneMatch(layout.positions()::contains)) {
          log.add(
              "RP-TXN-032",
              image.at(layout.field()),
              Observed.of("position " + image.positions().get(0)),
              String.format(
                  Locale.ROOT,
                  "field %s with position %s only",
                  layout.field(),
                  String.join(" or ", layout.positions().stream().map(String::valueOf).toList())),
              Optional.of(layout.source()),
              List.of());
        }
      }
    }
  }
}
