package ridgeproof.calibration.evaluation;

import java.util.List;
import java.util.Locale;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.PixelStatistics;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.spec.layout.FingerPosition;

/** Where plain fingers were found in their images, as SVG without a pixel of the prints. */
final class SegmentDrawing {

  private SegmentDrawing() {}

  static String of(List<ExaminedImage> images) {
    StringBuilder svg = new StringBuilder();
    int x = 0;
    int height = 0;
    for (ExaminedImage image : images) {
      RidgeAnalysis facts = image.ridges().orElse(null);
      if (facts != null && facts.impression() == Impression.PLAIN) {
        PixelStatistics size = image.pixels().orElseThrow();
        svg.append(frame(x, size, image.position().orElseThrow()));
        int left = x;
        facts
            .fingers()
            .forEach(
                (finger, analysis) ->
                    analysis
                        .measures()
                        .ifPresent(m -> svg.append(box(left, finger, m.extent().box()))));
        x += size.width() + 40;
        height = Math.max(height, size.height());
      }
    }
    return String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"-10 -70 %d %d\" font-family=\"sans-serif\""
                + " font-size=\"48\" fill=\"none\" stroke=\"#345\" stroke-width=\"4\">%n"
                + "<rect x=\"-10\" y=\"-70\" width=\"100%%\" height=\"100%%\" fill=\"#fff\" stroke=\"none\"/>%n",
            x,
            height + 90)
        + svg
        + "</svg>\n";
  }

  private static String frame(int x, PixelStatistics size, int position) {
    return String.format(
        Locale.ROOT,
        "<rect x=\"%d\" y=\"0\" width=\"%d\" height=\"%d\" stroke=\"#99a\"/>"
            + "<text x=\"%d\" y=\"-18\" fill=\"#345\" stroke=\"none\">image %d</text>%n",
        x,
        size.width(),
        size.height(),
        x,
        position);
  }

  private static String box(int x, FingerPosition finger, RotatedBox box) {
    double[] corners = box.corners();
    StringBuilder points = new StringBuilder();
    for (int i = 0; i < corners.length; i += 2) {
      points.append(String.format(Locale.ROOT, "%.0f,%.0f ", corners[i] + x, corners[i + 1]));
    }
    return String.format(
        Locale.ROOT,
        "<polygon points=\"%s\"/><text x=\"%.0f\" y=\"%.0f\" fill=\"#345\" stroke=\"none\""
            + " text-anchor=\"middle\">%d</text>%n",
        points.toString().strip(),
        box.centreX() + x,
        box.centreY() + 16,
        finger.code());
  }
}
