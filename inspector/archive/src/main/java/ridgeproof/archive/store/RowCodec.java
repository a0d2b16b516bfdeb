package ridgeproof.archive.store;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.ArrayType;
import org.apache.spark.sql.types.BooleanType;
import org.apache.spark.sql.types.DataType;
import org.apache.spark.sql.types.DateType;
import org.apache.spark.sql.types.DoubleType;
import org.apache.spark.sql.types.IntegerType;
import org.apache.spark.sql.types.LongType;
import org.apache.spark.sql.types.StringType;
import org.apache.spark.sql.types.StructField;
import org.apache.spark.sql.types.StructType;
import org.apache.spark.sql.types.TimestampType;

/** Rows as bytes between two steps of a batch. */
public final class RowCodec {

  private RowCodec() {}

  /** Writes a row with the columns of a schema. */
  public static void write(StructType schema, Row row, DataOutput out) throws IOException {
    StructField[] fields = schema.fields();
    for (int i = 0; i < fields.length; i++) {
      Object value = row.get(i);
      out.writeBoolean(value != null);
      if (value != null) {
        write(fields[i].dataType(), value, out);
      }
    }
  }

  private static void write(DataType type, Object value, DataOutput out) throws IOException {
    if (type instanceof StringType) {
      byte[] bytes = ((String) value).getBytes(StandardCharsets.UTF_8);
      out.writeInt(bytes.length);
      out.write(bytes);
    } else if (type instanceof IntegerType) {
      out.writeInt((Integer) value);
    } else if (type instanceof LongType) {
      out.writeLong((Long) value);
    } else if (type instanceof BooleanType) {
      out.writeBoolean((Boolean) value);
    } else if (type instanceof DoubleType) {
      out.writeDouble((Double) value);
    } else if (type instanceof TimestampType) {
      out.writeLong(micros((Instant) value));
    } else if (type instanceof DateType) {
      out.writeLong(((LocalDate) value).toEpochDay());
    } else if (type instanceof ArrayType) {
      Integer[] numbers = (Integer[]) value;
      out.writeInt(numbers.length);
      for (Integer number : numbers) {
        out.writeInt(number);
      }
    } else {
      throw new IllegalArgumentException("no column of an archive has the type " + type);
    }
  }

  /** Reads a row that {@link #write} has written. */
  public static Row read(StructType schema, DataInput in) throws IOException {
    StructField[] fields = schema.fields();
    Object[] values = new Object[fields.length];
    for (int i = 0; i < fields.length; i++) {
      values[i] = in.readBoolean() ? read(fields[i].dataType(), in) : null;
    }
    return RowFactory.create(values);
  }

  private static Object read(DataType type, DataInput in) throws IOException {
    if (type instanceof StringType) {
      byte[] bytes = new byte[in.readInt()];
      in.readFully(bytes);
      return new String(bytes, StandardCharsets.UTF_8);
    } else if (type instanceof IntegerType) {
      return in.readInt();
    } else if (type instanceof LongType) {
      return in.readLong();
    } else if (type instanceof BooleanType) {
      return in.readBoolean();
    } else if (type instanceof DoubleType) {
      return in.readDouble();
    } else if (type instanceof TimestampType) {
      return Instant.EPOCH.plus(in.readLong(), ChronoUnit.MICROS);
    } else if (type instanceof DateType) {
      return LocalDate.ofEpochDay(in.readLong());
    } else if (type instanceof ArrayType) {
      Integer[] numbers = new Integer[in.readInt()];
      for (int i = 0; i < numbers.length; i++) {
        numbers[i] = in.readInt();
      }
      return numbers;
    }
    throw new IllegalArgumentException("no column of an archive has the type " + type);
  }

  /** Microseconds since 1970-01-01 in UTC. */
  static long micros(Instant time) {
    return ChronoUnit.MICROS.between(Instant.EPOCH, time);
  }
}
