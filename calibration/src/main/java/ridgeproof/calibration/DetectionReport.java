package ridgeproof.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import ridgeproof.corpus.finger.CaptureDefect;
import ridgeproof.examination.RidgeFacts.Impression;
import ridgeproof.ridges.RidgeMeasure;

/** How well defects are found, as Markdown; without dates, so that the same draw says the same. */
final class DetectionReport {

  private static final List<RidgeMeasure> SHOWN =
      List.of(
          RidgeMeasure.RIDGE_AREA,
          RidgeMeasure.WIDTH,
          RidgeMeasure.PERIOD,
          RidgeMeasure.CLARITY,
          RidgeMeasure.RIDGE_LEVEL,
          RidgeMeasure.DYNAMIC_RANGE,
          RidgeMeasure.MODULATION,
          RidgeMeasure.FAINT_SHARE,
          RidgeMeasure.GRAIN,
          RidgeMeasure.ROTATION,
          RidgeMeasure.CORE_TO_BORDER,
          RidgeMeasure.MINUTIAE,
          RidgeMeasure.SCORE);

  private final List<MeasuredPrint> prints;
  private final List<JudgedImage> images;
  private final Function<MeasuredPrint, Set<String>> judge;
  private final DefectRules right = new DefectRules();
  private final StringBuilder text = new StringBuilder();

  /**
   * @param judge what rules object to a print
   */
  DetectionReport(List<MeasuredPrint> prints, Function<MeasuredPrint, Set<String>> judge) {
    this.prints = prints;
    this.images = JudgedImage.of(prints, judge);
    this.judge = judge;
  }

  /**
   * The whole text.
   *
   * @param command that makes it
   * @param seen real prints with what a person said of them; none without the reference files
   */
  String write(String command, List<EyeTable.Seen> seen) {
    line("# How well defects are found");
    line("");
    line("Synthetic cards that no limit was fitted on, judged by `ridge-limits.csv`. Made by");
    line("");
    line("    " + command);
    line("");
    long cards = prints.stream().mapToInt(MeasuredPrint::card).distinct().count();
    line(
        "%d cards and sets of flats, %d images, %d fingers looked for.",
        cards, images.size(), prints.size());
    line(
        "An image counts as caught when a rule objects to one of its fingers, or a finger is not found"
            + " (RP-RDG-001); as named rightly when one of those rules tells the technician of this"
            + " very defect (`defect-rules.csv`).");
    line("");
    recall();
    falseAlarms();
    confusion();
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
      for (Impression kind : Impression.values()) {
        Predicate<JudgedImage> these = image -> image.kind() == kind && image.has(defect);
        List<JudgedImage> strong = select(these.and(image -> image.strength() >= LimitFit.STRONG));
        List<JudgedImage> weak = select(these.and(image -> image.strength() < LimitFit.STRONG));
        line(
            "| %s | %s | %d | %s | %s | %d | %s |",
            word(defect),
            kind.key(),
            strong.size(),
            share(strong, JudgedImage::isCaught),
            share(strong, image -> image.isNamed(right.of(defect, kind))),
            weak.size(),
            share(weak, JudgedImage::isCaught));
      }
    }
    List<JudgedImage> all =
        select(image -> !image.isClean() && image.strength() >= LimitFit.STRONG);
    line("| **all** | | %d | %s | | | |", all.size(), share(all, JudgedImage::isCaught));
    line("");
  }

  private void falseAlarms() {
    line("## False alarms");
    line("");
    line("| impression | clean fingers | with a finding | clean images | with a finding |");
    line("|---|---:|---:|---:|---:|");
    for (Impression kind : Impression.values()) {
      List<MeasuredPrint> fingers =
          prints.stream().filter(p -> p.isClean() && p.kind() == kind).toList();
      long alarms = fingers.stream().filter(p -> !judge.apply(p).isEmpty()).count();
      List<JudgedImage> clean = select(image -> image.isClean() && image.kind() == kind);
      line(
          "| %s | %d | %d (%s) | %d | %s |",
          kind.key(),
          fingers.size(),
          alarms,
          percent(alarms, fingers.size()),
          clean.size(),
          share(clean, JudgedImage::isCaught));
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
      head.append(' ').append(id.substring(id.lastIndexOf('-') + 1)).append(" |");
      rule.append("---:|");
    }
    line(head.toString());
    line(rule.toString());
    confusionRow("(clean)", rules, select(JudgedImage::isClean));
    for (CaptureDefect defect : CaptureDefect.values()) {
      confusionRow(
          word(defect),
          rules,
          select(image -> image.has(defect) && image.strength() >= LimitFit.STRONG));
    }
    line("");
  }

  private void confusionRow(String name, Set<String> rules, List<JudgedImage> of) {
    StringBuilder row = new StringBuilder("| " + name + " |");
    for (String id : rules) {
      long count = of.stream().filter(image -> image.rules().contains(id)).count();
      double share = of.isEmpty() ? 0 : 100.0 * count / of.size();
      row.append(count == 0 ? " |" : String.format(Locale.ROOT, " %.1f |", share));
    }
    line(row.toString());
  }

  private void real(List<EyeTable.Seen> seen) {
    if (seen.isEmpty()) {
      return;
    }
    line("## Prints of a real person");
    line("");
    line(
        "The public ten-print card of ink on paper, as numbers. \"By eye\" is what a person said who looked at"
            + " the image. A rule in brackets is one that the person agrees with.");
    line("");
    StringBuilder head = new StringBuilder("| box | finger |");
    StringBuilder rule = new StringBuilder("|---:|---:|");
    for (RidgeMeasure measure : SHOWN) {
      head.append(' ').append(measure.key()).append(" |");
      rule.append("---:|");
    }
    line(head + " rules | by eye |");
    line(rule + "---|---|");
    for (EyeTable.Seen one : seen) {
      StringBuilder row =
          new StringBuilder("| " + one.print().box() + " | " + one.print().finger().code() + " |");
      for (RidgeMeasure measure : SHOWN) {
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

  private List<JudgedImage> select(Predicate<JudgedImage> these) {
    return images.stream().filter(these).toList();
  }

  private static String share(List<JudgedImage> of, Predicate<JudgedImage> those) {
    return percent(of.stream().filter(those).count(), of.size());
  }

  private static String percent(long count, long of) {
    return of == 0 ? "" : String.format(Locale.ROOT, "%.1f %%", 100.0 * count / of);
  }

  private static String word(CaptureDefect defect) {
    return defect.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private void line(String format, Object... arguments) {
    text.append(arguments.length == 0 ? format : String.format(Locale.ROOT, format, arguments))
        .append('\n');
  }
}
