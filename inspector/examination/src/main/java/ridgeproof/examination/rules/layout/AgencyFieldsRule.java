package ridgeproof.examination.rules.layout;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.agency.AgencyField;
import ridgeproof.spec.agency.AgencyProfile;
import ridgeproof.spec.layout.ValueRule;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

/** The fields that the receiving agency needs, limits or refuses. */
final class AgencyFieldsRule implements Rule {

  /** Records that every submission has; the agency's other fields are those of records present. */
  private static final int LAST_NEEDED_TYPE = 2;

  @Override
  public Set<String> ids() {
    return Set.of("RP-PTL-050", "RP-PTL-051", "RP-PTL-052", "RP-PTL-053");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    Optional<AgencyProfile> agency = examinee.options().agency();
    if (agency.isEmpty()) {
      return;
    }
    for (AgencyField wanted : agency.get().fields()) {
      Check check = new Check(wanted, agency.get(), examinee, log);
      List<LogicalRecord> records =
          examinee.transaction().recordsOfType(wanted.number().recordType());
      if (records.isEmpty() && wanted.number().recordType() <= LAST_NEEDED_TYPE) {
        check.withoutRecord();
      }
      records.forEach(check::in);
    }
  }

  private record Check(
      AgencyField wanted, AgencyProfile agency, ExaminationInput examinee, FindingLog log) {

    void withoutRecord() {
      Optional<LogicalRecord> header = examinee.transaction().header();
      if (header.isPresent()) {
        presence(
            new RecordValues(examinee.transaction(), header.get()),
            false,
            Location.file().in(wanted.number()));
      }
    }

    void in(LogicalRecord record) {
      Optional<Field> field = record.field(wanted.number());
      Location place =
          field
              .map(found -> Location.of(record, found))
              .orElse(Location.of(record).in(wanted.number()));
      boolean says =
          field
              .filter(
                  found ->
                      found.isData()
                          ? found.value().length() > 0
                          : found.subfields().stream().anyMatch(s -> !s.text(1).isEmpty()))
              .isPresent();
      presence(new RecordValues(examinee.transaction(), record), says, place);
      if (says && wanted.values().isPresent()) {
        values(record, field.get(), wanted.values().get());
      }
    }

    private void presence(RecordValues values, boolean says, Location place) {
      switch (wanted.presence().demandFor(values)) {
        case MANDATORY -> {
          if (!says) {
            report("RP-PTL-050", place, Observed.of("missing"), named(wanted.meaning()));
          }
        }
        case FORBIDDEN -> {
          if (says) {
            report("RP-PTL-052", place, Observed.of("present"), named("field omitted"));
          }
        }
        case DEPRECATED -> {
          if (says) {
            report("RP-PTL-053", place, Observed.of("present"), named("field omitted"));
          }
        }
        case OPTIONAL -> {}
      }
    }

    private void values(LogicalRecord record, Field field, ValueRule allowed) {
      for (int i = 1; i <= field.subfields().size(); i++) {
        Subfield subfield = field.subfields().get(i - 1);
        String text = subfield.text(1);
        if (!text.isEmpty() && !allowed.matches(text, this::knows)) {
          String quoted = "\"" + text + "\"";
          report(
              "RP-PTL-051",
              Location.of(record, field).item(i, 1, subfield.items().get(0)),
              isPersonal() ? Observed.personal(quoted) : Observed.of(quoted),
              named(wanted.meaning()));
        }
      }
    }

    private boolean isPersonal() {
      return wanted.personal()
          || !examinee
              .tables()
              .layout(wanted.number().recordType())
              .isPublic(wanted.number(), 1, examinee.transaction().version());
    }

    private boolean knows(String table, String code) {
      return examinee
          .tables()
          .codes(table)
          .find(code, examinee.transaction().version())
          .isPresent();
    }

    private String named(String required) {
      return wanted.name() + ", " + required;
    }

    private void report(String id, Location place, Observed observed, String required) {
      log.add(id, place, observed, required, Optional.of(agency.source(wanted.place())), List.of());
    }
  }
}
