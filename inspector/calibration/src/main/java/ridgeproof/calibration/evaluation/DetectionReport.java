package ridgeproof.calibration.evaluation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import ridgeproof.calibration.fit.LimitFit;
import ridgeproof.calibration.print.ManualAssessments;
import ridgeproof.calibration.print.Markdown;
import ridgeproof.calibration.print.MeasuredPrint;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.ridges.quality.QualityMetric;

/** How well defects are found, as Markdown; without dates, so that the same draw says the same. */
public final class DetectionReport {

  private static final List<QualityMetric> SHOWN =
      List.of(
          QualityMetric.RIDGE_AREA,
          QualityMetric.WIDTH,
          QualityMetric.PERIOD,
          QualityMetric.CLARITY,
          QualityMetric.RIDGE_LEVEL,
          QualityMetric.DYNAMIC_RANGE,
          QualityMetric.MODULATION,
          QualityMetric.FAINT_SHARE,
          QualityMetric.GRAIN,
          QualityMetric.ROTATION,
          QualityMetric.CORE_TO_BORDER,
          QualityMetric.MINUTIAE,
          QualityMetric.SCORE);

  private final List<FileTrial.Card> cards;
  private final List<ClassifiedImage> images;
  private final Function<MeasuredPrint, Set<String>> judge;
  private final DefectRules right = new DefectRules();
  private final StringBuilder text = new StringBuilder();

  /**
   * @param judge what rules object to a print of a real person
   */
  public DetectionReport(List<FileTrial.Card> cards, Function<MeasuredPrint, Set<String>> judge) {
    this.cards = cards;
    this.images = cards.stream().flatMap(card -> card.images().stream()).toList();
    this.judge = judge;
  }

  /**
   * The whole text.
   *
   * @param command that makes it
   * @param sequence cards whose rolls were exchanged; none to leave it out
   * @param real the card of a real person; empty without the reference files
   * @param seen its prints with what a person said of them
   */
  public String write(
      String command,
      List<SequenceTrial.Card> sequence,
      Optional<RealCard> real,
      List<ManualAssessments.Seen> seen) {
    line("# How well defects are found");
    line("");
    line(
        "Synthetic transactions that no limit was fitted on, as files, by a whole examination. Made by");
    line("");
    line("    " + command);
    line("");
    line(
        "%d cards and sets of flats, %d images, %d fingers looked for.",
        cards.size(), images.size(), images.stream().mapToInt(ClassifiedImage::fingers).sum());
    line(
        "An image counts as caught when a rule of areas RDG or IMG objects to it or to one of its"
            + " fingers; as named rightly when one of those rules tells the technician of this very"
            + " defect (`defect-rules.csv`). Only rolls are rolled too little or interrupted.");
    line("");
    recall();
    falseAlarms();
    confusion();
    text.append(new SequenceSection(cards, sequence).write());
    real.ifPresent(card -> text.append(card.write()));
    real(seen);
    return text.toString();
  }

  private void recall() {
    line("## Recall");
    line("");
    line(
        "| defect | impression | images at 0.6 and above | caught | named rightly | images below 0.6"
            + " | caught |");
    line("|---|---|---:|---:|---:|---:|---:|");
    for (CaptureDefect defect : CaptureDefect.values()) {
      for (Impression kind : kinds(defect)) {
        recallRow(
            Markdown.words(defect) + " | " + kind.key(),
            image -> image.kind() == kind && image.has(defect),
            image -> image.isNamed(right.of(defect, kind)));
      }
      if (kinds(defect).size() > 1) {
        recallRow(
            "**" + Markdown.words(defect) + "** | both",
            image -> image.has(defect),
            image -> image.isNamed(right.of(defect, image.kind())));
      }
    }
    List<ClassifiedImage> all =
        select(image -> !image.isClean() && image.strength() >= LimitFit.STRONG);
    line("| **all** | | %d | %s | | | |", all.size(), share(all, ClassifiedImage::isCaught));
    line("");
  }

  private void recallRow(
      String name, Predicate<ClassifiedImage> these, Predicate<ClassifiedImage> rightly) {
    List<ClassifiedImage> strong = select(these.and(image -> image.strength() >= LimitFit.STRONG));
    List<ClassifiedImage> weak = select(these.and(image -> image.strength() < LimitFit.STRONG));
    line(
        "| %s | %d | %s | %s | %d | %s |",
        name,
        strong.size(),
        share(strong, ClassifiedImage::isCaught),
        share(strong, rightly),
        weak.size(),
        share(weak, ClassifiedImage::isCaught));
  }

