package ridgeproof.calibration.real;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import ridgeproof.calibration.print.Markdown;
import ridgeproof.calibration.print.MeasuredPrint;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.rule.Severity;

/** What comes of real prints, set by set, and of those that no limit was chosen by. */
public final class RealReport {

  private static final double SOUND = 100;
  private static final double UNMATCHED = 20;

  /** Fingers whose impressions limits and the score were chosen by. */
  private static final int LAST_FITTED = 5;

  private static final double WORST = 0.1;
  private static final double[] FALSE_NON_MATCHES = {0.1, 0.05};
  private static final double MIN_OVERLAP = 0.8;

  private final Function<MeasuredPrint, Set<String>> judge;
  private final SpecTables tables = SpecTables.open();
  private final Markdown text = new Markdown();

  public RealReport(Function<MeasuredPrint, Set<String>> judge) {
    this.judge = judge;
  }

  public String write(List<RealSet> sets, List<EyeBox.Overlap> overlaps) {
    text.line("# Real prints")
        .line("")
        .line("Single prints of real people, judged as plain prints; numbers only. Made by")
        .line("")
        .line(
            "    ./inspector/calibration/calibrate real --prints ../shared/prints"
                + " --reference ../shared/reference --report docs/evaluation/real-prints.md")
        .line("")
        .line(
            "Similarity is that of the matcher on the images as they are, before any"
                + " processing by Ridgeproof. The score, and the score below which a print is called poor, were"
                + " chosen on fingers 1 to %d of each set; the other fingers are held out. Four"
                + " limits of plain prints were widened with all fingers in view (their `source`"
                + " says so), so that for findings the held-out rows are less than independent.",
            LAST_FITTED);
    findings(sets);
    score(sets);
    rejection(sets);
    rules(sets);
    segments(overlaps);
    return text.toString();
  }

  private record Part(String words, IntPredicate fingers) {}

  private static List<Part> parts() {
    return List.of(
        new Part("all", finger -> true),
        new Part("fitted on", finger -> finger <= LAST_FITTED),
        new Part("held out", finger -> finger > LAST_FITTED));
  }

  private Set<String> serious(RealPrint print) {
    Set<String> serious = new TreeSet<>();
    for (String rule : print.rules(judge)) {
      Severity severity = tables.catalogue().rule(rule).severity();
      if (severity == Severity.LIKELY || severity == Severity.BLOCKING) {
        serious.add(rule);
      }
    }
    return serious;
  }

  private void findings(List<RealSet> sets) {
    text.heading("Findings that a person agrees with")
        .line(
            "Sound: median similarity of at least %.0f with the other impressions of the finger."
                + " Unmatched: less than %.0f. Counted are findings that are LIKELY or BLOCKING.",
            SOUND, UNMATCHED)
        .line("")
        .head("set", "fingers", "sound", "with a finding", "unmatched", "with a finding");
    for (RealSet whole : sets) {
      for (Part part : parts()) {
        RealSet set = whole.of(part.fingers());
        long sound = count(set, SOUND, Double.MAX_VALUE, false);
        long accused = count(set, SOUND, Double.MAX_VALUE, true);
        long unmatched = count(set, 0, UNMATCHED, false);
        long named = count(set, 0, UNMATCHED, true);
        text.row(
            set.name(),
            part.words(),
            sound,
            accused + " (" + Markdown.share(accused, sound) + ")",
            unmatched,
            named + " (" + Markdown.share(named, unmatched) + ")");
      }
    }
  }

  private long count(RealSet set, double least, double below, boolean onlyAccused) {
    return IntStream.range(0, set.prints().size())
        .filter(i -> set.median(i) >= least && set.median(i) < below)
        .filter(i -> !onlyAccused || !serious(set.prints().get(i)).isEmpty())
        .count();
  }

  private void score(List<RealSet> sets) {
    text.heading("Score and median genuine similarity")
        .line(
            "Rank correlation (Spearman); in brackets where 95 of 100 lie when as many fingers are"
                + " drawn again, with replacement.")
        .line("")
        .head("set", "all", "fitted on", "held out");
    for (RealSet set : sets) {
      Object[] row = parts().stream().map(part -> correlation(set.of(part.fingers()))).toArray();
      text.row(set.name(), row[0], row[1], row[2]);
    }
  }

