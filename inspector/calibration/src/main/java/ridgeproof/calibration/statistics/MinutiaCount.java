package ridgeproof.calibration.statistics;

import java.util.List;
import ridgeproof.ridges.matching.Minutia;

/**
 * How many minutiae a print has.
 *
 * @param areaMm2 of the print that they were counted on, square millimetres
 */
record MinutiaCount(int endings, int bifurcations, double areaMm2) {

  static MinutiaCount of(List<Minutia> minutiae, double areaMm2) {
    int endings = (int) minutiae.stream().filter(Minutia::ending).count();
    return new MinutiaCount(endings, minutiae.size() - endings, areaMm2);
  }

  int total() {
    return endings + bifurcations;
  }

  /** Minutiae for each square millimetre. */
  double density() {
    return areaMm2 <= 0 ? 0 : total() / areaMm2;
  }
}
