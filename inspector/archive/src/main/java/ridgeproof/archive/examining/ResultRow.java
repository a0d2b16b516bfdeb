package ridgeproof.archive.examining;

import static org.apache.spark.sql.types.DataTypes.createArrayType;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import ridgeproof.archive.store.ArchiveTable;

/** What a task writes for one input: exactly one of the three, with what belongs to it. */
public final class ResultRow {

  /** A file that was examined, with its findings and fingers. */
  public static final String EXAMINED = "examined";

  /** A file whose bytes the archive has. */
  public static final String REPEAT = "repeat";

  /** A file without a result. */
  public static final String QUARANTINE = "quarantine";

  /** Of all results. */
  public static final StructType SCHEMA =
      new StructType()
          .add("kind", DataTypes.StringType)
          .add("file", ArchiveTable.FILES.schema())
          .add("findings", createArrayType(ArchiveTable.FINDINGS.schema(), false))
          .add("fingers", createArrayType(ArchiveTable.FINGERS.schema(), false))
          .add("quarantine", ArchiveTable.QUARANTINE.schema());

  private ResultRow() {}

  static Row examined(Row file, List<Row> findings, List<Row> fingers) {
    return RowFactory.create(
        EXAMINED, file, findings.toArray(Row[]::new), fingers.toArray(Row[]::new), null);
  }

  /** The verdict is copied later from the row that has it. */
  static Row repeat(InputFacts input, Instant examined) {
    Object[] file = new Object[ArchiveTable.FILES.schema().size()];
    file[0] = input.hash();
    file[1] = input.fileHash();
    file[2] = input.bytes();
    file[3] = input.modified();
    file[4] = true;
    file[file.length - 2] = examined;
    return RowFactory.create(REPEAT, RowFactory.create(file), new Row[0], new Row[0], null);
  }

  static Row quarantine(
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
    return RowFactory.create(QUARANTINE, null, new Row[0], new Row[0], row);
  }

  /**
   * What is known of an input before its examination.
   *
   * @param hash keyed hash of its address, length and date
   * @param fileHash null where it was not read
   */
  record InputFacts(String hash, String fileHash, long bytes, Instant modified) {}
}
