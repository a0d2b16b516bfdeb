package ridgeproof.calibration.statistics;

import static ridgeproof.calibration.statistics.RidgeSection.ALL;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import ridgeproof.calibration.print.Distribution;
import ridgeproof.calibration.print.Markdown;
import ridgeproof.calibration.statistics.ObservedPrint.Sight;
import ridgeproof.calibration.statistics.ObservedPrint.Truth;
import ridgeproof.calibration.statistics.SimilarityScores.Relation;
import ridgeproof.corpus.finger.Digit;
import ridgeproof.corpus.finger.TruePatternClass;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.spec.layout.FingerPosition;

/** The statistics held against what is published, and where they differ from it. */
final class PublishedSection {

  private static final Set<TruePatternClass> LOOPS =
      EnumSet.of(TruePatternClass.LEFT_LOOP, TruePatternClass.RIGHT_LOOP);
  private static final Set<TruePatternClass> WHORLS =
      EnumSet.of(TruePatternClass.PLAIN_WHORL, TruePatternClass.DOUBLE_LOOP);
  private static final Set<TruePatternClass> ARCHES =
      EnumSet.of(TruePatternClass.PLAIN_ARCH, TruePatternClass.TENTED_ARCH);

  /** Standard errors of the draw that a figure may lie outside. */
  private static final double CHANCE = 2;

  /**
   * One statistic of the drawn prints.
   *
   * @param grown what is known because it was drawn
   * @param seen as the ridges code sees it
   * @param error standard error that comes of the number drawn
   */
  private record Value(
      OptionalDouble grown, OptionalDouble seen, OptionalDouble real, double error) {

    /** What is true of the drawn prints, as far as it is known. */
    double best() {
      return grown.orElseGet(() -> seen.orElse(0));
    }
  }

  private final CardStatistics drawn;
  private final CardStatistics real;
  private final double limit;
  private final Markdown text;
  private final Map<String, Value> values = new LinkedHashMap<>();
  private final Map<String, List<PublishedFigure>> figures =
      PublishedFigure.all().stream()
          .collect(
              Collectors.groupingBy(PublishedFigure::key, LinkedHashMap::new, Collectors.toList()));

  PublishedSection(CardStatistics drawn, CardStatistics real, double limit, Markdown text) {
    this.drawn = drawn;
    this.real = real;
    this.limit = limit;
    this.text = text;
    patterns();
    ridges();
    matches();
  }

  private void patterns() {
    Set<FingerPosition> all = EnumSet.allOf(FingerPosition.class);
    pattern("loops", all, LOOPS);
    pattern("left-loops", all, Set.of(TruePatternClass.LEFT_LOOP));
    pattern("right-loops", all, Set.of(TruePatternClass.RIGHT_LOOP));
    pattern("whorls", all, WHORLS);
    pattern("arches", all, ARCHES);
    pattern("plain-arches", all, Set.of(TruePatternClass.PLAIN_ARCH));
    pattern("tented-arches", all, Set.of(TruePatternClass.TENTED_ARCH));
    for (Digit kind : Digit.values()) {
      Set<FingerPosition> fingers =
          all.stream()
              .filter(finger -> finger.indexOnHand() == kind.ordinal())
              .collect(Collectors.toSet());
      pattern("whorls-" + Markdown.words(kind), fingers, WHORLS);
    }
    double radial =
        PatternSection.share(
                drawn, Set.of(FingerPosition.RIGHT_INDEX), Set.of(TruePatternClass.LEFT_LOOP))
            + PatternSection.share(
                drawn, Set.of(FingerPosition.LEFT_INDEX), Set.of(TruePatternClass.RIGHT_LOOP));
    share("radial-index", radial / 2, 2 * drawn.cards().size());
  }

  private void pattern(String key, Set<FingerPosition> fingers, Set<TruePatternClass> patterns) {
    share(
        key, PatternSection.share(drawn, fingers, patterns), fingers.size() * drawn.cards().size());
  }

  private void share(String key, double share, int count) {
    values.put(
        key,
        new Value(
            OptionalDouble.of(100 * share),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            errorOfShare(share, count)));
  }

  /** In percent; two more of each outcome keep it from nothing (Agresti and Coull 1998). */
  private static double errorOfShare(double share, long count) {
    double more = count + 4.0;
    double moved = (share * count + 2) / more;
    return 100 * Math.sqrt(moved * (1 - moved) / more);
  }