  private static List<Impression> kinds(CaptureDefect defect) {
    return Arrays.stream(Impression.values())
        .filter(kind -> defect.befalls(kind == Impression.ROLLED))
        .toList();
  }

  private void falseAlarms() {
    line("## False alarms");
    line("");
    line("| impression | clean fingers | with a finding | clean images | with a finding |");
    line("|---|---:|---:|---:|---:|");
    for (Impression kind : Impression.values()) {
      List<ClassifiedImage> clean = select(image -> image.isClean() && image.kind() == kind);
      int fingers = clean.stream().mapToInt(ClassifiedImage::fingers).sum();
      int alarms = clean.stream().mapToInt(ClassifiedImage::objected).sum();
      line(
          "| %s | %d | %d (%s) | %d | %s |",
          kind.key(),
          fingers,
          alarms,
          Markdown.share(alarms, fingers),
          clean.size(),
          share(clean, ClassifiedImage::isCaught));
    }
    line("");
  }

  private void confusion() {
    Set<String> rules = new TreeSet<>();
    images.forEach(image -> rules.addAll(image.rules()));
    line("## Which rule says what");
    line("");
    line(
        "Share of the images with a defect of 0.6 and above, in percent, that each rule objects to.");
    line("");
    StringBuilder head = new StringBuilder("| defect |");
    StringBuilder rule = new StringBuilder("|---|");
    for (String id : rules) {
      head.append(' ').append(id.substring(id.indexOf('-') + 1)).append(" |");
      rule.append("---:|");
    }
    line(head.toString());
    line(rule.toString());
    confusionRow("(clean)", rules, select(ClassifiedImage::isClean));
    for (CaptureDefect defect : CaptureDefect.values()) {
      confusionRow(
          Markdown.words(defect),
          rules,
          select(image -> image.has(defect) && image.strength() >= LimitFit.STRONG));
    }
    line("");
  }

  private void confusionRow(String name, Set<String> rules, List<ClassifiedImage> of) {
    StringBuilder row = new StringBuilder("| " + name + " |");
    for (String id : rules) {
      long count = of.stream().filter(image -> image.rules().contains(id)).count();
      double share = of.isEmpty() ? 0 : 100.0 * count / of.size();
      row.append(count == 0 ? " |" : String.format(Locale.ROOT, " %.1f |", share));
    }
    line(row.toString());
  }

  private void real(List<ManualAssessments.Seen> seen) {
    if (seen.isEmpty()) {
      return;
    }
    line("### Its prints by their measures and by eye");
    line("");
    line(
        "Ink on paper, as numbers. \"By eye\" is what a person said who looked at"
            + " the image. A rule in brackets is one that the person agrees with.");
    line("");
    StringBuilder head = new StringBuilder("| box | finger |");
    StringBuilder rule = new StringBuilder("|---:|---:|");
    for (QualityMetric measure : SHOWN) {
      head.append(' ').append(measure.key()).append(" |");
      rule.append("---:|");
    }
    line(head + " rules | by eye |");
    line(rule + "---|---|");
    for (ManualAssessments.Seen one : seen) {
      StringBuilder row =
          new StringBuilder("| " + one.print().box() + " | " + one.print().finger().code() + " |");
      for (QualityMetric measure : SHOWN) {
        row.append(
            one.print().value(measure).isPresent()
                ? String.format(Locale.ROOT, " %.3g |", one.print().value(measure).getAsDouble())
                : " |");
      }
      List<String> said = new ArrayList<>();
      for (String id : judge.apply(one.print())) {
        said.add(one.judgement().accepted().contains(id) ? "(" + id + ")" : id);
      }
      line(row + " " + String.join(" ", said) + " | " + one.judgement().words() + " |");
    }
  }

  private List<ClassifiedImage> select(Predicate<ClassifiedImage> these) {
    return images.stream().filter(these).toList();
  }

  private static String share(List<ClassifiedImage> of, Predicate<ClassifiedImage> those) {
    return Markdown.share(of.stream().filter(those).count(), of.size());
  }

  private void line(String format, Object... arguments) {
    text.append(arguments.length == 0 ? format : String.format(Locale.ROOT, format, arguments))
        .append('\n');
  }
}
