package ridgeproof.corpus.composition;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

/** Collects the fields of one record of a type, in the order of writing. */
final class Drafts {

  private final int type;
  private final List<FieldDraft> fields = new ArrayList<>();

  private Drafts(int type) {
    this.type = type;
  }

  /** A tagged record with the IDC given; the Type-1 record has none and passes a negative one. */
  static Drafts tagged(int type, int idc) {
    Drafts drafts = new Drafts(type).text(1, "");
    return idc < 0 ? drafts : drafts.text(2, String.format(Locale.ROOT, "%02d", idc));
  }

  static Drafts binary(int type, int idc) {
    return new Drafts(type).number(1, 4, 0).number(2, 1, idc);
  }

  Drafts text(int field, String value) {
    fields.add(FieldDraft.text(new FieldNumber(type, field), value));
    return this;
  }

  Drafts text(int field, int value) {
    return text(field, Integer.toString(value));
  }

  /** Subfields of items. */
  Drafts items(int field, List<List<String>> subfields) {
    fields.add(FieldDraft.text(new FieldNumber(type, field), subfields));
    return this;
  }

  Drafts number(int field, int width, long... values) {
    fields.add(FieldDraft.binary(new FieldNumber(type, field), width, values));
    return this;
  }

  RecordDraft endingIn(int field, byte[] data) {
    FieldNumber number = new FieldNumber(type, field);
    if (fields.get(0).tag().isEmpty()) {
      fields.add(FieldDraft.binary(number, ByteSource.of(data)));
      return RecordDraft.binary(type, fields);
    }
    fields.add(FieldDraft.data(number, ByteSource.of(data)));
    return RecordDraft.tagged(type, fields);
  }

  RecordDraft asTagged() {
    return RecordDraft.tagged(type, fields);
  }
}