  private void ridges() {
    mean("period", Impression.ROLLED, Truth::periodMm, Sight::periodMm);
    values.put(
        "period-thumb-to-little",
        new Value(
            OptionalDouble.of(ratio(kind -> drawn.known(Impression.ROLLED, kind, Truth::periodMm))),
            OptionalDouble.of(ratio(kind -> drawn.seen(Impression.ROLLED, kind, Sight::periodMm))),
            real.cards().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                    ratio(kind -> real.seen(Impression.ROLLED, kind, Sight::periodMm))),
            0));
    for (Impression kind : Impression.values()) {
      mean(kind.key() + "-count", kind, t -> t.minutiae().total(), s -> s.minutiae().total());
      mean(kind.key() + "-density", kind, t -> t.minutiae().density(), s -> s.minutiae().density());
    }
    values.put(
        "endings",
        new Value(
            OptionalDouble.of(
                100
                    * drawn.known(Impression.ROLLED, ALL, t -> t.minutiae().endings()).mean()
                    / drawn.known(Impression.ROLLED, ALL, t -> t.minutiae().total()).mean()),
            seenEndings(drawn),
            seenEndings(real),
            0));
  }

  private static OptionalDouble seenEndings(CardStatistics survey) {
    double all = survey.seen(Impression.ROLLED, ALL, s -> s.minutiae().total()).mean();
    double endings = survey.seen(Impression.ROLLED, ALL, s -> s.minutiae().endings()).mean();
    return all == 0 ? OptionalDouble.empty() : OptionalDouble.of(100 * endings / all);
  }

  private static double ratio(Function<Predicate<FingerPosition>, Distribution> periods) {
    double little = periods.apply(finger -> finger.indexOnHand() == 4).mean();
    return little == 0 ? 0 : periods.apply(FingerPosition::isThumb).mean() / little;
  }

  private void mean(
      String key, Impression kind, ToDoubleFunction<Truth> grown, ToDoubleFunction<Sight> seen) {
    Distribution known = drawn.known(kind, ALL, grown);
    values.put(
        key,
        new Value(
            OptionalDouble.of(known.mean()),
            meanOf(drawn.seen(kind, ALL, seen)),
            meanOf(real.seen(kind, ALL, seen)),
            // The fingers of a card are of one hand, so that each card counts once.
            known.deviation() / Math.sqrt(drawn.cards().size())));
  }

  private static OptionalDouble meanOf(Distribution values) {
    return values.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(values.mean());
  }

  private void matches() {
    long pairs = 0;
    double matched = 0;
    for (Relation relation : List.of(Relation.SAME_SUBJECT, Relation.OTHER_SUBJECT)) {
      Distribution scores = drawn.scores(relation);
      pairs += scores.count();
      matched += scores.shareFrom(limit) * scores.count();
    }
    double share = pairs == 0 ? 0 : matched / pairs;
    Distribution own = real.scores(Relation.SAME_SUBJECT);
    values.put(
        "impostors-matched",
        new Value(
            OptionalDouble.empty(),
            OptionalDouble.of(100 * share),
            own.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(100 * own.shareFrom(limit)),
            errorOfShare(share, pairs)));
  }

  void write() {
    text.heading("Against published figures");
    text.line(
        "A figure is natural when what was grown (or else what is seen) lies between the least");
    text.line("and the greatest that is published, give or take two standard errors of the draw.");
    text.line("");
    text.head(
        "statistic",
        "unit",
        "published",
        "drawn, grown",
        "drawn, seen",
        "real card, seen",
        "natural");
    figures.forEach(
        (key, rows) -> {
          Value value = valueOf(key);
          text.row(
              rows.get(0).about(),
              rows.get(0).unit(),
              range(least(rows), most(rows)),
              number(value.grown()),
              number(value.seen()),
              number(value.real()),
              isNatural(rows, value) ? "yes" : "**no**");
        });
    text.line("");
    text.line("The sources (`published-figures.csv`), and how each figure is known:");
    text.line("");
    text.line("| statistic | published | source | known |");
    text.line("|---|---|---|---|");
    PublishedFigure.all()
        .forEach(
            figure ->
                text.row(
                    figure.about(),
                    range(figure.low(), figure.most()) + " " + figure.unit(),
                    figure.source(),
                    figure.known()));
  }

  /** One sentence for each statistic that is not natural. */
  List<String> differences() {
    List<String> sentences = new ArrayList<>();
    figures.forEach(
        (key, rows) -> {
          Value value = valueOf(key);
          if (!isNatural(rows, value)) {
            sentences.add(
                Markdown.format(
                    "%s: %s %s, published %s.",
                    rows.get(0).about(),
                    number(OptionalDouble.of(value.best())),
                    rows.get(0).unit(),
                    range(least(rows), most(rows))));
          }
        });
    return sentences;
  }

  private Value valueOf(String key) {
    Value value = values.get(key);
    if (value == null) {
      throw new IllegalStateException("published-figures.csv: nothing is measured for " + key);
    }
    return value;
  }

  private static boolean isNatural(List<PublishedFigure> rows, Value value) {
    double off = CHANCE * value.error();
    return value.best() >= least(rows) - off && value.best() <= most(rows) + off;
  }

  private static double least(List<PublishedFigure> rows) {
    return rows.stream().mapToDouble(PublishedFigure::low).min().orElseThrow();
  }

  private static double most(List<PublishedFigure> rows) {
    return rows.stream().mapToDouble(PublishedFigure::most).max().orElseThrow();
  }

  private static String range(double low, double high) {
    if (Double.isInfinite(high)) {
      return "more than " + number(OptionalDouble.of(low));
    }
    String least = number(OptionalDouble.of(low));
    return low == high ? least : least + " to " + number(OptionalDouble.of(high));
  }

  /** Three digits, as many as sources give. */
  private static String number(OptionalDouble value) {
    if (value.isEmpty()) {
      return "";
    }
    double v = value.getAsDouble();
    String digits = v == 0 ? "0" : Markdown.format(v < 2 ? "%.3f" : "%.1f", v);
    return digits.contains(".") ? digits.replaceAll("0+$", "").replaceAll("\\.$", "") : digits;
  }
}
