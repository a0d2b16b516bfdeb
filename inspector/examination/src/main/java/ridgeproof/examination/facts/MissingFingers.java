package ridgeproof.examination.facts;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.finding.Location;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.consistency.MissingFingerField;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.record.WholeNumber;

/** The fingers that the transaction declares amputated or unprintable. */
public final class MissingFingers {

  /**
   * One declaration.
   *
   * @param reason the code given, for instance XX or UP; may be empty
   */
  public record Declaration(String reason, Location location) {}

  private final Map<Integer, Declaration> byFinger = new LinkedHashMap<>();

  public MissingFingers(ExaminationInput examinee) {
    this(examinee.transaction(), examinee.tables());
  }

  public MissingFingers(Transaction transaction, SpecTables tables) {
    for (MissingFingerField row : tables.missingFingerFields()) {
      for (LogicalRecord record : transaction.recordsOfType(row.field().recordType())) {
        record.field(row.field()).ifPresent(field -> read(record, field, row, tables));
      }
    }
  }

  private void read(LogicalRecord record, Field field, MissingFingerField row, SpecTables tables) {
    for (int i = 1; i <= field.subfields().size(); i++) {
      Subfield subfield = field.subfields().get(i - 1);
      OptionalInt finger = WholeNumber.parse(subfield.text(row.fingerItem()));
      if (finger.isPresent() && isPosition(finger.getAsInt(), tables)) {
        Location place =
            Location.of(record, field).subfield(i, subfield.range()).withPosition(finger);
        byFinger.putIfAbsent(
            finger.getAsInt(), new Declaration(subfield.text(row.reasonItem()), place));
      }
    }
  }

  /** Another number names no finger, and is reported as a value that its field does not allow. */
  private static boolean isPosition(int number, SpecTables tables) {
    return tables.codes("friction-ridge-positions").find(Integer.toString(number)).isPresent();
  }

  public Optional<Declaration> of(int finger) {
    return Optional.ofNullable(byFinger.get(finger));
  }

  public Set<Integer> fingers() {
    return byFinger.keySet();
  }

  /** Whether all that an image is to show is declared missing, so that it may show nothing. */
  public boolean isAllOf(ExaminedImage image, Positions positions) {
    return !image.positions().isEmpty()
        && image.positions().stream().allMatch(position -> isMissing(position, image, positions));
  }

  private boolean isMissing(int position, ExaminedImage image, Positions positions) {
    List<Integer> fingers = positions.fingers(position);
    return byFinger.containsKey(position)
        || (fingers.isEmpty() ? isDeclaredIn(image) : byFinger.keySet().containsAll(fingers));
  }

  /** Whether the record of an image declares anything missing. */
  public static boolean isDeclaredIn(ExaminedImage image) {
    return image.layout().amputation().flatMap(field -> image.record().field(field)).stream()
        .flatMap(field -> field.subfields().stream())
        .anyMatch(subfield -> !subfield.text(1).isEmpty());
  }
}
