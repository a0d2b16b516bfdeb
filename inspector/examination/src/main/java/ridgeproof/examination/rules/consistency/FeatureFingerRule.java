package ridgeproof.examination.rules.consistency;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.Positions;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.ItemReference;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.record.WholeNumber;

/** Features and the image that they describe are of one finger, as far as both name it. */
final class FeatureFingerRule implements Rule {

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-030");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    Positions positions = new Positions(examinee.tables());
    FeatureImageIndex described = new FeatureImageIndex(examinee);
    for (ItemReference reference : examinee.tables().agreements().featurePositions()) {
      for (LogicalRecord record :
          examinee.transaction().recordsOfType(reference.field().recordType())) {
        List<Integer> imaged =
            described.of(record).stream().flatMap(image -> image.positions().stream()).toList();
        record
            .field(reference.field())
            .ifPresent(field -> check(record, field, reference.item(), imaged, positions, log));
      }
    }
  }

  private static void check(
      LogicalRecord record,
      Field field,
      int item,
      List<Integer> imaged,
      Positions positions,
      FindingLog log) {
    List<Integer> named = new ArrayList<>();
    for (Subfield subfield : field.subfields()) {
      WholeNumber.parse(subfield.text(item)).ifPresent(named::add);
    }
    Set<Integer> featured = fingers(named, positions);
    Set<Integer> shown = fingers(imaged, positions);
    if (!featured.isEmpty() && !shown.isEmpty() && featured.stream().noneMatch(shown::contains)) {
      log.add(
          "RP-TXN-030",
          Location.of(record, field),
          Observed.personal(
              String.format(
                  Locale.ROOT,
                  "features of finger %s, image of finger %s",
                  Positions.listed(featured),
                  Positions.listed(shown))),
          "the same finger in both");
    }
  }

  /** The single fingers meant; none where any of the positions could be another's. */
  private static Set<Integer> fingers(List<Integer> claimed, Positions positions) {
    Set<Integer> fingers = new TreeSet<>();
    for (int position : claimed) {
      if (positions.fingers(position).isEmpty()) {
        return Set.of();
      }
      fingers.addAll(positions.fingers(position));
    }
    return fingers;
  }
}
