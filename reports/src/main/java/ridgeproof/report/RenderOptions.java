package ridgeproof.report;

/**
 * How a report is shown.
 *
 * @param showPersonal whether values that tell of a person are shown
 * @param colour whether escape sequences for colour may be written
 * @param width columns of a text report
 */
public record RenderOptions(boolean showPersonal, boolean colour, int width) {

  /** Masked, without colour, 80 columns. */
  public static RenderOptions standard() {
    return new RenderOptions(false, false, 80);
  }
}
