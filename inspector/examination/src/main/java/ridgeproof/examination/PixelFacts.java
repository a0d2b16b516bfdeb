package ridgeproof.examination;

import java.nio.ByteBuffer;
import ridgeproof.imagery.GrayImage;

/**
 * What is kept of decoded pixels, so that memory is bounded by the largest image and not by the
 * file.
 *
 * @param width pixels
 * @param height pixels
 * @param grayLevels how many different gray levels occur, 1 to 256
 * @param darkest gray level
 * @param brightest gray level
 */
public record PixelFacts(int width, int height, int grayLevels, int darkest, int brightest) {

  static PixelFacts of(GrayImage image) {
    int[] counts = new int[256];
    ByteBuffer pixels = image.asBuffer();
    while (pixels.hasRemaining()) {
      counts[pixels.get() & 0xFF]++;
    }
    int levels = 0;
    int darkest = 255;
    int brightest = 0;
    for (int gray = 0; gray < counts.length; gray++) {
      if (counts[gray] > 0) {
        levels++;
        darkest = Math.min(darkest, gray);
        brightest = gray;
      }
    }
    return new PixelFacts(image.width(), image.height(), levels, darkest, brightest);
  }
}
