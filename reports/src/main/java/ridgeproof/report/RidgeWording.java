package ridgeproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import ridgeproof.examination.facts.RidgeFacts;
import ridgeproof.examination.facts.SequenceFacts;
import ridgeproof.ridges.matching.FingerAnswer;
import ridgeproof.ridges.matching.FingerAnswer.Verdict;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.spec.layout.FingerPosition;

/** The words in which reports speak of ridges and of the sequence of fingers. */
public final class RidgeWording {

  private final Wording wording;

  public RidgeWording(Wording wording) {
    this.wording = wording;
  }

  /** A line for each finger of an image. */
  public List<String> lines(RidgeFacts facts) {
    List<String> lines = new ArrayList<>();
    for (Map.Entry<FingerPosition, FingerAnalysis> finger : facts.fingers().entrySet()) {
      String name =
          facts.slap().isPresent() ? wording.position(finger.getKey().code()) + ": " : "ridges: ";
      lines.add(name + summary(finger.getValue()));
    }
    return lines;
  }

  private static String summary(FingerAnalysis analysis) {
    if (analysis.measures().isEmpty()) {
      return "none that are a finger's";
    }
    FingerMeasures m = analysis.measures().get();
    return String.format(
        Locale.ROOT,
        "score %d of 100; %.0f x %.0f mm, %.0f mm2 of clear ridges, %d%s minutiae",
        analysis.score().value(),
        m.extent().widthMm(),
        m.extent().lengthMm(),
        m.extent().ridgeAreaMm2(),
        m.minutiae().count(),
        m.minutiae().isCutShort() ? " or more" : "");
  }

  /** How many fingers are confirmed, contradicted and neither, and which are not confirmed. */
  public String sequence(SequenceFacts sequence) {
    List<FingerAnswer> answers =
        sequence.answers().answers().stream()
            .filter(answer -> sequence.plains().containsKey(answer.position()))
            .filter(answer -> sequence.rolls().containsKey(answer.position()))
            .toList();
    if (answers.isEmpty()) {
      return "Positions could not be checked: no finger has both a rolled and a plain print.";
    }
    StringBuilder text = new StringBuilder();
    text.append("Plain prints against rolls: ");
    text.append(count(answers, Verdict.CONFIRMED)).append(" confirmed, ");
    text.append(count(answers, Verdict.CONTRADICTED)).append(" contradicted, ");
    text.append(count(answers, Verdict.INCONCLUSIVE)).append(" inconclusive");
    List<String> open =
        answers.stream()
            .filter(answer -> answer.verdict() != Verdict.CONFIRMED)
            .map(answer -> wording.position(answer.position().code()) + " " + reason(answer))
            .toList();
    return text + (open.isEmpty() ? "." : ": " + String.join("; ", open) + ".");
  }

  private static long count(List<FingerAnswer> answers, Verdict verdict) {
    return answers.stream().filter(answer -> answer.verdict() == verdict).count();
  }

  private String reason(FingerAnswer answer) {
    return switch (answer.reason()) {
      case MATCHES_OWN_ROLL -> "matches its rolled print";
      case MOST_LIKE_OWN_ROLL -> "is most like its rolled print";
      case MATCHES_ANOTHER_ROLL ->
          "matches the rolled " + wording.position(answer.other().orElseThrow().code());
      case MATCHES_SEVERAL_ROLLS -> "matches several rolled prints";
      case MATCHES_NO_ROLL -> "matches none of the rolled prints";
      case NO_PLAIN_PRINT -> "has no plain print";
      case NO_ROLL -> "has no rolled print";
      case TOO_FEW_MINUTIAE -> "has too few minutiae";
      case PLACE_UNCERTAIN -> "is in an image with fewer prints than fingers";
    };
  }
}
