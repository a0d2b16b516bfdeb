package ridgeproof.calibration;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import ridgeproof.corpus.finger.CaptureDefect;
import ridgeproof.examination.RidgeFacts.Impression;

/**
 * An image with all that is said of its fingers: it is taken again as a whole.
 *
 * @param prints its fingers; of one kind and, as they were captured together, with one defect
 * @param rules that object to any of them
 */
record JudgedImage(List<MeasuredPrint> prints, Set<String> rules) {

  JudgedImage {
    prints = List.copyOf(prints);
    rules = Set.copyOf(rules);
  }

  /** The images of these prints in their order. */
  static List<JudgedImage> of(
      List<MeasuredPrint> prints, Function<MeasuredPrint, Set<String>> judge) {
    Map<String, List<MeasuredPrint>> images = new LinkedHashMap<>();
    for (MeasuredPrint print : prints) {
      images.computeIfAbsent(print.card() + "/" + print.box(), key -> new ArrayList<>()).add(print);
    }
    List<JudgedImage> judged = new ArrayList<>();
    for (List<MeasuredPrint> image : images.values()) {
      Set<String> rules = new TreeSet<>();
      image.forEach(print -> rules.addAll(judge.apply(print)));
      judged.add(new JudgedImage(image, rules));
    }
    return judged;
  }

  private MeasuredPrint first() {
    return prints.get(0);
  }

  Impression kind() {
    return first().kind();
  }

  boolean isClean() {
    return first().isClean();
  }

  boolean has(CaptureDefect defect) {
    return first().defect().filter(defect::equals).isPresent();
  }

  double strength() {
    return first().strength();
  }

  boolean isCaught() {
    return !rules.isEmpty();
  }

  boolean isNamed(Set<String> right) {
    return rules.stream().anyMatch(right::contains);
  }
}
