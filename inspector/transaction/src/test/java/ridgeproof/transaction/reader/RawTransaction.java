package ridgeproof.transaction.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.transaction.Accounting;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.TransactionSamples;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.LogicalRecord;

/** Files put together byte by byte, each character a byte, and what reading them finds. */
final class RawTransaction {

  static final String FS = "\u001C";
  static final String GS = "\u001D";
  static final String RS = "\u001E";
  static final String US = "\u001F";

  /** Bytes of the numbers that lead a Type-4 record. */
  static final int HEADER = 18;

  private RawTransaction() {}

  /** A Type-1 record of the version 0500 that lists records, each as {@code "14 01"}. */
  static String header(String... entries) {
    StringBuilder contents = new StringBuilder("1.003:1" + US + entries.length);
    for (String entry : entries) {
      contents.append(RS).append(entry.replace(" ", US));
    }
    return tagged(1, "1.002:0500", contents.toString(), "1.004:FAUF");
  }

  /** A tagged record of these fields after LEN, which is right. */
  static String tagged(int type, String... fields) {
    int others = tagged("", type, fields).length();
    int length = others;
    while (length != others + Integer.toString(length).length()) {
      length++;
    }
    return tagged(Integer.toString(length), type, fields);
  }

  /** A tagged record with a LEN of its own. */
  static String tagged(String length, int type, String... fields) {
    return type + ".001:" + length + GS + String.join(GS, fields) + FS;
  }

  /** A Type-4 record of an uncompressed image, with the LEN that is right. */
  static String print(int idc, int width, int height, String pixels) {
    return number(4, HEADER + pixels.length())
        + bytes(idc, 1, 2, 255, 255, 255, 255, 255, 0)
        + number(2, width)
        + number(2, height)
        + bytes(0)
        + pixels;
  }

  /** A Type-4 record of 3 x 2 pixels whose image takes other bytes than these. */
  static String compressed(int idc, String image) {
    return print(idc, 3, 2, image);
  }

  static String withLength(long length, String binaryRecord) {
    return number(4, length) + binaryRecord.substring(4);
  }

  static String number(int width, long value) {
    StringBuilder text = new StringBuilder();
    for (int shift = 8 * (width - 1); shift >= 0; shift -= 8) {
      text.append((char) (value >>> shift & 0xFF));
    }
    return text.toString();
  }

  static String bytes(int... values) {
    StringBuilder text = new StringBuilder();
    for (int value : values) {
      text.append((char) value);
    }
    return text.toString();
  }

  static ByteSource source(String file) {
    return ByteSource.of(TransactionSamples.ascii(file));
  }

  static Transaction read(String file) {
    return read(file, ParseLimits.standard());
  }

  static Transaction read(String file, ParseLimits limits) {
    return read(source(file), limits);
  }

  static Transaction read(ByteSource source, ParseLimits limits) {
    Transaction transaction = new TransactionReader(TransactionSamples.TABLES, limits).read(source);
    Accounting.everyByteIsAccountedFor(transaction);
    transaction.unread().forEach(RawTransaction::isNotEmpty);
    for (LogicalRecord record : transaction.records()) {
      assertEquals(record.range(), record.bytes().range(), "bytes of record " + record.ordinal());
      record.unread().forEach(RawTransaction::isNotEmpty);
    }
    return transaction;
  }

  private static void isNotEmpty(ByteRange range) {
    assertFalse(range.length() == 0, "unread bytes that are none");
  }

  static List<Integer> types(Transaction transaction) {
    return transaction.records().stream().map(LogicalRecord::type).toList();
  }

  static List<String> findings(String file) {
    return findings(read(file));
  }

  /** Each as {@code RP-STR-004 record 2 field 2.001 at 87+2: LEN 99 | LEN 37}. */
  static List<String> findings(Transaction transaction) {
    return transaction.findings().stream().map(RawTransaction::line).toList();
  }

  private static String line(Finding finding) {
    Location place = finding.location();
    StringBuilder line = new StringBuilder(finding.ruleId());
    place.record().ifPresent(record -> line.append(" record ").append(record));
    place.field().ifPresent(field -> line.append(" field ").append(field));
    place.bytes().ifPresent(b -> line.append(" at ").append(b.offset() + "+" + b.length()));
    return line.append(": " + finding.observed().text() + " | " + finding.required()).toString();
  }

  /** The fields of a record, each with its bytes, as {@code 4.002 = 1 at 66+1}. */
  static List<String> fields(LogicalRecord record) {
    return record.fields().stream()
        .map(
            field ->
                field.number()
                    + (field.isData() ? "" : " = " + field.text())
                    + (" at " + field.value().offset() + "+" + field.value().length()))
        .toList();
  }
}
