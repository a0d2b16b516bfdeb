package ridgeproof.report.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import ridgeproof.examination.comparison.FingerCapture;
import ridgeproof.examination.comparison.FingerChange;
import ridgeproof.finding.Finding;
import ridgeproof.report.ReportPhrases;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.QualityScore;

/**
 * A finger before and after, in words.
 *
 * @param first the score of the first capture, or that there is none
 * @param second as the first
 * @param state {@code good}, {@code bad} or {@code neutral}
 * @param trend how the second compares with the first
 * @param send which capture to send
 * @param why what changed, the most telling first
 */
public record FingerRow(
    String finger,
    String first,
    String second,
    String state,
    String trend,
    String send,
    List<String> why) {

  private static final int MAX_MEASURES = 2;

  /** Parts of a score, each of 100, that changed by less are not named. */
  private static final int MIN_CHANGE = 10;

  static FingerRow of(FingerChange change, ReportPhrases wording) {
    return new FingerRow(
        wording.position(change.finger().code()) + (change.rolled() ? ", rolled" : ", plain"),
        score(change.first()),
        score(change.second()),
        switch (change.trend()) {
          case BETTER, ADDED -> "good";
          case WORSE, REMOVED -> "bad";
          case SAME -> "neutral";
        },
        change.same() ? "same capture" : trend(change.trend()),
        send(change),
        why(change));
  }

  private static String score(Optional<FingerCapture> capture) {
    return capture
        .map(c -> c.score().map(String::valueOf).orElse(c.isDoubtful() ? "to check" : "no problem"))
        .orElse("none");
  }

  private static String trend(FingerChange.Trend trend) {
    return switch (trend) {
      case BETTER -> "better";
      case WORSE -> "worse";
      case SAME -> "no difference";
      case ADDED -> "added";
      case REMOVED -> "removed";
    };
  }

  private static String send(FingerChange change) {
    return switch (change.send()) {
      case FIRST -> "first";
      case SECOND -> "second";
      case EITHER -> "either";
      case NEITHER -> "recapture";
    };
  }

  private static List<String> why(FingerChange change) {
    List<String> before = titles(change.first());
    List<String> after = titles(change.second());
    List<String> why = new ArrayList<>();
    before.stream().filter(t -> !after.contains(t)).forEach(t -> why.add("Resolved: " + t));
    before.stream().filter(after::contains).forEach(t -> why.add("Still present: " + t));
    after.stream().filter(t -> !before.contains(t)).forEach(t -> why.add("New: " + t));
    if (!change.same()) {
      why.addAll(measures(change));
    }
    return List.copyOf(why);
  }

  private static List<String> titles(Optional<FingerCapture> capture) {
    return capture.stream()
        .flatMap(c -> c.problems().stream())
        .map(Finding::rule)
        .map(rule -> rule.title())
        .distinct()
        .toList();
  }

  /** The parts of the score that changed most. */
  private static List<String> measures(FingerChange change) {
    TreeMap<Integer, List<String>> byChange = new TreeMap<>();
    for (QualityScore.Part before : parts(change.first())) {
      for (QualityScore.Part after : parts(change.second())) {
        int step = Math.abs(after.value() - before.value());
        if (after.aspect() == before.aspect() && step >= MIN_CHANGE) {
          byChange
              .computeIfAbsent(-step, key -> new ArrayList<>())
              .add(aspect(after.aspect()) + " " + before.value() + ", now " + after.value());
        }
      }
    }
    return byChange.values().stream().flatMap(List::stream).limit(MAX_MEASURES).toList();
  }

  private static List<QualityScore.Part> parts(Optional<FingerCapture> capture) {
    return capture
        .flatMap(FingerCapture::analysis)
        .map(FingerAnalysis::score)
        .map(QualityScore::parts)
        .orElse(List.of());
  }

  private static String aspect(QualityScore.Aspect aspect) {
    return switch (aspect) {
      case MINUTIAE -> "Minutiae";
      case MOISTURE -> "Moisture";
      case RIDGE_AREA -> "Ridge area";
      case CLARITY -> "Ridge clarity";
      case RIDGE_DISTANCE -> "Ridge spacing";
      case CORE -> "Core position";
      case POLARITY -> "Ridge contrast";
    };
  }
}
