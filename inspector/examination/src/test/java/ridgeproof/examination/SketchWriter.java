package ridgeproof.examination;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

/** Writes sketched records as a transaction. */
final class SketchWriter {

  private static final String GS = "\u001d";
  private static final String FS = "\u001c";
  private static final String RS = "\u001e";
  private static final String US = "\u001f";
  private static final int BYTES_OF_LENGTH = 4;

  private final SpecTables tables;

  SketchWriter(SpecTables tables) {
    this.tables = tables;
  }

  /** The bytes, with lengths and contents as they should be. */
  byte[] write(List<Sketch> sketches) {
    return new TransactionWriter(CharacterEncoding.ASCII)
        .write(sketches.stream().map(this::draft).toList());
  }

  private RecordDraft draft(Sketch sketch) {
    List<FieldDraft> fields = new ArrayList<>();
    for (Map.Entry<Integer, List<List<String>>> entry : sketch.fields().entrySet()) {
      fields.add(field(sketch, new FieldNumber(sketch.type(), entry.getKey()), entry.getValue()));
    }
    return new RecordDraft(sketch.type(), encoding(sketch.type()), fields);
  }

  private Encoding encoding(int type) {
    return tables.recordType(type).orElseThrow().encoding();
  }

  private FieldDraft field(Sketch sketch, FieldNumber number, List<List<String>> subfields) {
    boolean binary = encoding(sketch.type()) == Encoding.BINARY;
    boolean data =
        tables
            .recordType(sketch.type())
            .orElseThrow()
            .imageField()
            .filter(number::equals)
            .isPresent();
    if (data) {
      ByteSource bytes = ByteSource.of(subfields.get(0).get(0).getBytes(StandardCharsets.US_ASCII));
      return binary ? FieldDraft.binary(number, bytes) : FieldDraft.data(number, bytes);
    }
    if (!binary) {
      return FieldDraft.text(number, subfields);
    }
    int width =
        tables
            .layout(sketch.type())
            .field(number, sketch.version())
            .orElseThrow()
            .bytes()
            .orElse(BYTES_OF_LENGTH);
    return FieldDraft.binary(
        number, width, subfields.stream().mapToLong(s -> Long.parseLong(s.get(0))).toArray());
  }

  /** The bytes with what the last record says of its own length, right or wrong. */
  static byte[] withLength(byte[] bytes, Sketch last) {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    String tag = last.type() + ".001:";
    int from = last.type() == 1 ? tag.length() : text.lastIndexOf(tag) + tag.length();
    int end = Math.min(indexOf(text, GS, from), indexOf(text, FS, from));
    return (text.substring(0, from) + value(last.fields().get(1)) + text.substring(end))
        .getBytes(StandardCharsets.ISO_8859_1);
  }

  /** The bytes with these contents (CNT), right or wrong, or without any. */
  static byte[] withContents(byte[] bytes, Optional<List<List<String>>> contents) {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    int from = text.indexOf(GS + "1.003:");
    int end = indexOf(text, GS, from + 1);
    String field = contents.map(subfields -> GS + "1.003:" + value(subfields)).orElse("");
    String changed = text.substring(0, from) + field + text.substring(end);
    int length = indexOf(changed, FS, 0) + 1;
    String tag = "1.001:";
    String others = changed.substring(indexOf(changed, GS, 0));
    int bodyLength = length - indexOf(changed, GS, 0) + tag.length();
    int whole = bodyLength;
    while (whole != bodyLength + Integer.toString(whole).length()) {
      whole = bodyLength + Integer.toString(whole).length();
    }
    return (tag + whole + others).getBytes(StandardCharsets.ISO_8859_1);
  }

  private static int indexOf(String text, String separator, int from) {
    int found = text.indexOf(separator, from);
    return found < 0 ? text.length() : found;
  }

  private static String value(List<List<String>> subfields) {
    return String.join(RS, subfields.stream().map(items -> String.join(US, items)).toList());
  }
}
