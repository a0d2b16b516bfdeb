package ridgeproof.archive.store;

import java.io.IOException;
import java.io.Serializable;
import java.util.Iterator;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.Path;
import org.apache.parquet.example.data.Group;
import org.apache.parquet.hadoop.ParquetReader;
import org.apache.parquet.hadoop.api.ReadSupport;
import org.apache.parquet.hadoop.example.GroupReadSupport;

/**
 * What rows of an archive know again.
 *
 * @param inputs keyed hashes of inputs
 * @param contents hashes of files
 */
public record KnownRows(KnownHashes inputs, KnownHashes contents) implements Serializable {

  private static final String INPUT = "input";
  private static final String FILE_HASH = "file_hash";

  private static final String COLUMNS =
      "message known { optional binary input (STRING); optional binary file_hash (STRING); }";

  public static KnownRows none() {
    return new KnownRows(new KnownHashes(), new KnownHashes());
  }

  public void addAll(KnownRows others) {
    inputs.addAll(others.inputs);
    contents.addAll(others.contents);
  }

  /**
   * What Parquet files of {@code files} and {@code quarantine} hold; the file of an input in
   * quarantine is not known.
   */
  public static KnownRows in(Iterator<DataFile> files, Configuration configuration)
      throws IOException {
    Configuration columns = new Configuration(configuration);
    columns.set(ReadSupport.PARQUET_READ_SCHEMA, COLUMNS);
    KnownRows known = none();
    while (files.hasNext()) {
      DataFile file = files.next();
      try (ParquetReader<Group> reader =
          ParquetReader.builder(new GroupReadSupport(), new Path(file.address()))
              .withConf(columns)
              .build()) {
        for (Group row = reader.read(); row != null; row = reader.read()) {
          known.inputs.add(row.getString(INPUT, 0));
          if (file.table() == ArchiveTable.FILES) {
            known.contents.add(row.getString(FILE_HASH, 0));
          }
        }
      }
    }
    return known;
  }
}
