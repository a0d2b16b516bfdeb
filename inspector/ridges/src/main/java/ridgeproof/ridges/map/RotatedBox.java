package ridgeproof.ridges.map;

import ridgeproof.imagery.GrayImage;

/**
 * A rectangle around a print, in pixels of the image it lies in; it may reach over the edge.
 *
 * @param centreX pixels from the left edge
 * @param centreY pixels from the top edge
 * @param width pixels across the finger
 * @param height pixels along the finger
 * @param degrees how far the finger tip leans to the right (clockwise) from straight up
 */
public record RotatedBox(
    double centreX, double centreY, double width, double height, double degrees) {

  /** The corners as x, y pairs: tip left, tip right, base right, base left. */
  public double[] corners() {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    double[] corners = new double[8];
    for (int i = 0; i < 4; i++) {
      double across = (i == 0 || i == 3 ? -1 : 1) * width / 2;
      double along = (i < 2 ? -1 : 1) * height / 2;
      corners[2 * i] = centreX + across * cos - along * sin;
      corners[2 * i + 1] = centreY + across * sin + along * cos;
    }
    return corners;
  }

  /** Whether a point of the image lies inside. */
  public boolean contains(double x, double y) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    double dx = x - centreX;
    double dy = y - centreY;
    return Math.abs(dx * cos + dy * sin) <= width / 2
        && Math.abs(dy * cos - dx * sin) <= height / 2;
  }

  /** The inside turned upright; what lies beyond the image is white. */
  public GrayImage cut(GrayImage image) {
    int columns = Math.max(1, (int) Math.round(width));
    int rows = Math.max(1, (int) Math.round(height));
    byte[] source = image.toArray();
    byte[] pixels = new byte[columns * rows];
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    for (int row = 0; row < rows; row++) {
      double along = row + 0.5 - height / 2;
      for (int column = 0; column < columns; column++) {
        double across = column + 0.5 - width / 2;
        double x = centreX + across * cos - along * sin - 0.5;
        double y = centreY + across * sin + along * cos - 0.5;
        boolean outside =
            x < -0.5 || y < -0.5 || x > image.width() - 0.5 || y > image.height() - 0.5;
        pixels[row * columns + column] =
            outside
                ? (byte) 255
                : (byte)
                    Math.round(
                        WorkingResolution.bilinear(source, image.width(), image.height(), x, y));
      }
    }
    return GrayImage.owning(columns, rows, pixels);
  }
}
