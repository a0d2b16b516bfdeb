package ridgeproof.report;

import java.util.List;
import ridgeproof.examination.FindingsReport;
import ridgeproof.finding.Finding;

/**
 * How a report is shown.
 *
 * @param showPersonal whether values that tell of a person are shown
 * @param colour whether escape sequences for colour may be written
 * @param width columns of a text report
 * @param everyFinding whether reports for a program list each place by itself, and the consequences
 *     of causes
 */
public record RenderOptions(boolean showPersonal, boolean colour, int width, boolean everyFinding) {

  public RenderOptions(boolean showPersonal, boolean colour, int width) {
    this(showPersonal, colour, width, false);
  }

  public RenderOptions withEveryFinding(boolean wanted) {
    return new RenderOptions(showPersonal, colour, width, wanted);
  }

  /** The findings that a report for a program lists. */
  public List<Finding> findings(FindingsReport report) {
    return everyFinding ? report.everyFinding() : report.findings();
  }

  /** Masked, without colour, 80 columns. */
  public static RenderOptions standard() {
    return new RenderOptions(false, false, 80);
  }
}
