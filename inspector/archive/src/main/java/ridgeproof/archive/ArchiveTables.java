package ridgeproof.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.hadoop.fs.Path;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import ridgeproof.archive.store.ArchiveStore;
import ridgeproof.archive.store.ArchiveTable;
import ridgeproof.cli.io.CommandFailure;

/** The tables of an archive, to be read. */
record ArchiveTables(SparkSession spark, Path root) {

  static ArchiveTables of(SparkSession spark, String address) {
    Path root = new Path(address);
    try {
      if (!ArchiveStore.exists(root, spark.sparkContext().hadoopConfiguration())) {
        throw CommandFailure.inputOutput(address + ": there is no archive");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new ArchiveTables(spark, root);
  }

  Dataset<Row> of(ArchiveTable table) {
    return spark.read().schema(table.schema()).parquet(new Path(root, table.folder()).toString());
  }
}
