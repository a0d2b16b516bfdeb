package ridgeproof.examination.rules.layout;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.RecordLayout;
import ridgeproof.spec.layout.RecordTypeRow;
import ridgeproof.spec.requirement.RequirementKind;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.xml.XmlTables;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * Every requirement that a row of a record layout states: presence, repetitions, items and values.
 */
final class LayoutRule implements Rule {

  private static final int USER_DEFINED_TYPE = 2;
  private static final int DOMAIN_FIELD = 13;
  private static final String DEFAULT_DOMAIN = "NORAM";

  @Override
  public Set<String> ids() {
    Set<String> ids = new LinkedHashSet<>(FieldCheck.IDS);
    ids.addAll(Set.of("RP-FLD-001", "RP-FLD-009", "RP-FLD-010", "RP-FLD-011", "RP-FLD-013"));
    ids.addAll(Set.of("RP-FLD-016"));
    return ids;
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    Set<String> bound = boundDocuments(examinee);
    for (LogicalRecord record : examinee.transaction().records()) {
      checkVersion(record, examinee, log);
      checkRows(record, examinee, bound, log);
      checkUnknown(record, examinee, log);
    }
  }

  /** The keys of documents that bind only transactions of another domain than this one's. */
  private static Set<String> boundDocuments(ExaminationInput examinee) {
    String domain =
        examinee
            .transaction()
            .header()
            .flatMap(header -> header.text(DOMAIN_FIELD))
            .orElse(DEFAULT_DOMAIN);
    Set<String> foreign = new LinkedHashSet<>();
    for (Map.Entry<String, SpecTables.Document> entry : examinee.tables().documents().entrySet()) {
      if (entry.getValue().domain().filter(d -> !d.equalsIgnoreCase(domain)).isPresent()) {
        foreign.add(entry.getKey());
      }
    }
    return foreign;
  }

  /** The version by which the file is read, and whether it states that one. */
  private static String version(ExaminationInput examinee) {
    Transaction transaction = examinee.transaction();
    String read = String.format(Locale.ROOT, "%04d", transaction.version());
    return transaction.isVersionAssumed() ? read + " (assumed)" : read;
  }

  private static void checkVersion(
      LogicalRecord record, ExaminationInput examinee, FindingLog log) {
    int version = examinee.transaction().version();
    Optional<RecordTypeRow> type = examinee.tables().recordType(record.type());
    if (type.filter(row -> !row.versions().contains(version)).isPresent()) {
      log.add(
          "RP-FLD-013",
          Location.of(record),
          Observed.of(
              String.format(
                  Locale.ROOT, "Type-%d in version %s", record.type(), version(examinee))),
          "a record type in that version");
    }
  }

  private static void checkRows(
      LogicalRecord record, ExaminationInput examinee, Set<String> foreign, FindingLog log) {
    int version = examinee.transaction().version();
    RecordLayout layout = examinee.tables().layout(record.type());
    RecordValues values = new RecordValues(examinee.transaction(), record);
    for (FieldRow row : layout.rows()) {
      if (row.item().isPresent()
          || row.isRange()
          || !row.versions().contains(version)
          || foreign.contains(row.source().document())
          || !isRead(record, row, examinee)) {
        continue;
      }
      Optional<Field> field = record.field(row.number());
      if (checkPresence(record, row, field, values, log) && field.isPresent()) {
        List<FieldRow> items = layout.items(row.number(), version);
        new FieldCheck(examinee, record, field.get(), row, items, values, log).run();
      }
    }
  }

  /** Of some records in XML only the first elements are read, which a note says. */
  private static boolean isRead(LogicalRecord record, FieldRow row, ExaminationInput examinee) {
    if (!examinee.transaction().isXml()) {
      return true;
    }
    XmlTables xml = examinee.tables().xml();
    return xml.isMapped(record.type())
        || xml.rows(record.type()).stream().anyMatch(read -> read.field().equals(row.number()));
  }

  /** Reports presence; true where the field says something that can be checked further. */
  private static boolean checkPresence(
      LogicalRecord record,
      FieldRow row,
      Optional<Field> field,
      RecordValues values,
      FindingLog log) {
    boolean says = field.filter(LayoutRule::saysSomething).isPresent();
    Location place =
        field.map(found -> Location.of(record, found)).orElse(Location.of(record).in(row.number()));
    RequirementKind kind = RequirementKind.of(row.presence().demandFor(values));
    String observed = !says && field.isPresent() ? "empty" : says ? "present" : "missing";
    boolean departs =
        switch (kind) {
          case MANDATORY -> !says;
          case FORBIDDEN -> says;
          case DEPRECATED -> field.isPresent();
          default -> field.isPresent() && !says;
        };
    if (departs) {
      Optional<Source> source = Optional.of(kind.source(row));
      log.add(kind.rule(row), place, Observed.of(observed), wanted(kind), source, List.of());
    }
    return says;
  }

  private static String wanted(RequirementKind kind) {
    return switch (kind) {
      case MANDATORY -> "a value";
      case FORBIDDEN -> "field omitted";
      case DEPRECATED -> "field omitted";
      default -> "a value, or the field omitted";
    };
  }

  private static boolean saysSomething(Field field) {
    return field.isData()
        ? field.value().length() > 0
        : field.subfields().stream()
            .flatMap(subfield -> subfield.items().stream())
            .anyMatch(item -> !item.text().isEmpty());
  }

  private static void checkUnknown(
      LogicalRecord record, ExaminationInput examinee, FindingLog log) {
    int version = examinee.transaction().version();
    RecordLayout layout = examinee.tables().layout(record.type());
    if (record.type() == USER_DEFINED_TYPE || layout.rows().isEmpty()) {
      return;
    }
    for (Field field : record.fields()) {
      FieldNumber number = field.number();
      if (number.recordType() == record.type() && layout.field(number, version).isEmpty()) {
        log.add(
            "RP-FLD-011",
            Location.of(record, field),
            Observed.of(number + (layout.knows(number) ? " belongs to another version" : "")),
            "a field in version " + version(examinee));
      }
    }
  }
}
