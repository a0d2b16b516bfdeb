package ridgeproof.calibration.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ridgeproof.calibration.evaluation.SequenceTrial.Exchange;
import ridgeproof.calibration.evaluation.SequenceTrial.Outcome;
import ridgeproof.calibration.print.Markdown;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;

/** How well exchanged fingers are found, as Markdown. */
final class SequenceSection {

  private final List<FileTrial.Card> spoilt;
  private final List<SequenceTrial.Card> cards;
  private final List<String> lines = new ArrayList<>();

  /**
   * @param spoilt cards with defects and without exchanges
   * @param cards clean ones with exchanges
   */
  SequenceSection(List<FileTrial.Card> spoilt, List<SequenceTrial.Card> cards) {
    this.spoilt = spoilt;
    this.cards = cards;
  }

  String write() {
    lines.add("## Finger position check");
    lines.add("");
    lines.add("| prints | fingers | confirmed | inconclusive | contradicted, wrongly |");
    lines.add("|---|---:|---:|---:|---:|");
    if (!cards.isEmpty()) {
      answers("clean", cards.stream().flatMap(card -> card.answers().stream()).toList());
    }
    answers(
        "of the cards above, half of their images spoilt",
        spoilt.stream().flatMap(card -> card.answers().stream()).toList());
    lines.add("");
    if (!cards.isEmpty()) {
      exchanges();
    }
    return String.join("\n", lines) + "\n";
  }

  private void answers(String name, List<FingerMatchResult> answers) {
    lines.add(
        String.format(
            Locale.ROOT,
            "| %s | %d | %s | %s | %d |",
            name,
            answers.size(),
            Markdown.share(count(answers, Verdict.CONFIRMED), answers.size()),
            Markdown.share(count(answers, Verdict.INCONCLUSIVE), answers.size()),
            count(answers, Verdict.CONTRADICTED)));
  }

  private void exchanges() {
    List<Exchange> all = cards.stream().flatMap(card -> card.exchanges().stream()).toList();
    int falsely = cards.stream().mapToInt(SequenceTrial.Card::falselyNamed).sum();
    lines.add(
        String.format(
            Locale.ROOT,
            "%d clean cards; %d irregularities named that are none. Then two rolls exchanged, %d times in all:",
            cards.size(),
            falsely,
            all.size()));
    lines.add("");
    lines.add("| what is said | exchanges | |");
    lines.add("|---|---:|---:|");
    for (Outcome outcome : Outcome.values()) {
      long count = all.stream().filter(one -> one.outcome() == outcome).count();
      lines.add(
          String.format(
              Locale.ROOT,
              "| %s | %d | %s |",
              words(outcome),
              count,
              Markdown.share(count, all.size())));
    }
    lines.add("");
  }

  static String words(Outcome outcome) {
    return switch (outcome) {
      case NAMED -> "both fingers named";
      case HALF_NAMED -> "one of them named";
      case INCONCLUSIVE -> "neither named, neither confirmed";
      case MISSED -> "one of them confirmed";
      case WRONG -> "another finger named";
    };
  }

  private static long count(List<FingerMatchResult> answers, Verdict verdict) {
    return answers.stream().filter(answer -> answer.verdict() == verdict).count();
  }
}