  private static String correlation(RealSet set) {
    double[] scores = set.prints().stream().mapToDouble(RealPrint::score).toArray();
    double[] medians = IntStream.range(0, set.prints().size()).mapToDouble(set::median).toArray();
    int[] fingers = set.prints().stream().mapToInt(RealPrint::finger).toArray();
    double[] interval = FingerBootstrap.interval(fingers, scores, medians);
    return Markdown.format(
        "%.2f (%.2f to %.2f)", RankCorrelation.of(scores, medians), interval[0], interval[1]);
  }

  private void rejection(List<RealSet> sets) {
    text.heading("Error versus reject")
        .line(
            "Genuine pairs below the similarity that leaves so many unmatched, before and after"
                + " the tenth of the prints with the lowest score is taken out"
                + " (after ISO/IEC 29794-1, from memory). The share is of the pairs left, of which"
                + " there are fewer.")
        .line("")
        .head(
            "set",
            "pairs",
            "unmatched",
            "pairs left",
            "unmatched",
            "share",
            "cut by",
            "share cut by");
    for (RealSet set : sets) {
      for (double share : FALSE_NON_MATCHES) {
        rejection(set, share);
      }
    }
  }

  private void rejection(RealSet set, double share) {
    List<RealSet.Pair> pairs = set.genuine();
    double[] alike = pairs.stream().mapToDouble(RealSet.Pair::similarity).sorted().toArray();
    double threshold = alike[(int) (share * alike.length)];
    List<RealPrint> worst =
        set.prints().stream()
            .sorted(Comparator.comparingInt(RealPrint::score))
            .limit(Math.round(WORST * set.prints().size()))
            .toList();
    List<RealSet.Pair> left =
        pairs.stream()
            .filter(p -> !worst.contains(p.first()) && !worst.contains(p.second()))
            .toList();
    long before = pairs.stream().filter(p -> p.similarity() < threshold).count();
    long after = left.stream().filter(p -> p.similarity() < threshold).count();
    text.row(
        set.name(),
        pairs.size(),
        before + " (" + Markdown.share(before, pairs.size()) + ")",
        left.size(),
        after,
        Markdown.share(after, left.size()),
        Markdown.share(before - after, before),
        Markdown.format("%.1f %%", 100 - 100.0 * after * pairs.size() / left.size() / before));
  }

  private void rules(List<RealSet> sets) {
    text.heading("Which rule says what")
        .head("rule", "sound prints", "prints between", "unmatched prints");
    Map<String, long[]> counts = new TreeMap<>();
    for (RealSet set : sets) {
      for (int i = 0; i < set.prints().size(); i++) {
        double median = set.median(i);
        int column = median >= SOUND ? 0 : median >= UNMATCHED ? 1 : 2;
        for (String rule : set.prints().get(i).rules(judge)) {
          counts.computeIfAbsent(rule, key -> new long[3])[column]++;
        }
      }
    }
    counts.forEach((rule, count) -> text.row(rule, count[0], count[1], count[2]));
  }

  private void segments(List<EyeBox.Overlap> overlaps) {
    if (overlaps.isEmpty()) {
      return;
    }
    long met = overlaps.stream().filter(o -> o.share() >= MIN_OVERLAP).count();
    text.heading("Boxes drawn by eye")
        .line(
            "%d of %d boxes met with an intersection over union of at least %.1f (%s).",
            met, overlaps.size(), MIN_OVERLAP, EyeBox.files(overlaps))
        .line("")
        .head("file", "record", "image", "finger", "overlap", "why below");
    overlaps.forEach(
        o ->
            text.row(
                o.drawn().file(),
                orNothing(o.drawn().record()),
                orNothing(o.drawn().image()),
                o.drawn().finger().map(finger -> String.valueOf(finger.code())).orElse(""),
                Markdown.format("%.2f", o.share()),
                o.share() < MIN_OVERLAP ? o.drawn().note() : ""));
  }

  private static String orNothing(int number) {
    return number == 0 ? "" : String.valueOf(number);
  }
}
