package ridgeproof.calibration.real;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Several impressions of each of several fingers, with how alike any two are. */
public final class RealSet {

  private final String name;
  private final List<RealPrint> prints;
  private final double[][] similarities;

  RealSet(String name, List<RealPrint> prints, double[][] similarities) {
    this.name = name;
    this.prints = List.copyOf(prints);
    this.similarities = similarities;
  }

  /** Every set in a folder of folders. */
  public static List<RealSet> all(Path folder) throws IOException {
    List<RealSet> sets = new ArrayList<>();
    try (Stream<Path> folders = Files.list(folder)) {
      for (Path set : folders.filter(Files::isDirectory).sorted().toList()) {
        sets.add(read(set));
      }
    }
    return sets;
  }

  private static RealSet read(Path folder) throws IOException {
    List<RealPrint> prints = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".png")).sorted().toList()) {
        prints.add(RealPrint.read(file));
      }
    }
    double[][] similarities =
        prints.stream()
            .map(p -> p.whole().similarities(prints.stream().map(RealPrint::whole).toList()))
            .toArray(double[][]::new);
    return new RealSet(folder.getFileName().toString(), prints, similarities);
  }

  String name() {
    return name;
  }

  /** The part of it with these fingers. */
  RealSet of(IntPredicate fingers) {
    int[] kept =
        IntStream.range(0, prints.size())
            .filter(i -> fingers.test(prints.get(i).finger()))
            .toArray();
    double[][] alike =
        Arrays.stream(kept)
            .mapToObj(i -> Arrays.stream(kept).mapToDouble(j -> similarities[i][j]).toArray())
            .toArray(double[][]::new);
    return new RealSet(name, Arrays.stream(kept).mapToObj(prints::get).toList(), alike);
  }

  List<RealPrint> prints() {
    return prints;
  }

  /** Median similarity of one print with the other impressions of its finger. */
  double median(int print) {
    double[] others =
        IntStream.range(0, prints.size())
            .filter(i -> i != print && sameFinger(i, print))
            .mapToDouble(i -> similarities[print][i])
            .sorted()
            .toArray();
    return others.length == 0 ? 0 : others[others.length / 2];
  }

  private boolean sameFinger(int a, int b) {
    return prints.get(a).finger() == prints.get(b).finger();
  }

  /**
   * Two impressions of one finger.
   *
   * @param similarity mean of both ways
   */
  record Pair(RealPrint first, RealPrint second, double similarity) {

    int score() {
      return Math.min(first.score(), second.score());
    }
  }

  List<Pair> genuine() {
    List<Pair> pairs = new ArrayList<>();
    for (int a = 0; a < prints.size(); a++) {
      for (int b = a + 1; b < prints.size(); b++) {
        if (sameFinger(a, b)) {
          double alike = (similarities[a][b] + similarities[b][a]) / 2;
          pairs.add(new Pair(prints.get(a), prints.get(b), alike));
        }
      }
    }
    return pairs;
  }
}
