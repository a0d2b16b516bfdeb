package ridgeproof.corpus.fault;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.imagery.GrayImage;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

/**
 * A record on the bench.
 *
 * @param box position code that the clean record has; empty for a record without a print
 * @param image its pixels; empty for a record without a print
 */
record Piece(RecordDraft record, OptionalInt box, Optional<GrayImage> image) {

  private static final int WIDTH = 6;
  private static final int HEIGHT = 7;
  private static final int BINARY_IMAGE = 9;
  private static final int TAGGED_IMAGE = 999;
  private static final int BINARY_POSITION = 4;
  private static final int TAGGED_POSITION = 13;
  private static final String SUBFIELD = "\u001e";
  private static final String ITEM = "\u001f";

  boolean isPrint() {
    return box.isPresent();
  }

  private boolean isBinary() {
    return record.encoding() == Encoding.BINARY;
  }

  /** Another value, as many bytes wide in a binary record as the old one; its first value alone. */
  Piece with(int field, String value) {
    if (!isBinary()) {
      List<List<String>> subfields =
          Arrays.stream(value.split(SUBFIELD, -1))
              .map(subfield -> List.of(subfield.split(ITEM, -1)))
              .toList();
      return with(record.with(field, subfields));
    }
    FieldNumber number = new FieldNumber(record.type(), field);
    byte[] bytes = data(field).toArray();
    int width = field == BINARY_POSITION ? 1 : bytes.length;
    long left = Long.parseLong(value);
    for (int i = width - 1; i >= 0; i--) {
      bytes[i] = (byte) left;
      left >>>= 8;
    }
    return replacing(FieldDraft.binary(number, ByteSource.of(bytes)));
  }

  Piece without(int field) {
    return with(record.without(field));
  }

  /** The field once more, behind the first. */
  Piece doubled(int field) {
    List<FieldDraft> fields = new ArrayList<>();
    for (FieldDraft draft : record.fields()) {
      fields.add(draft);
      if (draft.number().field() == field) {
        fields.add(draft);
      }
    }
    return with(new RecordDraft(record.type(), record.encoding(), fields));
  }

  List<List<String>> subfields(int field) {
    return draft(field).subfields();
  }

  Piece withSubfields(int field, List<List<String>> subfields) {
    return with(record.with(field, subfields));
  }

  Piece withPosition(int position) {
    return with(isBinary() ? BINARY_POSITION : TAGGED_POSITION, Integer.toString(position));
  }

  ByteSource codestream() {
    return data(imageField());
  }

  Piece withCodestream(byte[] bytes) {
    FieldNumber number = new FieldNumber(record.type(), imageField());
    ByteSource source = ByteSource.of(bytes);
    return replacing(
        isBinary() ? FieldDraft.binary(number, source) : FieldDraft.data(number, source));
  }

  /** Other pixels and the size that goes with them, in this codestream. */
  Piece withImage(GrayImage other, byte[] bytes) {
    return new Piece(record, box, Optional.of(other))
        .with(WIDTH, Integer.toString(other.width()))
        .with(HEIGHT, Integer.toString(other.height()))
        .withCodestream(bytes);
  }

  /** The pixels, the size and the codestream of another piece in the box of this one. */
  Piece showing(Piece other) {
    return withImage(other.image().orElseThrow(), other.codestream().toArray());
  }

  int imageField() {
    return isBinary() ? BINARY_IMAGE : TAGGED_IMAGE;
  }

  private ByteSource data(int field) {
    return draft(field).data().orElseThrow();
  }

  private FieldDraft draft(int field) {
    return record.fields().stream()
        .filter(draft -> draft.number().field() == field)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no field " + record.type() + "." + field));
  }

  private Piece replacing(FieldDraft changed) {
    List<FieldDraft> fields = new ArrayList<>();
    for (FieldDraft draft : record.fields()) {
      fields.add(draft.number().equals(changed.number()) ? changed : draft);
    }
    return with(new RecordDraft(record.type(), record.encoding(), fields));
  }

  private Piece with(RecordDraft other) {
    return new Piece(other, box, image);
  }
}
