package ridgeproof.archive.store;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.Path;
import org.apache.parquet.hadoop.ParquetWriter;
import org.apache.parquet.hadoop.api.WriteSupport;
import org.apache.parquet.hadoop.metadata.CompressionCodecName;
import org.apache.parquet.hadoop.util.HadoopOutputFile;
import org.apache.parquet.io.LocalOutputFile;
import org.apache.parquet.io.OutputFile;
import org.apache.parquet.io.api.Binary;
import org.apache.parquet.io.api.RecordConsumer;
import org.apache.parquet.schema.LogicalTypeAnnotation;
import org.apache.parquet.schema.LogicalTypeAnnotation.TimeUnit;
import org.apache.parquet.schema.MessageType;
import org.apache.parquet.schema.PrimitiveType.PrimitiveTypeName;
import org.apache.parquet.schema.Type;
import org.apache.parquet.schema.Types;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.types.ArrayType;
import org.apache.spark.sql.types.BooleanType;
import org.apache.spark.sql.types.DataType;
import org.apache.spark.sql.types.DoubleType;
import org.apache.spark.sql.types.IntegerType;
import org.apache.spark.sql.types.LongType;
import org.apache.spark.sql.types.StringType;
import org.apache.spark.sql.types.StructField;
import org.apache.spark.sql.types.TimestampType;
import ridgeproof.archive.local.ArchiveFileSystem;

/**
 * Writes rows of a table to one Parquet file, without its day, which the folder tells. Without SQL,
 * whose compiled queries cost more than the examination of some thousand files.
 */
public final class TableWriter {

  private TableWriter() {}

  /**
   * Opens a file.
   *
   * @throws IOException if it is there already
   */
  public static ParquetWriter<Row> open(ArchiveTable table, Path path, Configuration configuration)
      throws IOException {
    return new Builder(file(path, configuration), table)
        .withConf(configuration)
        .withCompressionCodec(CompressionCodecName.ZSTD)
        .build();
  }

  private static OutputFile file(Path path, Configuration configuration) throws IOException {
    if (!ArchiveFileSystem.isLocal(path)) {
      return HadoopOutputFile.fromPath(path, configuration);
    }
    java.nio.file.Path file = ArchiveFileSystem.local(path);
    Files.createDirectories(file.getParent());
    return new LocalOutputFile(file);
  }

  private static final class Builder extends ParquetWriter.Builder<Row, Builder> {

    private final ArchiveTable table;

    Builder(OutputFile file, ArchiveTable table) {
      super(file);
      this.table = table;
    }

    @Override
    protected Builder self() {
      return this;
    }

    @Override
    protected WriteSupport<Row> getWriteSupport(Configuration configuration) {
      return new Rows(table);
    }
  }

  private static final class Rows extends WriteSupport<Row> {

    private final MessageType schema;
    private final DataType[] types;
    private RecordConsumer out;

    Rows(ArchiveTable table) {
      StructField[] fields = table.schema().fields();
      types = new DataType[fields.length - 1];
      Type[] columns = new Type[types.length];
      for (int i = 0; i < types.length; i++) {
        types[i] = fields[i].dataType();
        columns[i] = column(fields[i].name(), types[i]);
      }
      schema = new MessageType(table.folder(), columns);
    }

    private static Type column(String name, DataType type) {
      if (type instanceof StringType) {
        return Types.optional(PrimitiveTypeName.BINARY)
            .as(LogicalTypeAnnotation.stringType())
            .named(name);
      } else if (type instanceof IntegerType) {
        return Types.optional(PrimitiveTypeName.INT32).named(name);
      } else if (type instanceof LongType) {
        return Types.optional(PrimitiveTypeName.INT64).named(name);
      } else if (type instanceof BooleanType) {
        return Types.optional(PrimitiveTypeName.BOOLEAN).named(name);
      } else if (type instanceof DoubleType) {
        return Types.optional(PrimitiveTypeName.DOUBLE).named(name);
      } else if (type instanceof TimestampType) {
        return Types.optional(PrimitiveTypeName.INT64)
            .as(LogicalTypeAnnotation.timestampType(true, TimeUnit.MICROS))
            .named(name);
      } else if (type instanceof ArrayType) {
        return Types.optionalList().requiredElement(PrimitiveTypeName.INT32).named(name);
      }
      throw new IllegalArgumentException("no column of an archive has the type " + type);
    }

    @Override
    public WriteContext init(Configuration configuration) {
      Map<String, String> notes = new HashMap<>();
      return new WriteContext(schema, notes);
    }

    @Override
    public void prepareForWrite(RecordConsumer consumer) {
      out = consumer;
    }

    @Override
    public void write(Row row) {
      out.startMessage();
      for (int i = 0; i < types.length; i++) {
        Object value = row.get(i);
        if (value != null) {
          String name = schema.getFieldName(i);
          out.startField(name, i);
          write(types[i], value);
          out.endField(name, i);
        }
      }
      out.endMessage();
    }

    private void write(DataType type, Object value) {
      if (type instanceof StringType) {
        out.addBinary(Binary.fromString((String) value));
      } else if (type instanceof IntegerType) {
        out.addInteger((Integer) value);
      } else if (type instanceof LongType) {
        out.addLong((Long) value);
      } else if (type instanceof BooleanType) {
        out.addBoolean((Boolean) value);
      } else if (type instanceof DoubleType) {
        out.addDouble((Double) value);
      } else if (type instanceof TimestampType) {
        out.addLong(RowCodec.micros((Instant) value));
      } else {
        list((Integer[]) value);
      }
    }

    private void list(Integer[] numbers) {
      out.startGroup();
      if (numbers.length > 0) {
        out.startField("list", 0);
        for (Integer number : numbers) {
          out.startGroup();
          out.startField("element", 0);
          out.addInteger(number);
          out.endField("element", 0);
          out.endGroup();
        }
        out.endField("list", 0);
      }
      out.endGroup();
    }
  }
}
