package ridgeproof.archive.examining;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import ridgeproof.archive.store.ArchiveTable;
import ridgeproof.archive.store.RowCodec;

/**
 * What a task makes of one input, as rows of the tables.
 *
 * @param row of {@code files}, or of {@code quarantine}
 * @param findings empty unless it was examined
 * @param fingers empty unless it was examined
 */
public record FileResult(Kind kind, Row row, List<Row> findings, List<Row> fingers) {

  /** What became of an input. */
  public enum Kind {
    /** It was examined. */
    EXAMINED,
    /** The archive has its bytes; its row lacks what was found then. */
    REPEAT,
    /** It has no result. */
    QUARANTINE;

    public ArchiveTable table() {
      return this == QUARANTINE ? ArchiveTable.QUARANTINE : ArchiveTable.FILES;
    }
  }

  private static final Kind[] KINDS = Kind.values();

  static FileResult examined(Row file, List<Row> findings, List<Row> fingers) {
    return new FileResult(Kind.EXAMINED, file, findings, fingers);
  }

  /** The verdict and the day are copied later from the row that has them. */
  static FileResult repeat(InputFacts input, Instant examined, LocalDate today) {
    Object[] file = new Object[ArchiveTable.FILES.schema().size()];
    file[0] = input.hash();
    file[1] = input.fileHash();
    file[2] = input.bytes();
    file[3] = input.modified();
    file[ArchiveTable.REPEAT] = true;
    file[file.length - 2] = examined;
    file[file.length - 1] = today;
    return repeat(RowFactory.create(file));
  }

  /** A row of {@code files} for bytes that another row has the findings of. */
  public static FileResult repeat(Row file) {
    return new FileResult(Kind.REPEAT, file, List.of(), List.of());
  }

  static FileResult quarantine(
      InputFacts input,
      Reason reason,
      String detail,
      String program,
      Instant examined,
      LocalDate day) {
    Row row =
        RowFactory.create(
            input.hash(),
            input.fileHash(),
            input.bytes(),
            input.modified(),
            reason.name(),
            detail,
            program,
            examined,
            day);
    return new FileResult(Kind.QUARANTINE, row, List.of(), List.of());
  }

  /** By what results are put in order. */
  public ResultKey key() {
    LocalDate day = row.getAs(kind.table().schema().size() - 1);
    String hash = row.getString(1);
    return new ResultKey(day.toEpochDay(), hash == null ? "" : hash, row.getString(0));
  }

  /** For {@link #of}. */
  public byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1024);
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      out.writeByte(kind.ordinal());
      RowCodec.write(kind.table().schema(), row, out);
      write(ArchiveTable.FINDINGS, findings, out);
      write(ArchiveTable.FINGERS, fingers, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static void write(ArchiveTable table, List<Row> rows, DataOutputStream out)
      throws IOException {
    out.writeInt(rows.size());
    for (Row row : rows) {
      RowCodec.write(table.schema(), row, out);
    }
  }

  /** Whether the bytes are of a file that the archive has. */
  public static boolean isRepeat(byte[] bytes) {
    return KINDS[bytes[0]] == Kind.REPEAT;
  }

  /** What {@link #bytes} has written. */
  public static FileResult of(byte[] bytes) {
    try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      Kind kind = KINDS[in.readByte()];
      return new FileResult(
          kind,
          RowCodec.read(kind.table().schema(), in),
          read(ArchiveTable.FINDINGS, in),
          read(ArchiveTable.FINGERS, in));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Row> read(ArchiveTable table, DataInputStream in) throws IOException {
    int size = in.readInt();
    List<Row> rows = new ArrayList<>(size);
    for (int i = 0; i < size; i++) {
      rows.add(RowCodec.read(table.schema(), in));
    }
    return rows;
  }

  /**
   * What is known of an input before its examination.
   *
   * @param hash keyed hash of its address, length and date
   * @param fileHash null where it was not read
   */
  record InputFacts(String hash, String fileHash, long bytes, Instant modified) {}
}
