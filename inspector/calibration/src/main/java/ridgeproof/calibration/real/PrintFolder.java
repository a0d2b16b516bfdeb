package ridgeproof.calibration.real;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.quality.FingerAnalyzer;
import ridgeproof.ridges.quality.FingerMeasures;

/** Single prints of real people, {@code NNN_K.png}: impression K of finger NNN at 500 ppi. */
public final class PrintFolder {

  private static final double PPI = 500;
  private static final String NAME = "\\d+_\\d+\\.png";

  private PrintFolder() {}

  /**
   * The prints of a folder that show ridges, each with its templates.
   *
   * @throws IOException if one cannot be read
   */
  public static PrintPool read(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> prints =
          files.filter(file -> file.getFileName().toString().matches(NAME)).sorted().toList();
      if (prints.isEmpty()) {
        throw new IllegalArgumentException(folder + " holds no prints named NNN_K.png");
      }
      return PrintPool.of(
          prints.parallelStream().map(PrintFolder::print).flatMap(Optional::stream).toList());
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private static Optional<PrintPool.Print> print(Path file) {
    String name = file.getFileName().toString();
    int finger = Integer.parseInt(name.substring(0, name.indexOf('_')));
    GrayImage image = gray(file);
    return FingerAnalyzer.analyse(image, PPI).measures().map(found -> print(finger, image, found));
  }

  private static PrintPool.Print print(int finger, GrayImage image, FingerMeasures found) {
    return new PrintPool.Print(
        finger, found.minutiae(), Optional.of(Minutiae.again(image, PPI, found.extent().box())));
  }

  private static GrayImage gray(Path file) {
    try {
      BufferedImage image = ImageIO.read(file.toFile());
      if (image == null) {
        throw new IOException(file + " is no image");
      }
      Raster raster = image.getRaster();
      byte[] pixels = new byte[image.getWidth() * image.getHeight()];
      for (int y = 0; y < image.getHeight(); y++) {
        for (int x = 0; x < image.getWidth(); x++) {
          pixels[y * image.getWidth() + x] = (byte) raster.getSample(x, y, 0);
        }
      }
      return GrayImage.owning(image.getWidth(), image.getHeight(), pixels);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
