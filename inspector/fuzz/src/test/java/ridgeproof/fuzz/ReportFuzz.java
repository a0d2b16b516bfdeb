package ridgeproof.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.io.StringWriter;
import java.time.Duration;
import java.time.LocalDate;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.data.FindingsCsv;
import ridgeproof.report.data.JsonReport;
import ridgeproof.report.page.HtmlReport;
import ridgeproof.report.text.TextReport;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

class ReportFuzz {

  private static final Examiner EXAMINER =
      new Examiner(SpecTables.open(), new ParseLimits(1 << 20, 100, 10_000, 1_000));
  private static final ExaminationOptions OPTIONS =
      ExaminationOptions.standard()
          .withToday(LocalDate.of(2026, 3, 2))
          .withImageLimits(new DecodingLimits(10_000, Duration.ofSeconds(20)));
  private static final RenderOptions RENDERING = RenderOptions.standard();

  @FuzzTest(maxDuration = "24h")
  void everyReportOfEveryFileCanBeMade(byte[] file) throws IOException {
    FindingsReport report = EXAMINER.examine(ByteSource.of(file), OPTIONS);
    FileFacts facts = new FileFacts("fuzz.an2", file.length, "0".repeat(64));
    JsonReport.render(facts, report, RENDERING);
    TextReport.render(facts, report, RENDERING);
    HtmlReport.render(facts, report, RENDERING);
    new FindingsCsv(new StringWriter(), RENDERING).add(facts, report);
  }

  @FuzzTest(maxDuration = "24h")
  void everyRuleOfTheStructureCanBeChecked(byte[] file) {
    EXAMINER.examine(ByteSource.of(file), OPTIONS.withDepth(Depth.STRUCTURE));
  }
}
