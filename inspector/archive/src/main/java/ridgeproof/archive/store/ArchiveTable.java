package ridgeproof.archive.store;

import static org.apache.spark.sql.types.DataTypes.BooleanType;
import static org.apache.spark.sql.types.DataTypes.DateType;
import static org.apache.spark.sql.types.DataTypes.DoubleType;
import static org.apache.spark.sql.types.DataTypes.IntegerType;
import static org.apache.spark.sql.types.DataTypes.LongType;
import static org.apache.spark.sql.types.DataTypes.StringType;
import static org.apache.spark.sql.types.DataTypes.TimestampType;
import static org.apache.spark.sql.types.DataTypes.createArrayType;

import java.util.Locale;
import org.apache.spark.sql.types.StructType;

/** The tables of an archive; docs/archive.md says what each column means. */
public enum ArchiveTable {
  FILES(
      new StructType()
          .add("input", StringType)
          .add("file_hash", StringType)
          .add("bytes", LongType)
          .add("modified", TimestampType)
          .add("repeat", BooleanType)
          .add("verdict", StringType)
          .add("blocking", IntegerType)
          .add("likely", IntegerType)
          .add("advice", IntegerType)
          .add("note", IntegerType)
          .add("records", IntegerType)
          .add("images", IntegerType)
          .add("type", StringType)
          .add("xml", BooleanType)
          .add("standard", IntegerType)
          .add("control", StringType)
          .add("operator", StringType)
          .add("make", StringType)
          .add("model", StringType)
          .add("serial", StringType)
          .add("depth", StringType)
          .add("profile", StringType)
          .add("program", StringType)
          .add("tables", StringType)
          .add("examined", TimestampType)
          .add("day", DateType)),
  FINDINGS(
      new StructType()
          .add("file_hash", StringType)
          .add("number", IntegerType)
          .add("rule", StringType)
          .add("severity", StringType)
          .add("record", IntegerType)
          .add("record_type", IntegerType)
          .add("field", StringType)
          .add("subfield", IntegerType)
          .add("item", IntegerType)
          .add("position", IntegerType)
          .add("offset", LongType)
          .add("length", LongType)
          .add("places", IntegerType)
          .add("positions", createArrayType(IntegerType, false))
          .add("explains", IntegerType)
          .add("day", DateType)),
  FINGERS(
      new StructType()
          .add("file_hash", StringType)
          .add("record", IntegerType)
          .add("position", IntegerType)
          .add("finger", IntegerType)
          .add("rolled", BooleanType)
          .add("score", IntegerType)
          .add("image_hash", StringType)
          .add("encoder", StringType)
          .add("ground", DoubleType)
          .add("contrast", DoubleType)
          .add("ridge_period", DoubleType)
          .add("width", DoubleType)
          .add("unevenness", DoubleType)
          .add("ghost", DoubleType)
          .add("compression", DoubleType)
          .add("platen", StringType)
          .add("day", DateType)),
  QUARANTINE(
      new StructType()
          .add("input", StringType)
          .add("file_hash", StringType)
          .add("bytes", LongType)
          .add("modified", TimestampType)
          .add("reason", StringType)
          .add("detail", StringType)
          .add("program", StringType)
          .add("examined", TimestampType)
          .add("day", DateType));

  /** Of all four schemas; a change that breaks a reader raises it. */
  public static final int SCHEMA_VERSION = 1;

  /** A longer number is no position code and could be anything, so that no table holds it. */
  public static final int MAX_POSITION = 99;

  /** The place of the column {@code repeat} in {@code files}. */
  public static final int REPEAT = 4;

  private final StructType schema;

  ArchiveTable(StructType schema) {
    this.schema = schema;
  }

  /** The columns; the last is the day of the partition. */
  public StructType schema() {
    return schema;
  }

  /** The folder below the output, and the name in SQL. */
  public String folder() {
    return name().toLowerCase(Locale.ROOT);
  }
}
