package ridgeproof.examination.rules.consistency;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.Positions;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.consistency.QualityField;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.record.WholeNumber;

/** Quality is stated for prints that the image shows, once by each method. */
final class QualityFieldsRule implements Rule {

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-024", "RP-TXN-025", "RP-TXN-026");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    Positions positions = new Positions(examinee.tables());
    Map<Integer, List<Integer>> claims = new HashMap<>();
    examinee.images().forEach(image -> claims.put(image.record().ordinal(), image.positions()));
    Map<Integer, String> exceptions = examinee.tables().agreements().qualityExceptions();
    for (QualityField layout : examinee.tables().agreements().qualityFields()) {
      for (LogicalRecord record :
          examinee.transaction().recordsOfType(layout.field().recordType())) {
        Optional<Field> field = record.field(layout.field());
        if (field.isPresent()) {
          checkExceptions(record, field.get(), layout, exceptions, log);
          List<Integer> claimed = claims.getOrDefault(record.ordinal(), List.of());
          checkPositions(record, field.get(), layout, claimed, positions, log);
        }
      }
    }
  }

  private static void checkExceptions(
      LogicalRecord record,
      Field field,
      QualityField layout,
      Map<Integer, String> exceptions,
      FindingLog log) {
    List<String> found = new ArrayList<>();
    Set<String> meanings = new HashSet<>();
    for (Subfield subfield : field.subfields()) {
      OptionalInt value = WholeNumber.parse(subfield.text(layout.valueItem()));
      if (value.isPresent() && exceptions.containsKey(value.getAsInt())) {
        String position =
            layout.positionItem().stream().mapToObj(subfield::text).findFirst().orElse("");
        found.add(
            position.isEmpty()
                ? subfield.text(layout.valueItem())
                : value.getAsInt() + " for position " + position);
        meanings.add(value.getAsInt() + " means that " + exceptions.get(value.getAsInt()));
      }
    }
    if (!found.isEmpty()) {
      log.add(
          "RP-TXN-026",
          Location.of(record, field),
          Observed.of(String.join(", ", found)),
          "a quality score; " + String.join(", ", meanings.stream().sorted().toList()),
          Optional.of(layout.source()),
          List.of());
    }
  }

  private static void checkPositions(
      LogicalRecord record,
      Field field,
      QualityField layout,
      List<Integer> claimed,
      Positions positions,
      FindingLog log) {
    if (layout.positionItem().isEmpty()) {
      return;
    }
    Set<List<String>> seen = new HashSet<>();
    for (int i = 1; i <= field.subfields().size(); i++) {
      Subfield subfield = field.subfields().get(i - 1);
      OptionalInt rated = WholeNumber.parse(subfield.text(layout.positionItem().getAsInt()));
      if (rated.isEmpty()) {
        continue;
      }
      Location place = Location.of(record, field).subfield(i, subfield.range()).withPosition(rated);
      if (!claimed.isEmpty()
          && claimed.stream().noneMatch(p -> shows(p, rated.getAsInt(), positions))) {
        log.add(
            "RP-TXN-024",
            place,
            Observed.of(
                String.format(
                    Locale.ROOT,
                    "position %d in an image of position %s",
                    rated.getAsInt(),
                    Positions.listed(claimed))),
            "a position shown in the image",
            Optional.of(layout.source()),
            List.of());
      }
      List<String> key = new ArrayList<>(List.of(Integer.toString(rated.getAsInt())));
      layout.methodItems().forEach(item -> key.add(subfield.text(item)));
      if (!seen.add(key)) {
        log.add(
            "RP-TXN-025",
            place,
            Observed.of("position " + rated.getAsInt() + " again"),
            "each position once for each method",
            Optional.of(layout.source()),
            List.of());
      }
    }
  }

  /** Of fingers the very finger; of palms and soles, whose parts are rated singly, the hand. */
  private static boolean shows(int claimed, int rated, Positions positions) {
    if (claimed == rated || !positions.isNamed(claimed) || !positions.isNamed(rated)) {
      return true;
    }
    boolean fingers = !positions.fingers(claimed).isEmpty() || !positions.fingers(rated).isEmpty();
    return fingers
        ? positions.fingers(claimed).containsAll(positions.fingers(rated))
            && (positions.isExtraDigit(rated) || !positions.fingers(rated).isEmpty())
        : positions.hand(claimed).equals(positions.hand(rated));
  }
}
