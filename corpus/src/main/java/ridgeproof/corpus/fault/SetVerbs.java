package ridgeproof.corpus.fault;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.corpus.composition.DraftedPrint;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.corpus.scenario.Mistake;
import ridgeproof.corpus.scenario.PrintDefect;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.corpus.scenario.Subject;
import ridgeproof.spec.layout.FingerPosition;

/** Which prints are in the set, what they are called, and how they were captured. */
final class SetVerbs {

  static final Map<String, Verb> ALL =
      Map.ofEntries(
          Map.entry("drop", SetVerbs::drop),
          Map.entry("keep", SetVerbs::keep),
          Map.entry(
              "drop-record", (work, words) -> work.pieces().remove(work.place(words.word(0)))),
          Map.entry("again", SetVerbs::again),
          Map.entry("second", SetVerbs::second),
          Map.entry("exchange", (work, words) -> rotate(work, words.numbersFrom(0))),
          Map.entry("rotate", (work, words) -> rotate(work, words.numbersFrom(0))),
          Map.entry("show", SetVerbs::show),
          Map.entry("position", SetVerbs::position),
          Map.entry("declare", SetVerbs::declare),
          Map.entry("idc", SetVerbs::idc),
          Map.entry("retake", SetVerbs::retake),
          Map.entry("finger", SetVerbs::finger),
          Map.entry("stranger", SetVerbs::stranger));

  private static final int SECOND_LUCK = 500_009;
  private static final int TAGGED = 14;
  private static final int MISSING_IN_PARTICULARS = 84;
  private static final int MISSING_IN_IMAGE = 18;

  private SetVerbs() {}

  /** {@code drop 7,8}: these boxes have no record. */
  private static void drop(Workpiece work, StepWords words) {
    for (int box : words.boxes(0)) {
      work.pieces().remove(work.box(box));
    }
  }

  /** {@code keep 13,14}: no other print has a record. */
  private static void keep(Workpiece work, StepWords words) {
    List<Integer> boxes = words.boxes(0);
    work.pieces().removeIf(piece -> piece.isPrint() && !boxes.contains(piece.box().getAsInt()));
  }

  /** {@code again 7}: the record stands there a second time under an IDC of its own. */
  private static void again(Workpiece work, StepWords words) {
    Piece print = work.box(words.number(0));
    add(work, print);
  }

  /** {@code second 7}: the box was captured twice, and both were kept. */
  private static void second(Workpiece work, StepWords words) {
    int box = words.number(0);
    add(work, captured(work, luck(work.scenario(), SECOND_LUCK), box).orElseThrow());
  }

  private static void add(Workpiece work, Piece print) {
    int last = 0;
    for (int i = 0; i < work.pieces().size(); i++) {
      last = work.pieces().get(i).isPrint() ? i : last;
    }
    work.pieces()
        .add(
            last + 1, print.with(2, String.format(Locale.ROOT, "%02d", work.pieces().size() + 20)));
  }

  /** {@code rotate 2 3 4 5}: each box shows the finger of the next, the last that of the first. */
  private static void rotate(Workpiece work, List<Integer> boxes) {
    List<Piece> sources = boxes.stream().map(work::box).toList();
    for (int i = 0; i < boxes.size(); i++) {
      Piece shown = sources.get((i + 1) % sources.size());
      work.changeBox(boxes.get(i), piece -> piece.showing(shown));
    }
  }

  /** {@code show 7 6}: box 7 holds the very image of box 6. */
  private static void show(Workpiece work, StepWords words) {
    Piece shown = work.box(words.number(1));
    work.changeBox(words.number(0), piece -> piece.showing(shown));
  }

  /** {@code position 7 3}: the record of box 7 says that it is position 3. */
  private static void position(Workpiece work, StepWords words) {
    work.changeBox(words.number(0), piece -> piece.withPosition(words.number(1)));
  }

  /** {@code declare 10 XX}: 2.084, and 14.018 of the image of several, call it missing. */
  private static void declare(Workpiece work, StepWords words) {
    String finger = words.word(0);
    String code = words.word(1);
    work.change(
        "2",
        piece ->
            piece.withSubfields(
                MISSING_IN_PARTICULARS,
                List.of(
                    List.of(String.format(Locale.ROOT, "%02d", Integer.parseInt(finger)), code))));
    for (int i = 0; i < work.pieces().size(); i++) {
      Piece piece = work.pieces().get(i);
      if (piece.isPrint()
          && piece.record().type() == TAGGED
          && FingerPosition.shownBy(piece.box().getAsInt()).stream()
              .anyMatch(shown -> shown.code() == Integer.parseInt(finger))) {
        work.pieces().set(i, piece.withSubfields(MISSING_IN_IMAGE, List.of(List.of(finger, code))));
      }
    }
  }

  /** {@code idc 14@3 04}: another IDC in the record; CNT follows. */
  private static void idc(Workpiece work, StepWords words) {
    work.change(words.word(0), piece -> piece.with(2, words.word(1)));
  }

  /** {@code retake 7 too_dry 0.9}: captured with a defect. */
  private static void retake(Workpiece work, StepWords words) {
    for (int box : words.boxes(0)) {
      CaptureDefect kind = CaptureDefect.valueOf(words.word(1).toUpperCase(Locale.ROOT));
      Scenario spoilt =
          work.scenario().withDefects(List.of(new PrintDefect(box, kind, words.decimal(2))));
      replace(work, box, captured(work, spoilt, box).orElseThrow());
    }
  }

  /** {@code finger 7 8}: finger 8, captured once more, in box 7. */
  private static void finger(Workpiece work, StepWords words) {
    int box = words.number(0);
    Mistake mistake = new Mistake(Mistake.Kind.FINGER_TWICE, box, words.number(1));
    Scenario wrong = luck(work.scenario().withMistakes(List.of(mistake)), SECOND_LUCK);
    replace(work, box, captured(work, wrong, box).orElseThrow());
  }

  /** {@code stranger 7 9107}: the finger of another person, who is called by a seed. */
  private static void stranger(Workpiece work, StepWords words) {
    for (int box : words.boxes(0)) {
      Subject other = Subject.of(words.number(1), null);
      Scenario wrong = work.scenario().of(other, work.scenario().seed() + SECOND_LUCK);
      replace(work, box, captured(work, wrong, box).orElseThrow());
    }
  }

  private static void replace(Workpiece work, int box, Piece print) {
    work.changeBox(box, piece -> piece.showing(print));
  }

  private static Scenario luck(Scenario scenario, int by) {
    long person = scenario.subject().person() == 0 ? scenario.seed() : scenario.subject().person();
    return scenario.of(Subject.of(person, null), scenario.seed() + by);
  }

  private static Optional<Piece> captured(Workpiece work, Scenario scenario, int box) {
    return work.composer().composer().capture(scenario, box, 1).map(SetVerbs::piece);
  }

  private static Piece piece(DraftedPrint drafted) {
    return new Piece(
        drafted.record(),
        OptionalInt.of(drafted.print().box()),
        Optional.of(drafted.print().impression().image()));
  }
}
