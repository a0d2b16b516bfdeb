package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertTrue;

import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RecommendedAction;

/** Compares the steps of a report with what can be read in its PDF. */
final class StepsInPdf {

  private StepsInPdf() {}

  /** Every step is there to its last word. */
  static void assertWhole(FindingsReport report, byte[] pdf) {
    String text = PdfText.unbroken(pdf);
    int number = 0;
    for (RecommendedAction action : report.actions()) {
      number++;
      String step = action.remedy().replaceAll("\\s", "");
      assertTrue(text.contains(step), "step " + number + " is cut: " + action.remedy());
    }
  }
}
