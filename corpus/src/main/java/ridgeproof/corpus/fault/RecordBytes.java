package ridgeproof.corpus.fault;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;

/** Bytes of one record of the finished file; its length is not changed with them. */
final class RecordBytes {

  private static final SpecTables TABLES = SpecTables.open();

  private RecordBytes() {}

  /**
   * {@code length 2 +1}: LEN says so many bytes more or less; {@code length 2 =0}: it says that.
   */
  static void length(Workpiece work, StepWords words) {
    LogicalRecord record = record(work, words.word(0));
    Field field = record.field(1).orElseThrow();
    byte[] file = work.bytes();
    String word = words.word(1);
    long old = Long.parseLong(field.text());
    if (record.encoding() == Encoding.BINARY) {
      long length = word.startsWith("=") ? Long.parseLong(word.substring(1)) : old + number(word);
      byte[] value = new byte[4];
      for (int i = 0; i < 4; i++) {
        value[i] = (byte) (length >>> 8 * (3 - i));
      }
      work.setBytes(spliced(file, field.value(), value));
      return;
    }
    String changed = word.startsWith("=") ? word.substring(1) : Long.toString(old + number(word));
    work.setBytes(spliced(file, field.value(), ascii(changed)));
  }

  private static int number(String word) {
    return Integer.parseInt(word.startsWith("+") ? word.substring(1) : word);
  }

  /** {@code separator 2.020 drop}: the byte before the field; or two hexadecimal digits for it. */
  static void separator(Workpiece work, StepWords words) {
    Field field = field(work, words.word(0));
    ByteRange before = new ByteRange(field.range().offset() - 1, 1);
    work.setBytes(spliced(work.bytes(), before, given(words.word(1))));
  }

  /** {@code record-end 2 drop}: the byte that ends the record; or two hexadecimal digits. */
  static void recordEnd(Workpiece work, StepWords words) {
    ByteRange range = record(work, words.word(0)).range();
    work.setBytes(spliced(work.bytes(), new ByteRange(range.end() - 1, 1), given(words.word(1))));
  }

  private static byte[] given(String word) {
    return word.equals("drop") ? new byte[0] : HexFormat.of().parseHex(word);
  }

  /** {@code raw-value 1.003 ...}: typed over a value that the writer computes; LEN follows. */
  static void rawValue(Workpiece work, StepWords words) {
    Field field = field(work, words.word(0));
    byte[] value = words.valueFrom(1).getBytes(StandardCharsets.ISO_8859_1);
    work.setBytes(spliced(work.bytes(), field.value(), value));
    int by = value.length - field.value().length();
    Field length =
        record(work, Integer.toString(field.number().recordType())).field(1).orElseThrow();
    int old = Integer.parseInt(length.text());
    int other = old + by;
    other += Integer.toString(other).length() - length.text().length();
    work.setBytes(spliced(work.bytes(), length.value(), ascii(Integer.toString(other))));
  }

  /** {@code record-bytes 4@3 end 0d0a}: bytes that nobody asked for, behind the record. */
  static void insert(Workpiece work, StepWords words) {
    ByteRange range = record(work, words.word(0)).range();
    int at = words.word(1).equals("end") ? range.end() : range.offset();
    work.setBytes(
        spliced(work.bytes(), new ByteRange(at, 0), HexFormat.of().parseHex(words.word(2))));
  }

  /** {@code swap-records #3 #4}: CNT keeps the old order. */
  static void swapRecords(Workpiece work, StepWords words) {
    ByteRange one = record(work, words.word(0)).range();
    ByteRange other = record(work, words.word(1)).range();
    byte[] file = work.bytes();
    work.setBytes(
        ImageVerbs.joined(
            Arrays.copyOf(file, one.offset()),
            part(file, other),
            Arrays.copyOfRange(file, one.end(), other.offset()),
            part(file, one),
            Arrays.copyOfRange(file, other.end(), file.length)));
  }

  /** {@code lose-record 4@7}: CNT still lists it. */
  static void loseRecord(Workpiece work, StepWords words) {
    work.setBytes(spliced(work.bytes(), record(work, words.word(0)).range(), new byte[0]));
  }

  /** {@code element-twice 2.022}: of a file in XML, the element of a field once more. */
  static void elementTwice(Workpiece work, StepWords words) {
    byte[] file = work.file();
    List<LogicalRecord> records = records(file);
    ByteRange element = field(records, work, words.word(0)).range();
    work.setBytes(spliced(file, new ByteRange(element.end(), 0), part(file, element)));
  }

  private static byte[] part(byte[] file, ByteRange range) {
    return Arrays.copyOfRange(file, range.offset(), range.end());
  }

  private static byte[] spliced(byte[] file, ByteRange range, byte[] value) {
    return ImageVerbs.joined(
        Arrays.copyOf(file, range.offset()),
        value,
        Arrays.copyOfRange(file, range.end(), file.length));
  }

  private static Field field(Workpiece work, String word) {
    return field(records(work.bytes()), work, word);
  }

  private static Field field(List<LogicalRecord> records, Workpiece work, String word) {
    int at = word.indexOf('@');
    String number = at < 0 ? word : word.substring(0, at);
    int point = number.indexOf('.');
    String type = number.substring(0, point);
    int field = Integer.parseInt(number.substring(point + 1));
    return records
        .get(work.place(type + (at < 0 ? "" : word.substring(at))))
        .field(new FieldNumber(Integer.parseInt(type), field))
        .orElseThrow(() -> new IllegalArgumentException("no field " + word));
  }

  private static LogicalRecord record(Workpiece work, String name) {
    return records(work.bytes()).get(work.place(name));
  }

  private static List<LogicalRecord> records(byte[] file) {
    return new TransactionReader(TABLES, ParseLimits.standard())
        .read(ByteSource.of(file))
        .records();
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
