package ridgeproof.corpus.fault;

import java.util.Locale;
import java.util.Map;
import ridgeproof.spec.layout.FieldNumber;

/** Fields that were typed or exported as they should not have been. */
final class FieldVerbs {

  static final Map<String, Verb> ALL =
      Map.of(
          "set", FieldVerbs::set,
          "empty", (work, words) -> change(work, words, (piece, field) -> piece.with(field, "")),
          "remove", (work, words) -> change(work, words, Piece::without),
          "twice", (work, words) -> change(work, words, Piece::doubled),
          "lower", FieldVerbs::lower);

  /** What is done to a field of a piece. */
  private interface Change {
    Piece apply(Piece piece, int field);
  }

  private FieldVerbs() {}

  /** {@code set 2.022 19881704}, {@code set 14.003@7 0}; {@code set all 14.005 ...} in each. */
  private static void set(Workpiece work, StepWords words) {
    if (words.word(0).equals("all")) {
      int field = number(words.word(1)).field();
      int type = number(words.word(1)).recordType();
      work.pieces()
          .replaceAll(
              piece ->
                  piece.record().type() == type ? piece.with(field, words.valueFrom(2)) : piece);
      return;
    }
    change(work, words, (piece, field) -> piece.with(field, words.valueFrom(1)));
  }

  /** Small letters instead of capitals. */
  private static void lower(Workpiece work, StepWords words) {
    change(
        work,
        words,
        (piece, field) ->
            piece.with(field, piece.subfields(field).get(0).get(0).toLowerCase(Locale.ROOT)));
  }

  private static void change(Workpiece work, StepWords words, Change change) {
    String word = words.word(0);
    int at = word.indexOf('@');
    FieldNumber number = number(at < 0 ? word : word.substring(0, at));
    String record = number.recordType() + (at < 0 ? "" : word.substring(at));
    work.change(record, piece -> change.apply(piece, number.field()));
  }

  private static FieldNumber number(String text) {
    int point = text.indexOf('.');
    return new FieldNumber(
        Integer.parseInt(text.substring(0, point)), Integer.parseInt(text.substring(point + 1)));
  }
}
