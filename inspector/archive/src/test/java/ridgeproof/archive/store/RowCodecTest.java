package ridgeproof.archive.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import org.junit.jupiter.api.Test;

/** Between two steps of a batch no value of a row changes. */
class RowCodecTest {

  private static final StructType SCHEMA =
      new StructType()
          .add("text", DataTypes.StringType)
          .add("int", DataTypes.IntegerType)
          .add("long", DataTypes.LongType)
          .add("boolean", DataTypes.BooleanType)
          .add("double", DataTypes.DoubleType)
          .add("time", DataTypes.TimestampType)
          .add("list", DataTypes.createArrayType(DataTypes.IntegerType, false))
          .add("day", DataTypes.DateType);

  private static Row copy(Row row) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    RowCodec.write(SCHEMA, row, new DataOutputStream(bytes));
    ByteArrayInputStream in = new ByteArrayInputStream(bytes.toByteArray());
    Row copy = RowCodec.read(SCHEMA, new DataInputStream(in));
    assertEquals(0, in.available(), "all bytes are read");
    return copy;
  }

  @Test
  void everyTypeOfColumnComesBack() throws IOException {
    Row row =
        RowFactory.create(
            "Größe \uD83D\uDEA2 " + "x".repeat(70_000),
            -1,
            Long.MIN_VALUE,
            true,
            0.1,
            // Before 1970, so that the fraction counts upward from the second below.
            Instant.parse("1969-12-31T23:59:58.000001Z"),
            new Integer[] {1, 99},
            LocalDate.of(1969, 12, 31));
    Row copy = copy(row);
    for (int i = 0; i < SCHEMA.size(); i++) {
      if (row.get(i) instanceof Integer[] list) {
        assertArrayEquals(list, (Integer[]) copy.get(i));
      } else {
        assertEquals(row.get(i), copy.get(i), SCHEMA.fieldNames()[i]);
      }
    }
  }

  @Test
  void whatIsMissingStaysMissing() throws IOException {
    Row copy = copy(RowFactory.create(new Object[SCHEMA.size()]));
    for (int i = 0; i < SCHEMA.size(); i++) {
      assertNull(copy.get(i), SCHEMA.fieldNames()[i]);
    }
  }
}
