package ridgeproof.report.prints;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.Map;
import javax.imageio.ImageIO;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.prints.Mark.Kind;

/** A print with its marks as pixels, for paper. */
public final class MarkedPng {

  private static final int LONGER_SIDE = 520;
  private static final Color GROUND = new Color(214, 222, 226);
  private static final Color HALO = new Color(255, 255, 255, 200);
  private static final Map<Kind, Color> COLORS =
      Map.of(
          Kind.PRINT, new Color(18, 87, 176),
          Kind.HATCH, new Color(192, 22, 22),
          Kind.FAULT, new Color(192, 22, 22),
          Kind.EXPECTED, new Color(20, 90, 50));

  private MarkedPng() {}

  /** As a data address. */
  public static String of(PrintPicture picture) {
    double scale = (double) LONGER_SIDE / Math.max(picture.view().width(), picture.view().height());
    BufferedImage canvas =
        new BufferedImage(
            Math.max(1, (int) Math.round(picture.view().width() * scale)),
            Math.max(1, (int) Math.round(picture.view().height() * scale)),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = canvas.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, canvas.getWidth(), canvas.getHeight());
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    AffineTransform toCanvas = AffineTransform.getScaleInstance(scale, scale);
    toCanvas.translate(-picture.view().left(), -picture.view().top());
    picture
        .pixels()
        .ifPresent(
            pixels -> {
              AffineTransform place = new AffineTransform(toCanvas);
              place.translate(picture.view().inLeft(), picture.view().inTop());
              pen.drawImage(gray(pixels), place, null);
            });
    pen.setColor(Color.BLACK);
    pen.setStroke(new BasicStroke(1));
    pen.draw(
        toCanvas.createTransformedShape(
            new Rectangle2D.Double(0, 0, picture.imageWidth(), picture.imageHeight())));
    picture.marks().forEach(mark -> draw(mark, toCanvas, pen));
    pen.dispose();
    return "data:image/png;base64," + Base64.getEncoder().encodeToString(png(canvas));
  }

  private static void draw(Mark mark, AffineTransform toCanvas, Graphics2D pen) {
    var shape = toCanvas.createTransformedShape(mark.shape());
    if (mark.kind() == Kind.GROUND) {
      pen.setColor(GROUND);
      pen.fill(shape);
      return;
    }
    if (mark.kind() != Kind.HATCH) {
      pen.setColor(HALO);
      pen.setStroke(new BasicStroke(width(mark.kind()) + 3));
      pen.draw(shape);
    }
    pen.setColor(COLORS.get(mark.kind()));
    pen.setStroke(
        mark.kind() == Kind.EXPECTED
            ? new BasicStroke(
                width(mark.kind()),
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_ROUND,
                1,
                new float[] {9, 6},
                0)
            : new BasicStroke(width(mark.kind())));
    pen.draw(shape);
  }

  private static float width(Kind kind) {
    return switch (kind) {
      case FAULT -> 5;
      case EXPECTED -> 3;
      case PRINT -> 2;
      default -> 1.5f;
    };
  }

  private static BufferedImage gray(GrayImage image) {
    BufferedImage picture =
        new BufferedImage(image.width(), image.height(), BufferedImage.TYPE_BYTE_GRAY);
    picture.getRaster().setDataElements(0, 0, image.width(), image.height(), image.toArray());
    return picture;
  }

  private static byte[] png(BufferedImage canvas) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(canvas, "png", bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
