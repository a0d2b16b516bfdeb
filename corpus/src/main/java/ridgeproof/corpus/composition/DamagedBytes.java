package ridgeproof.corpus.composition;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import ridgeproof.corpus.scenario.FileDamage;
import ridgeproof.corpus.scenario.ScenarioError;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.writer.RecordDraft;

/** A sound file in pieces, one a record, while damage is done to it. */
final class DamagedBytes {

  private static final int GS = 0x1D;
  private static final int FS = 0x1C;

  private final List<RecordDraft> records;
  private final List<byte[]> pieces = new ArrayList<>();

  /**
   * @param file as the writer wrote these records
   */
  DamagedBytes(byte[] file, List<RecordDraft> records) {
    this.records = records;
    int start = 0;
    for (RecordDraft record : records) {
      int length = length(file, start, record.encoding());
      pieces.add(Arrays.copyOfRange(file, start, start + length));
      start += length;
    }
  }

  private static int length(byte[] file, int start, Encoding encoding) {
    if (encoding == Encoding.BINARY) {
      return (file[start] & 0xFF) << 24
          | (file[start + 1] & 0xFF) << 16
          | (file[start + 2] & 0xFF) << 8
          | file[start + 3] & 0xFF;
    }
    return Integer.parseInt(lengthText(file, start));
  }

  private static String lengthText(byte[] file, int start) {
    String head = text(Arrays.copyOfRange(file, start, Math.min(file.length, start + 20)));
    return head.substring(head.indexOf(':') + 1, head.indexOf((char) GS));
  }

  byte[] after(List<FileDamage> damages) {
    for (FileDamage damage : damages) {
      int index = (damage.record() == 0 ? pieces.size() : damage.record()) - 1;
      switch (damage.kind()) {
        case LENGTH_OFF -> setLength(index, damage.by());
        case SEPARATOR_DROPPED -> dropSeparator(index, damage.field());
        case RECORDS_SWAPPED -> Collections.swap(pieces, index, damage.other() - 1);
        case TAIL_CUT -> cut(damage.bytes());
        case BYTES_ADDED ->
            pieces.add(
                "\r\n"
                    .repeat(damage.bytes())
                    .substring(0, damage.bytes())
                    .getBytes(StandardCharsets.US_ASCII));
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    pieces.forEach(out::writeBytes);
    return out.toByteArray();
  }

  private void setLength(int index, int by) {
    byte[] piece = pieces.get(index);
    if (records.get(index).encoding() == Encoding.BINARY) {
      int length = length(piece, 0, Encoding.BINARY) + by;
      for (int i = 0; i < 4; i++) {
        piece[i] = (byte) (length >>> 8 * (3 - i));
      }
      return;
    }
    String old = lengthText(piece, 0);
    String body = text(piece);
    int at = body.indexOf(':') + 1;
    String changed = Integer.toString(Integer.parseInt(old) + by);
    pieces.set(index, bytes(body.substring(0, at) + changed + body.substring(at + old.length())));
  }

  private void dropSeparator(int index, String field) {
    byte[] piece = pieces.get(index);
    String body = text(piece);
    int at = field.isEmpty() ? body.length() - 1 : body.indexOf((char) GS + field + ":");
    if (at < 0 || field.isEmpty() && piece[at] != FS) {
      throw new ScenarioError("record " + (index + 1) + " has no separator before " + field);
    }
    pieces.set(index, bytes(body.substring(0, at) + body.substring(at + 1)));
  }

  private void cut(int bytes) {
    int last = pieces.size() - 1;
    int left = Math.max(0, pieces.get(last).length - bytes);
    pieces.set(last, Arrays.copyOf(pieces.get(last), left));
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }
}
