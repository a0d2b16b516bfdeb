package ridgeproof.report.prints;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ridgeproof.imagery.GrayImage;

/**
 * A print with marks on it; lengths in pixels of its image.
 *
 * @param name the finger, its capture and its record, in words
 * @param notes what the marks show and what is said of the print
 * @param imageWidth of the whole image
 * @param imageHeight of the whole image
 * @param view the part that is shown; it reaches a little over the edge of the image
 * @param pixels the part of the image within the view, where it may be shown
 */
public record PrintPicture(
    String name,
    List<String> notes,
    int record,
    int imageWidth,
    int imageHeight,
    View view,
    Optional<GrayImage> pixels,
    List<Mark> marks) {

  /** A part of an image; its middle part lies within the image. */
  public record View(int left, int top, int width, int height, int inLeft, int inTop) {}

  public PrintPicture {
    notes = List.copyOf(notes);
    marks = List.copyOf(marks);
  }

  /** What the view box of an SVG is. */
  public String viewBox() {
    return String.format(
        Locale.ROOT, "%d %d %d %d", view.left(), view.top(), view.width(), view.height());
  }

  /** Width of the part of the image within the view. */
  public int inWidth() {
    return view.width() - 2 * (view.inLeft() - view.left());
  }

  /** Height of the part of the image within the view. */
  public int inHeight() {
    return view.height() - 2 * (view.inTop() - view.top());
  }

  /** In words for who does not see it. */
  public String inWords() {
    return (pixels.isPresent() ? "Print: " : "Drawing: ")
        + name
        + (notes.isEmpty() ? "" : ". " + String.join(" ", notes));
  }
}
