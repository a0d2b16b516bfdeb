package ridgeproof.calibration.statistics;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ridgeproof.calibration.print.Markdown;
import ridgeproof.corpus.finger.TruePatternClass;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.ridges.pattern.PatternMeasure;
import ridgeproof.spec.layout.FingerPosition;

/** Which patterns were drawn, and what the ridges code makes of them. */
final class PatternSection {

  private final CardStatistics drawn;
  private final CardStatistics real;
  private final Markdown text;

  PatternSection(CardStatistics drawn, CardStatistics real, Markdown text) {
    this.drawn = drawn;
    this.real = real;
    this.text = text;
  }

  void write() {
    frequencies();
    text.heading("What the ridges code calls them");
    text.line("Rows are what was drawn, columns what is seen, in prints. The right class is the");
    text.line("one of the same name; a plain whorl and a double loop are both a whorl.");
    confusion(Impression.ROLLED);
    confusion(Impression.PLAIN);
    realPatterns();
  }

  /** The share of the drawn fingers with one of these patterns. */
  static double share(
      CardStatistics survey, Set<FingerPosition> fingers, Set<TruePatternClass> patterns) {
    return survey
        .known(Impression.ROLLED, fingers::contains, t -> patterns.contains(t.pattern()) ? 1 : 0)
        .mean();
  }

  private void frequencies() {
    text.heading("Pattern classes");
    text.line(
        "As drawn, in percent of the fingers; below, for all fingers, what the draw asks for.");
    text.line("");
    String[] names = new String[TruePatternClass.values().length + 2];
    names[0] = "finger";
    names[1] = "fingers";
    for (TruePatternClass pattern : TruePatternClass.values()) {
      names[pattern.ordinal() + 2] = Markdown.words(pattern);
    }
    text.head(names);
    for (FingerPosition finger : FingerPosition.values()) {
      frequencyRow(Markdown.words(finger), Set.of(finger));
    }
    frequencyRow("**all**", Set.of(FingerPosition.values()));
    Object[] cells = new Object[names.length];
    cells[0] = "asked for";
    cells[1] = "";
    for (TruePatternClass pattern : TruePatternClass.values()) {
      double sum = 0;
      for (FingerPosition digit : FingerPosition.values()) {
        sum += pattern.frequencyOn(digit);
      }
      cells[pattern.ordinal() + 2] =
          Markdown.format("%.1f", 100 * sum / FingerPosition.values().length);
    }
    text.row(cells);
  }

  private void frequencyRow(String name, Set<FingerPosition> fingers) {
    Object[] cells = new Object[TruePatternClass.values().length + 2];
    cells[0] = name;
    cells[1] = drawn.known(Impression.ROLLED, fingers::contains, t -> 1).count();
    for (TruePatternClass pattern : TruePatternClass.values()) {
      cells[pattern.ordinal() + 2] =
          Markdown.format("%.1f", 100 * share(drawn, fingers, Set.of(pattern)));
    }
    text.row(cells);
  }

  private void confusion(Impression kind) {
    text.line("");
    String[] names = new String[PatternMeasure.PatternClass.values().length + 3];
    names[0] = kind.key();
    for (PatternMeasure.PatternClass seen : PatternMeasure.PatternClass.values()) {
      names[seen.ordinal() + 1] = Markdown.words(seen);
    }
    names[names.length - 2] = "no print found";
    names[names.length - 1] = "right, percent";
    text.head(names);
    int right = 0;
    List<ObservedPrint> prints = drawn.prints(kind);
    for (TruePatternClass pattern : TruePatternClass.values()) {
      List<ObservedPrint> these =
          prints.stream().filter(p -> p.truth().orElseThrow().pattern() == pattern).toList();
      Map<PatternMeasure.PatternClass, Integer> counts = counts(these);
      int found = counts.values().stream().mapToInt(Integer::intValue).sum();
      int agreed = counts.getOrDefault(seenAs(pattern), 0);
      right += agreed;
      Object[] cells = new Object[names.length];
      cells[0] = Markdown.words(pattern);
      for (PatternMeasure.PatternClass seen : PatternMeasure.PatternClass.values()) {
        cells[seen.ordinal() + 1] = counts.getOrDefault(seen, 0);
      }
      cells[names.length - 2] = these.size() - found;
      cells[names.length - 1] = percent(agreed, these.size());
      text.row(cells);
    }
    text.line("");
    text.line(
        "Of %d %s prints %s percent get the right class.",
        prints.size(), kind.key(), percent(right, prints.size()));
  }

  private static Map<PatternMeasure.PatternClass, Integer> counts(List<ObservedPrint> prints) {
    Map<PatternMeasure.PatternClass, Integer> counts =
        new EnumMap<>(PatternMeasure.PatternClass.class);
    prints.forEach(
        print -> print.sight().ifPresent(sight -> counts.merge(sight.pattern(), 1, Integer::sum)));
    return counts;
  }

  private static PatternMeasure.PatternClass seenAs(TruePatternClass drawn) {
    return switch (drawn) {
      case PLAIN_ARCH -> PatternMeasure.PatternClass.ARCH;
      case TENTED_ARCH -> PatternMeasure.PatternClass.TENTED_ARCH;
      case LEFT_LOOP -> PatternMeasure.PatternClass.LEFT_LOOP;
      case RIGHT_LOOP -> PatternMeasure.PatternClass.RIGHT_LOOP;
      case PLAIN_WHORL, DOUBLE_LOOP -> PatternMeasure.PatternClass.WHORL;
    };
  }

  private void realPatterns() {
    if (real.cards().isEmpty()) {
      return;
    }
    text.line("");
    text.line("The real card, whose true classes are unknown; rolled and plain prints of one");
    int same = 0;
    int both = 0;
    Map<FingerPosition, PatternMeasure.PatternClass> rolled = new EnumMap<>(FingerPosition.class);
    for (ObservedPrint print : real.prints(Impression.ROLLED)) {
      print.sight().ifPresent(sight -> rolled.put(print.finger(), sight.pattern()));
    }
    for (ObservedPrint print : real.prints(Impression.PLAIN)) {
      if (print.sight().isPresent() && rolled.containsKey(print.finger())) {
        both++;
        same += print.sight().get().pattern() == rolled.get(print.finger()) ? 1 : 0;
      }
    }
    text.line("finger are called alike for %d of %d fingers.", same, both);
    text.line("");
    String[] names = new String[PatternMeasure.PatternClass.values().length + 1];
    names[0] = "real card";
    for (PatternMeasure.PatternClass seen : PatternMeasure.PatternClass.values()) {
      names[seen.ordinal() + 1] = Markdown.words(seen);
    }
    text.head(names);
    for (Impression kind : Impression.values()) {
      Map<PatternMeasure.PatternClass, Integer> counts = counts(real.prints(kind));
      Object[] cells = new Object[PatternMeasure.PatternClass.values().length + 1];
      cells[0] = kind.key();
      for (PatternMeasure.PatternClass seen : PatternMeasure.PatternClass.values()) {
        cells[seen.ordinal() + 1] = counts.getOrDefault(seen, 0);
      }
      text.row(cells);
    }
  }

  static String percent(double part, double whole) {
    return whole == 0 ? "" : Markdown.format("%.1f", 100 * part / whole);
  }
}
