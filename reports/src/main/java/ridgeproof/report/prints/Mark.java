package ridgeproof.report.prints;

import java.awt.Shape;

/**
 * One line drawing on a print, in pixels of its image.
 *
 * @param kind how it is drawn
 */
public record Mark(Shape shape, Kind kind) {

  /** Each kind differs from the others by more than its color. */
  public enum Kind {
    /** The area of the print, filled. */
    GROUND("ground"),
    /** A print that was found, outlined thinly. */
    PRINT("print"),
    /** Where something is wrong, hatched. */
    HATCH("hatch"),
    /** What is wrong, in a heavy line. */
    FAULT("fault"),
    /** What should be there, dashed. */
    EXPECTED("expected");

    private final String style;

    Kind(String style) {
      this.style = style;
    }

    /** The class in the style sheet. */
    public String style() {
      return style;
    }
  }

  /** The drawing as the path of an SVG in pixels of the image. */
  public String path() {
    return SvgPath.of(shape);
  }
}
