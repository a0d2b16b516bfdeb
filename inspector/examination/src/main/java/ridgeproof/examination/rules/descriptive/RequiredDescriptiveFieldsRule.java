package ridgeproof.examination.rules.descriptive;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.examination.rules.layout.RecordValues;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.descriptive.ParticularRow;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.Presence;
import ridgeproof.spec.layout.Presence.Demand;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;

/** The Type-2 record holds what the type of transaction needs, and nothing that it excludes. */
final class RequiredDescriptiveFieldsRule implements Rule {

  private static final FieldNumber TYPE_OF_TRANSACTION = new FieldNumber(1, 4);

  /** LEN and IDC, which every record has. */
  private static final int LAST_FRAME_FIELD = 2;

  @Override
  public Set<String> ids() {
    return Set.of(
        "RP-PTL-001", "RP-PTL-002", "RP-PTL-003", "RP-PTL-005", "RP-PTL-006", "RP-PTL-054");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    Optional<String> type = examinee.transaction().typeOfTransaction();
    Optional<DescriptiveText> particulars = DescriptiveText.of(examinee);
    if (type.isEmpty() || particulars.isEmpty()) {
      return;
    }
    List<ParticularRow> rows = examinee.tables().particulars().ofTransaction(type.get());
    if (rows.isEmpty()) {
      reportUnlisted(type.get(), examinee, log);
    } else if (rows.stream().map(ParticularRow::field).noneMatch(particulars.get()::has)) {
      reportNone(type.get(), rows, particulars.get(), log);
    } else {
      reportMissing(rows, particulars.get(), examinee, log);
      reportRepeated(rows, particulars.get(), examinee, log);
      reportSurplus(type.get(), rows, particulars.get(), examinee, log);
    }
  }

  /** A type that is in no list is reported by a rule of its own. */
  private static void reportUnlisted(String type, ExaminationInput examinee, FindingLog log) {
    if (examinee.tables().codes("transaction-types").find(type).isEmpty()) {
      return;
    }
    Location place =
        examinee
            .transaction()
            .header()
            .map(
                header ->
                    header
                        .field(TYPE_OF_TRANSACTION)
                        .map(field -> Location.of(header, field))
                        .orElse(Location.of(header)))
            .orElse(Location.file());
    log.add(
        "RP-PTL-005", place, Observed.of("\"" + type + "\""), "a list of its biographic fields");
  }

  private static void reportNone(
      String type, List<ParticularRow> rows, DescriptiveText particulars, FindingLog log) {
    long needed = rows.stream().filter(row -> isAlwaysNeeded(row.presence())).count();
    if (needed == 0) {
      return;
    }
    Location place =
        particulars.records().stream().findFirst().map(Location::of).orElse(Location.file());
    log.add(
        "RP-PTL-003",
        place,
        Observed.of(
            particulars.records().isEmpty()
                ? "no Type-2 record"
                : "none of the biographic fields of " + type),
        needed == 1
            ? "the 1 field required for " + type
            : "the " + needed + " fields required for " + type);
  }

  private static void reportMissing(
      List<ParticularRow> rows,
      DescriptiveText particulars,
      ExaminationInput examinee,
      FindingLog log) {
    LogicalRecord record = particulars.records().get(0);
    RecordValues values = new RecordValues(examinee.transaction(), record);
    for (ParticularRow row : rows) {
      if (row.presence().demandFor(values) == Demand.MANDATORY && !particulars.has(row.field())) {
        log.add(
            isAlwaysNeeded(row.presence()) ? "RP-PTL-001" : "RP-PTL-002",
            Location.of(record).in(row.field()),
            Observed.of(record.field(row.field()).isPresent() ? "empty" : "missing"),
            "a value",
            Optional.of(row.source()),
            List.of());
      }
    }
  }

  private static void reportRepeated(
      List<ParticularRow> rows,
      DescriptiveText particulars,
      ExaminationInput examinee,
      FindingLog log) {
    LogicalRecord record = particulars.records().get(0);
    for (ParticularRow row : rows) {
      Optional<Field> field = record.field(row.field());
      int count = field.map(found -> found.subfields().size()).orElse(0);
      if (row.most().isPresent()
          && count > row.most().getAsInt()
          && !exceedsLayout(row.field(), count, examinee)) {
        log.add(
            "RP-PTL-054",
            Location.of(record, field.get()),
            Observed.of(count == 1 ? "1 entry" : count + " entries"),
            "at most "
                + row.most().getAsInt()
                + (row.most().getAsInt() == 1 ? " entry" : " entries"),
            Optional.of(row.source()),
            List.of());
      }
    }
  }

  /** Whether the layout allows fewer still, which is reported by its own rule. */
  private static boolean exceedsLayout(FieldNumber field, int count, ExaminationInput examinee) {
    return examinee
        .tables()
        .layout(DescriptiveText.TYPE)
        .field(field, examinee.transaction().version())
        .filter(row -> row.maxOccurs().isPresent() && count > row.maxOccurs().getAsInt())
        .isPresent();
  }

  static boolean isAlwaysNeeded(Presence presence) {
    return presence.clauses().stream()
        .findFirst()
        .filter(clause -> clause.demand() == Demand.MANDATORY && clause.condition().isEmpty())
        .isPresent();
  }

  /** Fields that the layout does not describe are an agency's own and let pass. */
  private static void reportSurplus(
      String type,
      List<ParticularRow> rows,
      DescriptiveText particulars,
      ExaminationInput examinee,
      FindingLog log) {
    Set<FieldNumber> listed = rows.stream().map(ParticularRow::field).collect(Collectors.toSet());
    int version = examinee.transaction().version();
    for (LogicalRecord record : particulars.records()) {
      for (Field field : record.fields()) {
        FieldNumber number = field.number();
        boolean described =
            examinee
                .tables()
                .layout(DescriptiveText.TYPE)
                .field(number, version)
                .filter(row -> !row.isRange() && !row.mnemonic().isEmpty())
                .isPresent();
        if (number.field() > LAST_FRAME_FIELD && described && !listed.contains(number)) {
          log.add(
              "RP-PTL-006",
              Location.of(record, field),
              Observed.of("present"),
              "field omitted for " + type);
        }
      }
    }
  }
}
