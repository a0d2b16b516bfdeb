package ridgeproof.calibration.real;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import ridgeproof.ridges.matching.Minutiae;

/**
 * Prints with all similarities among them, so that thousands of cards can be put together of them.
 *
 * @param fingers of which finger each print is
 * @param minutiae how many each print has
 * @param first of each print, as plain print, with each, as roll
 * @param plainAgain the same by a second template of the plain print
 * @param rollAgain the same by a second template of the roll, or of both
 */
public record PrintPool(
    int[] fingers, int[] minutiae, double[][] first, double[][] plainAgain, double[][] rollAgain) {

  /**
   * One print.
   *
   * @param again a second template
   */
  record Print(int finger, Minutiae template, Optional<Minutiae> again) {}

  static PrintPool of(List<Print> prints) {
    int count = prints.size();
    double[][] first = new double[count][];
    double[][] plainAgain = new double[count][];
    double[][] rollAgain = new double[count][];
    List<Minutiae> templates = prints.stream().map(Print::template).toList();
    List<Minutiae> seconds =
        prints.stream().map(print -> print.again().orElse(print.template())).toList();
    IntStream.range(0, count)
        .parallel()
        .forEach(
            i -> {
              first[i] = templates.get(i).similarities(templates);
              rollAgain[i] = templates.get(i).similarities(seconds);
              plainAgain[i] = seconds.get(i).similarities(templates);
              double[] both = seconds.get(i).similarities(seconds);
              for (int j = 0; j < count; j++) {
                rollAgain[i][j] = Math.max(rollAgain[i][j], both[j]);
              }
            });
    return new PrintPool(
        prints.stream().mapToInt(Print::finger).toArray(),
        templates.stream().mapToInt(Minutiae::count).toArray(),
        first,
        plainAgain,
        rollAgain);
  }

  /** The greatest similarity by any templates. */
  double similarity(int plain, int roll) {
    return Math.max(first[plain][roll], Math.max(plainAgain[plain][roll], rollAgain[plain][roll]));
  }
}
