package ridgeproof.desk.view;

import java.util.List;
import java.util.OptionalInt;
import ridgeproof.desk.work.Examined;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.report.TextSanitizer;

/**
 * The page of one file.
 *
 * @param response whether the file is what a bureau answered
 * @param prints the images that could be opened, in the order of the file
 */
public record FilePage(String id, String name, boolean response, List<Print> prints) {

  private static final int SMALL = 120;

  /**
   * An image to look at.
   *
   * @param record ordinal of its record
   * @param name of the finger, or what it is
   * @param height in pixels of a picture 120 pixels wide
   */
  public record Print(int record, String name, int height) {}

  public static FilePage of(String id, Examined examined, boolean response, Texts texts) {
    FindingsReport report = examined.report();
    return new FilePage(
        id,
        TextSanitizer.of(examined.file().name()),
        response,
        report.images().stream()
            .filter(image -> image.pixels().isPresent())
            .map(image -> print(image, report, texts))
            .toList());
  }

  private static Print print(ExaminedImage image, FindingsReport report, Texts texts) {
    int record = image.record().ordinal();
    OptionalInt position = image.position();
    String name =
        position.isPresent()
            ? texts.of("file.print", report.tables().positionName(position.getAsInt()), record)
            : texts.of("file.image", record);
    int width = image.pixels().orElseThrow().width();
    int height = image.pixels().orElseThrow().height();
    return new Print(record, name, Math.max(1, Math.min(SMALL * 2, SMALL * height / width)));
  }
}
