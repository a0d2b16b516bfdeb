package ridgeproof.imagery.codec;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ridgeproof.finding.Quantity;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageCodec;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.transaction.record.ByteSource;

/**
 * A signature as the pen wrote it (ANSI/NIST-ITL 1-2011 Update 2015, Field 8.004 value 2, from
 * memory): for each point X and Y in two bytes each, in units of 0.0254 mm from the lower left, and
 * the pressure in one byte, 0 for a pen that is lifted.
 */
public final class PenVectorCodec implements ImageCodec {

  private static final int POINT_BYTES = 5;
  private static final int MARGIN = 10;

  /** A signature is a picture to look at; more pixels would show nothing more. */
  private static final int MAX_SIDE = 1000;

  @Override
  public Set<ImageFormat> formats() {
    return Set.of(ImageFormat.PEN_VECTORS);
  }

  @Override
  public Decoding decode(ByteSource codestream, StatedSize stated, DecodingLimits limits) {
    int points = codestream.length() / POINT_BYTES;
    if (points == 0 || codestream.length() % POINT_BYTES != 0) {
      return Decoding.failed(
          new ImageDefect(
              ImageDefect.Kind.DAMAGE,
              codestream.origin(),
              Quantity.of(codestream.length(), "byte") + ", not a whole number of 5-byte points"));
    }
    return new Decoding(Optional.of(draw(codestream, points)), List.of());
  }

  private static GrayImage draw(ByteSource points, int count) {
    int left = 0xFFFF;
    int bottom = 0xFFFF;
    int right = 0;
    int top = 0;
    for (int i = 0; i < count; i++) {
      left = Math.min(left, x(points, i));
      right = Math.max(right, x(points, i));
      bottom = Math.min(bottom, y(points, i));
      top = Math.max(top, y(points, i));
    }
    double scale = (double) MAX_SIDE / Math.max(1, Math.max(right - left, top - bottom));
    BufferedImage page =
        new BufferedImage(
            (int) ((right - left) * scale) + 2 * MARGIN + 1,
            (int) ((top - bottom) * scale) + 2 * MARGIN + 1,
            BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D pen = page.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, page.getWidth(), page.getHeight());
    pen.setColor(Color.BLACK);
    pen.setStroke(new BasicStroke(3));
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    for (int i = 1; i < count; i++) {
      if (pressure(points, i) > 0) {
        pen.drawLine(
            MARGIN + (int) ((x(points, i - 1) - left) * scale),
            MARGIN + (int) ((top - y(points, i - 1)) * scale),
            MARGIN + (int) ((x(points, i) - left) * scale),
            MARGIN + (int) ((top - y(points, i)) * scale));
      }
    }
    pen.dispose();
    byte[] pixels = ((DataBufferByte) page.getRaster().getDataBuffer()).getData();
    return GrayImage.owning(page.getWidth(), page.getHeight(), pixels);
  }

  private static int x(ByteSource points, int index) {
    return points.uint16At(index * POINT_BYTES);
  }

  private static int y(ByteSource points, int index) {
    return points.uint16At(index * POINT_BYTES + 2);
  }

  private static int pressure(ByteSource points, int index) {
    return points.byteAt(index * POINT_BYTES + 4);
  }
}
