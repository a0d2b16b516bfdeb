package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.report.pdf.PdfOptions;
import ridgeproof.report.pdf.PdfReport;
import ridgeproof.testing.ReferenceFiles;

class StepsInPdfTest {

  private static FindingsReport assertWhole(byte[] bytes) {
    FindingsReport report = Reports.examine(bytes, Depth.IMAGES);
    StepsInPdf.assertWhole(
        report,
        PdfReport.render(
            Reports.facts(bytes), report, RenderOptions.standard(), PdfOptions.standard()));
    return report;
  }

  @Test
  void noStepOfAReferenceFileIsCut() throws IOException {
    for (Path file : ReferenceFiles.all()) {
      assertWhole(Files.readAllBytes(file));
    }
  }

  @Test
  void noStepOfAFileFullOfFaultsIsCut() {
    PilotCard card = PilotCard.ascii().without(4).without(9).header(5, "20261399").print(8, "7");
    for (int field = 3; field <= 98; field++) {
      card.particular(field, "\u00e9\u00e9\u00e9 a value of the wrong form in field " + field);
    }
    FindingsReport report = assertWhole(card.bytes());
    assertTrue(report.actions().size() > 14, report.actions().size() + " steps");
  }
}
