package ridgeproof.report.data;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.examination.FindingsReport;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.report.CsvRow;
import ridgeproof.report.FileFacts;
import ridgeproof.report.NotExamined;
import ridgeproof.report.ObservedText;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.prints.PrintNames;
import ridgeproof.transaction.record.ByteRange;

/**
 * One row a finding (RFC 4180, with line feeds), for the findings of many files in one sheet, each
 * written when it is added. A cell that a spreadsheet would take for a formula begins with an
 * apostrophe.
 */
public final class FindingsCsv {

  private static final List<String> COLUMNS =
      List.of(
          "file",
          "sha256",
          "verdict",
          "rule",
          "severity",
          "title",
          "record",
          "record_type",
          "idc",
          "position",
          "finger",
          "field",
          "subfield",
          "item",
          "offset",
          "length",
          "found",
          "required",
          "remedy",
          "source",
          "places");

  private final RenderOptions options;
  private final Writer out;
  private boolean begun;

  /**
   * @param out left open
   */
  public FindingsCsv(Writer out, RenderOptions options) {
    this.out = out;
    this.options = options;
  }

  /** Appends the findings of a file; a file without findings has a row that says so. */
  public void add(FileFacts file, FindingsReport report) throws IOException {
    if (!begun) {
      begun = true;
      out.write(CsvRow.joined(COLUMNS) + "\n");
    }
    List<String> start = List.of(file.name(), file.sha256(), report.verdict().name());
    if (report.findings().isEmpty()) {
      row(start, List.of("", "", "no findings"));
    }
    ObservedText observed = new ObservedText(report, options.showPersonal());
    PrintNames names = new PrintNames(report.tables());
    for (Finding finding : options.findings(report)) {
      row(start, cells(finding, observed, names));
    }
  }

  /** Appends files that have no report. */
  public void add(List<NotExamined> others) throws IOException {
    for (NotExamined file : others) {
      row(List.of(file.name(), "", "NOT EXAMINED"), List.of("", "", file.reason()));
    }
  }

  private List<String> cells(Finding finding, ObservedText observed, PrintNames names) {
    Location place = finding.location();
    return List.of(
        finding.ruleId(),
        finding.severity().name(),
        finding.rule().title(),
        number(place.record()),
        number(place.recordType()),
        number(place.idc()),
        number(place.position()),
        finger(place.position(), names),
        place.field().map(Object::toString).orElse(""),
        number(place.subfield()),
        number(place.item()),
        offset(place.bytes()),
        place.bytes().map(bytes -> String.valueOf(bytes.length())).orElse(""),
        observed.of(finding),
        finding.required(),
        finding.remedy(),
        finding.source().document()
            + (finding.source().place().isEmpty() ? "" : ", " + finding.source().place()),
        String.valueOf(1 + finding.repeats().size()));
  }

  private static String offset(Optional<ByteRange> bytes) {
    return bytes.map(range -> String.valueOf(range.offset())).orElse("");
  }

  private static String finger(OptionalInt position, PrintNames names) {
    return position.isPresent() ? names.finger(position.getAsInt()) : "";
  }

  private static String number(OptionalInt value) {
    return value.isPresent() ? String.valueOf(value.getAsInt()) : "";
  }

  private void row(List<String> start, List<String> rest) throws IOException {
    String padding = ",".repeat(COLUMNS.size() - start.size() - rest.size());
    out.write(CsvRow.joined(start) + "," + CsvRow.joined(rest) + padding + "\n");
  }
}
