package ridgeproof.calibration.real;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import javax.imageio.ImageIO;
import ridgeproof.calibration.print.MeasuredPrint;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerAnalyzer;
import ridgeproof.spec.layout.FingerPosition;

/**
 * A single print of a real person, of which only numbers are kept.
 *
 * @param finger number of the finger in its set, from 1
 * @param impression number of the impression of that finger, from 1
 * @param analysis what the ridges code sees
 * @param whole the minutiae of the image as it is, which no measure of ours has touched
 */
record RealPrint(int finger, int impression, FingerAnalysis analysis, Minutiae whole) {

  static final double PPI = 500;
  private static final int FIRST = 100;
  private static final String POOR = "RP-RDG-017";

  /**
   * Reads one print.
   *
   * @param file named after finger and impression, {@code 101_1.png}
   */
  static RealPrint read(Path file) throws IOException {
    String[] name = file.getFileName().toString().split("[_.]");
    GrayImage image = pixels(file);
    return new RealPrint(
        Integer.parseInt(name[0]) - FIRST,
        Integer.parseInt(name[1]),
        FingerAnalyzer.analyse(image, PPI),
        Minutiae.of(image.toArray(), image.width(), image.height(), PPI));
  }

  static GrayImage pixels(Path file) throws IOException {
    BufferedImage image = ImageIO.read(file.toFile());
    int width = image.getWidth();
    int height = image.getHeight();
    byte[] gray = new byte[width * height];
    for (int at = 0; at < gray.length; at++) {
      gray[at] = (byte) image.getRaster().getSample(at % width, at / width, 0);
    }
    return GrayImage.owning(width, height, gray);
  }

  int score() {
    return analysis.score().value();
  }

  /** What an examination says of it as a plain print. */
  Set<String> rules(Function<MeasuredPrint, Set<String>> judge) {
    MeasuredPrint print =
        new MeasuredPrint(
            0,
            1,
            1,
            FingerPosition.values()[0],
            Impression.PLAIN,
            Optional.empty(),
            0,
            MeasuredPrint.valuesOf(analysis));
    Set<String> rules = new TreeSet<>(judge.apply(print));
    if (rules.size() > 1) {
      rules.remove(POOR);
    }
    return rules;
  }
}
