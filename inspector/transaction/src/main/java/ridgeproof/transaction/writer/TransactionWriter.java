package ridgeproof.transaction.writer;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.record.Separator;

/** Writes transactions in the traditional encoding; LEN and CNT are computed. */
public final class TransactionWriter {

  private static final int LENGTH_FIELD = 1;
  private static final int CONTENTS_FIELD = 3;
  private static final int BINARY_LENGTH_BYTES = 4;

  private final CharacterEncoding encoding;

  public TransactionWriter(CharacterEncoding encoding) {
    this.encoding = encoding;
  }

  /** The bytes of a transaction that was read, with LEN and CNT as they should be. */
  public static byte[] write(Transaction transaction) {
    return new TransactionWriter(transaction.encoding())
        .write(transaction.records().stream().map(RecordDraft::of).toList());
  }

  /** The bytes of a transaction with these records, the Type-1 record first. */
  public byte[] write(List<RecordDraft> records) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (int i = 0; i < records.size(); i++) {
      RecordDraft record = i == 0 ? withContents(records) : records.get(i);
      switch (record.encoding()) {
        case TAGGED -> writeTagged(record, out);
        case BINARY -> writeBinary(record, out);
      }
    }
    return out.toByteArray();
  }

  private static RecordDraft withContents(List<RecordDraft> records) {
    List<List<String>> subfields = new ArrayList<>();
    subfields.add(List.of("1", Integer.toString(records.size() - 1)));
    for (RecordDraft record : records.subList(1, records.size())) {
      subfields.add(List.of(Integer.toString(record.type()), record.idcText()));
    }
    return records.get(0).with(CONTENTS_FIELD, subfields);
  }

  private void writeTagged(RecordDraft record, ByteArrayOutputStream out) {
    String lead = record.type() + ".001:";
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    for (FieldDraft field : record.fields()) {
      if (field.number().field() == LENGTH_FIELD) {
        lead = field.tag() + ":";
      } else {
        body.write(Separator.GS);
        body.writeBytes(encoding.encode(field.tag() + ":"));
        writeValue(field, body);
      }
    }
    body.write(Separator.FS);
    out.writeBytes(encoding.encode(lead + lengthWithItself(lead.length() + body.size())));
    out.writeBytes(body.toByteArray());
  }

  private void writeValue(FieldDraft field, ByteArrayOutputStream out) {
    if (field.data().isPresent()) {
      out.writeBytes(field.data().get().toArray());
      return;
    }
    String text =
        field.subfields().stream()
            .map(items -> String.join(String.valueOf((char) Separator.US), items))
            .collect(Collectors.joining(String.valueOf((char) Separator.RS)));
    out.writeBytes(encoding.encode(text));
  }

  private static void writeBinary(RecordDraft record, ByteArrayOutputStream out) {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    for (FieldDraft field : record.fields()) {
      if (field.number().field() != LENGTH_FIELD) {
        body.writeBytes(field.data().map(ByteSource::toArray).orElse(new byte[0]));
      }
    }
    long length = body.size() + (long) BINARY_LENGTH_BYTES;
    for (int shift = 24; shift >= 0; shift -= 8) {
      out.write((int) (length >>> shift));
    }
    out.writeBytes(body.toByteArray());
  }

  /** The length of a record whose other bytes are these many, its own digits counted in. */
  private static int lengthWithItself(int others) {
    int length = others;
    while (length != others + Integer.toString(length).length()) {
      length = others + Integer.toString(length).length();
    }
    return length;
  }
}
