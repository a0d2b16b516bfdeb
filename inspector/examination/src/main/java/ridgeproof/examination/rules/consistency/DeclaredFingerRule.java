package ridgeproof.examination.rules.consistency;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.Positions;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.consistency.MissingFingerField;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.record.WholeNumber;

/** A finger is declared missing in the record of an image that would show it. */
final class DeclaredFingerRule implements Rule {

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-035");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    Positions positions = new Positions(examinee.tables());
    List<MissingFingerField> layouts = examinee.tables().missingFingerFields();
    for (ExaminedImage image : examinee.prints()) {
      List<Integer> shown =
          image.positions().stream().flatMap(p -> positions.fingers(p).stream()).toList();
      for (MissingFingerField layout : layouts) {
        if (!shown.isEmpty()) {
          image
              .record()
              .field(layout.field())
              .ifPresent(field -> check(image, field, layout, shown, positions, log));
        }
      }
    }
  }

  private static void check(
      ExaminedImage image,
      Field field,
      MissingFingerField layout,
      List<Integer> shown,
      Positions positions,
      FindingLog log) {
    for (int i = 1; i <= field.subfields().size(); i++) {
      Subfield subfield = field.subfields().get(i - 1);
      OptionalInt finger = WholeNumber.parse(subfield.text(layout.fingerItem()));
      if (finger.isPresent()
          && !shown.contains(finger.getAsInt())
          && !positions.isExtraDigit(finger.getAsInt())) {
        Location place = image.at(field.number()).subfield(i, subfield.range());
        log.add(
            "RP-TXN-035",
            place.withPosition(finger),
            Observed.of("finger " + finger.getAsInt()),
            "one of " + Positions.listed(shown));
      }
    }
  }
}
