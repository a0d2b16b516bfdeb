package ridgeproof.report.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.matching.Minutia;
import ridgeproof.ridges.pattern.SingularPoint;

/**
 * An image with what was seen of its ridges drawn over it: clear ridges tinted, boxes around
 * prints, a ring at a core, a triangle at a delta, a dot with a stroke at the end of a ridge and a
 * square with a stroke at a fork.
 */
public final class RidgePicture {

  private static final Color RIDGES = new Color(0, 150, 136, 56);
  private static final Color BOX = new Color(21, 101, 192);
  private static final Color CORE = new Color(183, 28, 28);
  private static final Color DELTA = new Color(106, 27, 154);
  private static final Color MINUTIA = new Color(216, 67, 21);
  private static final double MARK = 4;
  private static final double STROKE = 11;
  private static final double SINGULAR = 14;

  private RidgePicture() {}

  /** As the bytes of a PNG in colour, of the size of the image. */
  public static byte[] png(GrayImage image, RidgeAnalysis facts) {
    BufferedImage canvas =
        new BufferedImage(image.width(), image.height(), BufferedImage.TYPE_INT_RGB);
    byte[] gray = image.toArray();
    for (int y = 0; y < image.height(); y++) {
      for (int x = 0; x < image.width(); x++) {
        int level = gray[y * image.width() + x] & 0xFF;
        canvas.setRGB(x, y, level << 16 | level << 8 | level);
      }
    }
    Graphics2D pen = canvas.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    draw(RidgeDrawing.of(facts), pen);
    pen.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(canvas, "png", bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static void draw(RidgeDrawing drawing, Graphics2D pen) {
    pen.setColor(RIDGES);
    for (RidgeDrawing.Run run : drawing.ridges()) {
      pen.fill(new Rectangle2D.Double(run.x(), run.y(), run.width(), run.height()));
    }
    pen.setStroke(new BasicStroke(2));
    pen.setColor(BOX);
    for (double[] corners : drawing.boxes()) {
      pen.draw(closed(corners));
    }
    pen.setColor(MINUTIA);
    for (Minutia minutia : drawing.minutiae()) {
      draw(minutia, pen);
    }
    pen.setStroke(new BasicStroke(3));
    pen.setColor(CORE);
    for (SingularPoint core : drawing.cores()) {
      pen.draw(
          new Ellipse2D.Double(
              core.x() - SINGULAR, core.y() - SINGULAR, 2 * SINGULAR, 2 * SINGULAR));
    }
    pen.setColor(DELTA);
    for (SingularPoint delta : drawing.deltas()) {
      double x = delta.x();
      double y = delta.y();
      pen.draw(
          closed(
              new double[] {
                x, y - SINGULAR, x + SINGULAR, y + SINGULAR, x - SINGULAR, y + SINGULAR
              }));
    }
  }

  private static void draw(Minutia minutia, Graphics2D pen) {
    double x = minutia.x();
    double y = minutia.y();
    double turn = Math.toRadians(minutia.degrees());
    pen.draw(new Line2D.Double(x, y, x + STROKE * Math.cos(turn), y + STROKE * Math.sin(turn)));
    if (minutia.ending()) {
      pen.fill(new Ellipse2D.Double(x - MARK, y - MARK, 2 * MARK, 2 * MARK));
    } else {
      pen.draw(new Rectangle2D.Double(x - MARK, y - MARK, 2 * MARK, 2 * MARK));
    }
  }

  private static Path2D closed(double[] corners) {
    Path2D path = new Path2D.Double();
    path.moveTo(corners[0], corners[1]);
    for (int i = 2; i < corners.length; i += 2) {
      path.lineTo(corners[i], corners[i + 1]);
    }
    path.closePath();
    return path;
  }
}
