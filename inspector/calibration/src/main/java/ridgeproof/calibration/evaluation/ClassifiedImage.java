package ridgeproof.calibration.evaluation;

import java.util.Optional;
import java.util.Set;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;

/**
 * An image with what is true of it and all that an examination said of it: it is taken again as a
 * whole.
 *
 * @param defect what its capture was spoilt by
 * @param strength of the defect, 0 to 1
 * @param fingers how many it shows
 * @param objected of how many something was said
 * @param rules that object to any of them
 */
record ClassifiedImage(
    Impression kind,
    Optional<CaptureDefect> defect,
    double strength,
    int fingers,
    int objected,
    Set<String> rules) {

  ClassifiedImage {
    rules = Set.copyOf(rules);
  }

  boolean isClean() {
    return defect.isEmpty();
  }

  boolean has(CaptureDefect one) {
    return defect.filter(one::equals).isPresent();
  }

  boolean isCaught() {
    return !rules.isEmpty();
  }

  boolean isNamed(Set<String> right) {
    return rules.stream().anyMatch(right::contains);
  }
}
