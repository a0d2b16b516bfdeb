package ridgeproof.examination.rules.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.LogicalRecord;

/** Records of one type have different IDCs, but for several views of one thing. */
final class IdcRule implements Rule {

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-008");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    Map<List<Integer>, LogicalRecord> seen = new HashMap<>();
    for (LogicalRecord record : examinee.transaction().records()) {
      if (record.idc().isEmpty()) {
        continue;
      }
      int idc = record.idc().getAsInt();
      LogicalRecord first = seen.putIfAbsent(List.of(record.type(), idc), record);
      if (first != null && !areViewsOfOneThing(first, record, examinee)) {
        log.add(
            "RP-TXN-008",
            Location.of(record),
            Observed.of(
                String.format(Locale.ROOT, "IDC %02d, as record %d has", idc, first.ordinal())),
            "an IDC of its own");
      }
    }
  }

  private static boolean areViewsOfOneThing(
      LogicalRecord first, LogicalRecord second, ExaminationInput examinee) {
    List<FieldNumber> alike =
        examinee.tables().agreements().sharedIdcs().getOrDefault(first.type(), List.of());
    return !alike.isEmpty()
        && alike.stream().allMatch(field -> values(first, field).equals(values(second, field)));
  }

  private static List<String> values(LogicalRecord record, FieldNumber number) {
    return record.field(number).stream()
        .flatMap(field -> field.subfields().stream())
        .map(subfield -> subfield.text(1))
        .toList();
  }
}
