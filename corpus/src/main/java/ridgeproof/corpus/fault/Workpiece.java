package ridgeproof.corpus.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import ridgeproof.corpus.composition.CapturedPrint;
import ridgeproof.corpus.composition.DraftedTransaction;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

/**
 * A clean file on the bench: records at first, bytes of the traditional encoding from the first
 * step that asks for them, the file as it is sent from the first step that befalls it as a whole.
 */
final class Workpiece {

  private final FaultComposer composer;
  private final Scenario scenario;
  private final List<Piece> pieces;
  private Optional<byte[]> finished = Optional.empty();
  private boolean sent;

  Workpiece(FaultComposer composer, DraftedTransaction draft) {
    this.composer = composer;
    this.scenario = draft.scenario();
    this.pieces = new ArrayList<>(pieces(draft));
  }

  private static List<Piece> pieces(DraftedTransaction draft) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < draft.records().size(); i++) {
      RecordDraft record = draft.records().get(i);
      int print = i - DraftedTransaction.RECORDS_BEFORE_PRINTS;
      if (print >= 0 && print < draft.prints().size()) {
        CapturedPrint taken = draft.prints().get(print);
        pieces.add(
            new Piece(
                record, OptionalInt.of(taken.box()), Optional.of(taken.impression().image())));
      } else {
        pieces.add(new Piece(record, OptionalInt.empty(), Optional.empty()));
      }
    }
    return pieces;
  }

  /** The pieces of the clean file of that name. */
  List<Piece> clean(String base) {
    return pieces(composer.draft(base));
  }

  FaultComposer composer() {
    return composer;
  }

  Scenario scenario() {
    return scenario;
  }

  List<Piece> pieces() {
    if (finished.isPresent()) {
      throw new IllegalStateException("the file is finished: records cannot be changed any more");
    }
    return pieces;
  }

  /** The print of a box. */
  Piece box(int box) {
    return pieces().get(indexOf(piece -> piece.box().equals(OptionalInt.of(box)), "box " + box));
  }

  void changeBox(int box, UnaryOperator<Piece> change) {
    change(piece -> piece.box().equals(OptionalInt.of(box)), "box " + box, change);
  }

  /**
   * The first record that is named: {@code 2}, the first of type 2; {@code 14@7}, that of box 7;
   * {@code #5}, the fifth of the file.
   */
  void change(String record, UnaryOperator<Piece> change) {
    int index = place(record);
    pieces().set(index, change.apply(pieces.get(index)));
  }

  /** Where that record stands, from 0. */
  int place(String record) {
    if (record.startsWith("#")) {
      return Integer.parseInt(record.substring(1)) - 1;
    }
    int at = record.indexOf('@');
    int type = Integer.parseInt(at < 0 ? record : record.substring(0, at));
    OptionalInt box =
        at < 0 ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(record.substring(at + 1)));
    return indexOf(
        piece -> piece.record().type() == type && (box.isEmpty() || piece.box().equals(box)),
        "record " + record);
  }

  private void change(Predicate<Piece> which, String name, UnaryOperator<Piece> change) {
    int index = indexOf(which, name);
    pieces().set(index, change.apply(pieces.get(index)));
  }

  private int indexOf(Predicate<Piece> which, String name) {
    for (int i = 0; i < pieces.size(); i++) {
      if (which.test(pieces.get(i))) {
        return i;
      }
    }
    throw new IllegalArgumentException("no " + name);
  }

  /** The file in the traditional encoding; records cannot be changed after it was asked for. */
  byte[] bytes() {
    if (sent) {
      throw new IllegalStateException("the file is sent: its records cannot be changed any more");
    }
    return written();
  }

  /** The file in the encoding that it is sent in; only the whole can be changed from here on. */
  byte[] file() {
    if (!sent) {
      finished = Optional.of(composer.encoded(written()));
      sent = true;
    }
    return written();
  }

  private byte[] written() {
    if (finished.isEmpty()) {
      List<RecordDraft> records = pieces.stream().map(Piece::record).toList();
      finished = Optional.of(new TransactionWriter(CharacterEncoding.ASCII).write(records));
    }
    return finished.get();
  }

  void setBytes(byte[] bytes) {
    finished = Optional.of(bytes);
  }
}
