package ridgeproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.report.prints.PrintScores;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerMeasures;

/** The words in which reports speak of ridges and of the sequence of fingers. */
public final class RidgePhrases {

  private final ReportPhrases wording;

  public RidgePhrases(ReportPhrases wording) {
    this.wording = wording;
  }

  /** A line for each finger of an image. */
  public List<String> lines(ExaminedImage image, PrintScores scores) {
    List<String> lines = new ArrayList<>();
    if (image.ridges().isPresent()) {
      RidgeAnalysis facts = image.ridges().get();
      facts
          .fingers()
          .forEach(
              (finger, analysis) -> {
                String name =
                    facts.slap().isPresent() ? wording.position(finger.code()) + ": " : "ridges: ";
                lines.add(name + summary(analysis, scores.of(image, finger, analysis)));
              });
    }
    return lines;
  }

  private static String summary(FingerAnalysis analysis, int score) {
    if (analysis.measures().isEmpty()) {
      return "no ridges found";
    }
    FingerMeasures m = analysis.measures().get();
    return String.format(
        Locale.ROOT,
        "score %d of 100; %.0f x %.0f mm, %.0f mm2 of clear ridges, %d%s minutiae",
        score,
        m.extent().widthMm(),
        m.extent().lengthMm(),
        m.extent().ridgeAreaMm2(),
        m.minutiae().count(),
        m.minutiae().isCutShort() ? " or more" : "");
  }

  /** How many fingers are confirmed, contradicted and neither, and which are not confirmed. */
  public String sequence(SequenceComparison sequence) {
    List<FingerMatchResult> answers =
        sequence.answers().answers().stream()
            .filter(answer -> sequence.plains().containsKey(answer.position()))
            .filter(answer -> sequence.rolls().containsKey(answer.position()))
            .toList();
    if (answers.isEmpty()) {
      return "Positions could not be checked: no finger has both a rolled and a plain print.";
    }
    StringBuilder text = new StringBuilder();
    text.append("Plain prints compared with rolled prints: ");
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

  private static long count(List<FingerMatchResult> answers, Verdict verdict) {
    return answers.stream().filter(answer -> answer.verdict() == verdict).count();
  }

  private String reason(FingerMatchResult answer) {
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
      case PLACE_UNCERTAIN -> "is in an image that shows fewer prints than fingers";
    };
  }
}
