package ridgeproof.corpus.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** Boxes of fingers in field 14.021, and minutiae of 9.012. */
final class SegmentVerbs {

  static final Map<String, Verb> ALL =
      Map.of(
          "segments-swap", SegmentVerbs::swap,
          "segment-drop", SegmentVerbs::drop,
          "segment-name", SegmentVerbs::name,
          "segment-move", SegmentVerbs::move,
          "segment-turn", SegmentVerbs::turn,
          "segment-set", SegmentVerbs::set,
          "minutiae-move", SegmentVerbs::moveMinutiae,
          "minutia-drop", SegmentVerbs::dropMinutia,
          "minutia-number", SegmentVerbs::numberMinutia);

  private static final int SEGMENTS = 21;
  private static final int MINUTIAE = 12;

  private SegmentVerbs() {}

  /** {@code segments-swap 13 2 3}: the boxes of two fingers bear each other's name. */
  private static void swap(Workpiece work, StepWords words) {
    String one = words.word(1);
    String other = words.word(2);
    change(
        work,
        words,
        row -> {
          String name = row.get(0);
          row.set(0, name.equals(one) ? other : name.equals(other) ? one : name);
          return row;
        });
  }

  /** {@code segment-drop 13 5}. */
  private static void drop(Workpiece work, StepWords words) {
    work.changeBox(
        words.number(0),
        piece ->
            piece.withSubfields(
                SEGMENTS,
                piece.subfields(SEGMENTS).stream()
                    .filter(row -> !row.get(0).equals(words.word(1)))
                    .toList()));
  }

  /** {@code segment-name 13 5 7}: the box of finger 5 is called 7. */
  private static void name(Workpiece work, StepWords words) {
    of(work, words, row -> row.set(0, words.word(2)));
  }

  /** {@code segment-move 13 5 400 0}: to the right and down, in pixels. */
  private static void move(Workpiece work, StepWords words) {
    of(
        work,
        words,
        row -> {
          add(row, 1, words.number(2));
          add(row, 2, words.number(2));
          add(row, 3, words.number(3));
          add(row, 4, words.number(3));
        });
  }

  /** {@code segment-turn 13 5}: left and right exchanged. */
  private static void turn(Workpiece work, StepWords words) {
    of(work, words, row -> row.set(1, row.set(2, row.get(1))));
  }

  /** {@code segment-set 13 5 2 99999}: one item of the box. */
  private static void set(Workpiece work, StepWords words) {
    of(work, words, row -> row.set(words.number(2) - 1, words.word(3)));
  }

  private static void add(List<String> row, int item, int by) {
    row.set(item, Integer.toString(Math.max(0, Integer.parseInt(row.get(item)) + by)));
  }

  /** Does it to the box of one finger. */
  private static void of(Workpiece work, StepWords words, Consumer<List<String>> edit) {
    change(
        work,
        words,
        row -> {
          if (row.get(0).equals(words.word(1))) {
            edit.accept(row);
          }
          return row;
        });
  }

  /** Does it to the box of each finger. */
  private static void change(Workpiece work, StepWords words, UnaryOperator<List<String>> change) {
    work.changeBox(
        words.number(0),
        piece ->
            piece.withSubfields(
                SEGMENTS,
                piece.subfields(SEGMENTS).stream()
                    .map(row -> change.apply(new ArrayList<>(row)))
                    .toList()));
  }

  /** {@code minutiae-move 3000}: all of the first Type-9 record, to the right. */
  private static void moveMinutiae(Workpiece work, StepWords words) {
    changeMinutiae(
        work,
        rows -> {
          for (List<String> row : rows) {
            String place = row.get(1);
            int x = Integer.parseInt(place.substring(0, 4)) + words.number(0);
            row.set(1, String.format(Locale.ROOT, "%04d%s", Math.min(9999, x), place.substring(4)));
          }
        });
  }

  private static void dropMinutia(Workpiece work, StepWords words) {
    changeMinutiae(work, rows -> rows.remove(rows.size() - 1));
  }

  private static void numberMinutia(Workpiece work, StepWords words) {
    changeMinutiae(work, rows -> rows.get(1).set(0, words.word(0)));
  }

  private static void changeMinutiae(Workpiece work, Consumer<List<List<String>>> edit) {
    work.change(
        "9",
        piece -> {
          List<List<String>> rows = new ArrayList<>();
          piece.subfields(MINUTIAE).forEach(row -> rows.add(new ArrayList<>(row)));
          edit.accept(rows);
          return piece.withSubfields(MINUTIAE, rows);
        });
  }
}
