package ridgeproof.examination.rules.consistency;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.spec.consistency.MinutiaList;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.record.WholeNumber;

/** As many minutiae are listed as are counted, numbered from 1. */
final class FeatureCountRule implements Rule {

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-027", "RP-TXN-029");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    for (MinutiaList layout : examinee.tables().agreements().minutiaLists()) {
      for (LogicalRecord record :
          examinee.transaction().recordsOfType(layout.field().recordType())) {
        record
            .field(layout.field())
            .filter(field -> !field.text().isEmpty())
            .ifPresent(
                field -> {
                  checkCount(record, field, layout, log);
                  checkNumbers(record, field, layout, log);
                });
      }
    }
  }

  private static void checkCount(
      LogicalRecord record, Field field, MinutiaList layout, FindingLog log) {
    OptionalInt counted = record.number(layout.countField().field());
    int listed = field.subfields().size();
    if (counted.isPresent() && counted.getAsInt() != listed) {
      log.add(
          "RP-TXN-027",
          Location.of(record, field),
          Observed.of(String.format(Locale.ROOT, "%d minutiae listed", listed)),
          String.format(
              Locale.ROOT, "%d, as field %s counts", counted.getAsInt(), layout.countField()),
          Optional.of(layout.source()),
          List.of(Measure.against("minutiae", listed, "", counted.getAsInt())));
    }
  }

  private static void checkNumbers(
      LogicalRecord record, Field field, MinutiaList layout, FindingLog log) {
    for (int i = 1; i <= field.subfields().size(); i++) {
      Subfield subfield = field.subfields().get(i - 1);
      OptionalInt number = WholeNumber.parse(subfield.text(layout.indexItem()));
      if (number.isPresent() && number.getAsInt() != i) {
        log.add(
            "RP-TXN-029",
            Location.of(record, field).subfield(i, subfield.range()),
            Observed.of(
                String.format(Locale.ROOT, "minutia %d is numbered %d", i, number.getAsInt())),
            Integer.toString(i),
            Optional.of(layout.source()),
            List.of());
        return;
      }
    }
  }
}
