package ridgeproof.archive.writing;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.Path;
import org.apache.parquet.hadoop.ParquetWriter;
import org.apache.spark.sql.Row;
import ridgeproof.archive.store.ArchiveTable;
import ridgeproof.archive.store.TableWriter;

/** The files of the tables of one day after the other; those of one day are open at a time. */
final class DayFiles implements AutoCloseable {

  private final Path stage;
  private final String name;
  private final Configuration configuration;
  private final Map<ArchiveTable, ParquetWriter<Row>> open = new EnumMap<>(ArchiveTable.class);
  private final List<String> files = new ArrayList<>();
  private long day = Long.MIN_VALUE;

  /**
   * @param name of the files, which no other task and no other batch uses
   */
  DayFiles(Path stage, String name, Configuration configuration) {
    this.stage = stage;
    this.name = name;
    this.configuration = configuration;
  }

  /** Closes the files of the day before. */
  void turnTo(long next) throws IOException {
    if (next != day) {
      close();
      day = next;
    }
  }

  void write(ArchiveTable table, Row row) throws IOException {
    ParquetWriter<Row> writer = open.get(table);
    if (writer == null) {
      String file =
          table.folder() + "/day=" + LocalDate.ofEpochDay(day) + "/" + name + ".zstd.parquet";
      writer = TableWriter.open(table, new Path(stage, file), configuration);
      open.put(table, writer);
      files.add(file);
    }
    writer.write(row);
  }

  /** All that were opened; they are whole after {@link #close}. */
  List<String> names() {
    return List.copyOf(files);
  }

  @Override
  public void close() throws IOException {
    for (ParquetWriter<Row> writer : open.values()) {
      writer.close();
    }
    open.clear();
  }
}
