package ridgeproof.examination.rules.consistency;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.consistency.CrossReference;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.record.WholeNumber;

/** A record that another names by its number is in the file. */
final class CrossReferenceRule implements Rule {

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-015");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    for (CrossReference reference : examinee.tables().agreements().crossReferences()) {
      Set<Integer> targets = new HashSet<>();
      examinee
          .transaction()
          .recordsOfType(reference.target().recordType())
          .forEach(target -> target.number(reference.target().field()).ifPresent(targets::add));
      for (LogicalRecord record :
          examinee.transaction().recordsOfType(reference.from().field().recordType())) {
        record
            .field(reference.from().field())
            .ifPresent(field -> check(record, field, reference, targets, log));
      }
    }
  }

  private static void check(
      LogicalRecord record,
      Field field,
      CrossReference reference,
      Set<Integer> targets,
      FindingLog log) {
    for (int i = 1; i <= field.subfields().size(); i++) {
      Subfield subfield = field.subfields().get(i - 1);
      OptionalInt number = WholeNumber.parse(subfield.text(reference.from().item()));
      if (number.isPresent() && !targets.contains(number.getAsInt())) {
        log.add(
            "RP-TXN-015",
            Location.of(record, field).subfield(i, subfield.range()),
            Observed.of(String.format(Locale.ROOT, "%d, which is in no record", number.getAsInt())),
            String.format(
                Locale.ROOT,
                "the value of field %s of a Type-%d record",
                reference.target(),
                reference.target().recordType()),
            Optional.of(reference.source()),
            List.of());
      }
    }
  }
}
