package ridgeproof.report.page;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.FindingsReport;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.report.FieldValues;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.TruncatedText;
import ridgeproof.report.page.ReportModel.FieldPart;
import ridgeproof.report.page.ReportModel.FindingNote;
import ridgeproof.report.page.ReportModel.RecordPart;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;

/** Each record with its fields, and the findings beside what they are about. */
final class RecordParts {

  private static final int MAX_FIELDS = 400;
  private static final int MAX_VALUES = 12;

  private final FindingsReport report;
  private final FindingNotes notes;
  private final Map<Integer, List<Finding>> findings;
  private final Set<Integer> images;
  private final ReportPhrases wording;
  private final FieldValues values;

  RecordParts(FindingsReport report, boolean showPersonal, FindingNotes notes) {
    this.report = report;
    this.notes = notes;
    this.findings = report.findingsByRecord();
    this.images = report.imagesByRecord().keySet();
    this.wording = new ReportPhrases(report.tables());
    this.values = new FieldValues(report.tables(), report.transaction().version(), showPersonal);
  }

  List<RecordPart> parts() {
    return report.transaction().records().stream().map(this::part).toList();
  }

  private RecordPart part(LogicalRecord record) {
    List<Field> shown = record.fields().stream().limit(MAX_FIELDS).toList();
    List<FindingNote> all = new ArrayList<>();
    Map<Field, List<String>> about = new IdentityHashMap<>();
    for (Finding finding : findings.getOrDefault(record.ordinal(), List.of())) {
      FindingNote note = notes.note(finding);
      Optional<Field> field = fieldOf(finding, shown);
      field.ifPresent(
          its -> about.computeIfAbsent(its, key -> new ArrayList<>()).add(note.anchor()));
      all.add(field.map(its -> note.beside(anchor(record, its))).orElse(note));
    }
    return new RecordPart(
        "r" + record.ordinal(),
        wording.recordTitle(record),
        ReportPhrases.extent(record),
        images.contains(record.ordinal()) ? "i" + record.ordinal() : "",
        all,
        shown.stream()
            .map(field -> field(record, field, about.getOrDefault(field, List.of())))
            .toList(),
        record.fields().size() - shown.size());
  }

  private static String anchor(LogicalRecord record, Field field) {
    return "r" + record.ordinal() + "-" + field.range().offset();
  }

  /** The field that a finding is about, where the record has it. */
  private static Optional<Field> fieldOf(Finding finding, List<Field> fields) {
    Location place = finding.location();
    Optional<FieldNumber> number = place.field();
    List<Field> named =
        fields.stream().filter(field -> number.equals(Optional.of(field.number()))).toList();
    return named.stream()
        .filter(field -> place.bytes().isPresent())
        .filter(field -> field.range().contains(place.bytes().get().offset()))
        .findFirst()
        .or(() -> named.stream().findFirst());
  }

  private FieldPart field(LogicalRecord record, Field field, List<String> beside) {
    Optional<FieldRow> row = values.row(field.number());
    return new FieldPart(
        anchor(record, field),
        field.range().offset(),
        field.range().length(),
        field.number().toString(),
        row.map(FieldRow::mnemonic).orElse(""),
        row.map(FieldRow::name).orElse("not in the layout of this version"),
        values(record, field),
        Math.max(0, field.subfields().size() - MAX_VALUES),
        beside);
  }

  private List<String> values(LogicalRecord record, Field field) {
    if (field.isData()) {
      return List.of(values.data(record, field));
    }
    List<String> lines = new ArrayList<>();
    field.subfields().stream()
        .limit(MAX_VALUES)
        .forEach(subfield -> lines.add(TruncatedText.of(values.items(field.number(), subfield))));
    return lines;
  }
}
