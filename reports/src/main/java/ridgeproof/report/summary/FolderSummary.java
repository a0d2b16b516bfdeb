package ridgeproof.report.summary;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.Verdict;
import ridgeproof.finding.Finding;
import ridgeproof.report.FileFacts;
import ridgeproof.report.NotExamined;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.page.Templates;
import ridgeproof.report.template.JtesummaryGenerated;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.consistency.CaptureOrigin;
import ridgeproof.spec.consistency.CaptureOrigin.Kind;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.Severity;

/**
 * What the reports on many files come to, as one page that leads to the page of each. Reports are
 * counted and not kept: what stays of a file is one small row.
 */
public final class FolderSummary {

  /**
   * A file in the list.
   *
   * @param findings by ordinal of their severity
   * @param page the page of its report, a name in the same folder
   * @param day on which it was captured
   * @param station which of the stations made it
   * @param rules that it met, mere facts left out
   */
  record FileRow(
      String name,
      Verdict verdict,
      List<Integer> findings,
      String page,
      Optional<LocalDate> day,
      OptionalInt station,
      List<String> rules) {}

  private final SpecTables tables;
  private final RenderOptions options;
  private final Tally all = new Tally();
  private final PositionCounts positions;
  private final List<OriginCounts> origins;
  private final List<FileRow> files = new ArrayList<>();
  private final List<NotExamined> others = new ArrayList<>();

  /**
   * @param operatorFields fields that tell who captured, the most telling first; no published field
   *     does
   */
  public FolderSummary(SpecTables tables, RenderOptions options, List<FieldNumber> operatorFields) {
    this.tables = tables;
    this.options = options;
    this.positions = new PositionCounts(tables);
    this.origins =
        Stream.of(Kind.values())
            .map(kind -> new OriginCounts(kind, fields(kind, operatorFields)))
            .toList();
  }

  private List<FieldNumber> fields(Kind kind, List<FieldNumber> operatorFields) {
    return Stream.concat(
            kind == Kind.OPERATOR ? operatorFields.stream() : Stream.empty(),
            tables.captureOrigins().stream()
                .filter(origin -> origin.kind() == kind)
                .map(CaptureOrigin::field))
        .toList();
  }

  /**
   * Counts a file.
   *
   * @param page the name of its page: letters, digits, points, hyphens and underscores of ASCII
   * @throws IllegalArgumentException if the name of the page holds anything else
   */
  public void add(FileFacts file, FindingsReport report, String page) {
    if (!page.matches("[A-Za-z0-9_][A-Za-z0-9._-]*")) {
      throw new IllegalArgumentException("no name of a page");
    }
    all.add(report);
    positions.add(report);
    origins.forEach(origin -> origin.add(report));
    files.add(
        new FileRow(
            TextSanitizer.of(file.name()),
            report.verdict(),
            counts(report),
            page,
            CaptureDay.of(report),
            stations().index(report),
            rules(report)));
  }

  /** Names a file that has no report; it is in no count of verdicts. */
  public void add(NotExamined file) {
    others.add(new NotExamined(TextSanitizer.of(file.name()), TextSanitizer.of(file.reason())));
  }

  private OriginCounts stations() {
    return origins.stream().filter(o -> o.kind() == Kind.STATION).findFirst().orElseThrow();
  }

  private static List<String> rules(FindingsReport report) {
    return report.findings().stream()
        .filter(finding -> finding.severity() != Severity.NOTE)
        .map(Finding::ruleId)
        .distinct()
        .map(String::intern)
        .toList();
  }

  private static List<Integer> counts(FindingsReport report) {
    Integer[] counts = new Integer[Severity.values().length];
    Arrays.fill(counts, 0);
    for (Finding finding : report.findings()) {
      counts[finding.severity().ordinal()]++;
    }
    return List.of(counts);
  }

  /** The page on all that was added. */
  public String page() {
    SummaryPage page =
        new SummaryContents(
                all,
                positions,
                origins.stream().filter(OriginCounts::toldByAny).toList(),
                stations().names(options.showPersonal()),
                List.copyOf(files),
                List.copyOf(others),
                options.showPersonal())
            .page();
    return Templates.fill(output -> JtesummaryGenerated.render(output, null, page));
  }

  /** How many files were counted with that verdict. */
  public int files(Verdict verdict) {
    return all.files(verdict);
  }
}
