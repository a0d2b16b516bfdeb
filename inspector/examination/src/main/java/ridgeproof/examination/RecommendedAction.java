package ridgeproof.examination;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.rule.RuleRow.Capture;
import ridgeproof.spec.rule.Severity;

/**
 * Something to do next, and the findings that it answers.
 *
 * @param severity of the worst of them
 */
public record RecommendedAction(String remedy, Severity severity, List<Finding> findings) {

  private static final String RIDGES = "RP-RDG-";

  /** About what the record says of the print, which no other capture changes. */
  private static final String SEGMENT = "RP-RDG-021";

  private static final String REPEATED =
      "If repeated attempts give the same result, follow your agency's policy.";
  private static final double WHOLE = 100;

  private record Weighed(RecommendedAction action, double effect) {}

  /**
   * One retake for each image whose ridges are at fault and one action for each other remedy, the
   * worst first, and among equals the one that helps most: that answers most, and the retake of the
   * worst print.
   */
  static List<RecommendedAction> of(
      List<Finding> findings, List<ExaminedImage> images, SpecTables tables) {
    Map<String, List<Finding>> byRemedy = new LinkedHashMap<>();
    Map<Integer, List<Finding>> byImage = new LinkedHashMap<>();
    for (Finding finding : findings) {
      if (!finding.severity().equals(Severity.NOTE)) {
        if (isOfCapture(finding) && finding.location().record().isPresent()) {
          byImage
              .computeIfAbsent(finding.location().record().getAsInt(), key -> new ArrayList<>())
              .add(finding);
        } else {
          byRemedy.computeIfAbsent(finding.remedy(), key -> new ArrayList<>()).add(finding);
        }
      }
    }
    List<Weighed> actions = new ArrayList<>();
    byRemedy.forEach(
        (remedy, answered) -> actions.add(new Weighed(of(remedy, answered), weight(answered))));
    for (ExaminedImage image : images) {
      List<Finding> answered = byImage.get(image.record().ordinal());
      if (answered != null) {
        int score = image.ridges().map(RidgeAnalysis::lowestScore).orElse(0);
        actions.add(
            new Weighed(
                of(retake(image, answered, tables), answered),
                weight(answered) + 1 - score / WHOLE));
      }
    }
    actions.sort(
        Comparator.comparing((Weighed weighed) -> weighed.action().severity())
            .thenComparing(Comparator.comparingDouble(Weighed::effect).reversed()));
    return actions.stream().map(Weighed::action).toList();
  }

  /** Each place, and each finding that a cause explains. */
  private static int weight(List<Finding> answered) {
    return answered.stream()
        .mapToInt(finding -> finding.count() + finding.explains().orElse(0))
        .sum();
  }

  private static RecommendedAction of(String remedy, List<Finding> answered) {
    return new RecommendedAction(
        remedy,
        answered.stream().map(Finding::severity).min(Severity::compareTo).orElseThrow(),
        List.copyOf(answered));
  }

  private static boolean isOfCapture(Finding finding) {
    return finding.ruleId().startsWith(RIDGES) && !finding.ruleId().equals(SEGMENT);
  }

  private static String retake(ExaminedImage image, List<Finding> answered, SpecTables tables) {
    RetakeWords words = new RetakeWords(tables);
    String how = words.how(answered);
    String print = words.print(image);
    boolean advice =
        answered.stream().allMatch(finding -> finding.severity().equals(Severity.ADVICE));
    boolean card = CaptureRemedies.capture(image, tables).equals(Optional.of(Capture.CARD));
    return String.format(Locale.ROOT, card ? ofCard(advice) : ofStation(advice), print, how);
  }

  private static String ofStation(boolean advice) {
    return advice ? "Consider recapturing the %s. %s" : "Recapture the %s. %s " + REPEATED;
  }

  private static String ofCard(boolean advice) {
    return advice
        ? "Check the %s on the card. %s"
        : "Rescan the card. If the fault remains, reprint the %s. %s " + REPEATED;
  }
}
