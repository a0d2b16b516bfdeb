package ridgeproof.archive;

import static org.apache.spark.sql.functions.broadcast;
import static org.apache.spark.sql.functions.coalesce;
import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.count;
import static org.apache.spark.sql.functions.explode;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.min;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.apache.hadoop.fs.Path;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SaveMode;
import org.apache.spark.sql.SparkSession;
import ridgeproof.archive.examining.ResultRow;
import ridgeproof.archive.store.ArchiveTable;

/** Divides the results of a batch among the tables, by day. */
final class BatchTables {

  private static final String DAY = "day";

  private final SparkSession spark;
  private final Dataset<Row> results;
  private final Path stage;

  /**
   * @param results as the tasks wrote them
   * @param stage where the tables go
   */
  BatchTables(SparkSession spark, Dataset<Row> results, Path stage) {
    this.spark = spark;
    this.results = results;
    this.stage = stage;
  }

  /**
   * Writes the tables beside each other.
   *
   * @param archived files that the archive has, for those that are there again
   */
  void write(Dataset<Row> archived) {
    Dataset<Row> examined = results.where(col("kind").equalTo(ResultRow.EXAMINED));
    Dataset<Row> repeats = results.where(col("kind").equalTo(ResultRow.REPEAT)).select("file.*");
    Dataset<Row> doubles =
        examined
            .groupBy(col("file.file_hash").as("double_hash"))
            .agg(min("file.input").as("first_input"), count(lit(1)).as("times"))
            .where("times > 1")
            .cache();
    boolean hasDoubles = !doubles.isEmpty();
    Dataset<Row> marked =
        hasDoubles ? marked(examined, doubles) : examined.withColumn("again", lit(false));
    Dataset<Row> files = marked.withColumn("repeat", col("again")).select(fileColumns("file."));
    if (!repeats.isEmpty()) {
      files = files.unionByName(copied(repeats, archived));
    }
    Dataset<Row> firsts = marked.where("not again");
    write(
        List.of(
            new Part(ArchiveTable.FILES, files, "file_hash"),
            new Part(
                ArchiveTable.FINDINGS,
                firsts.select(explode(col("findings")).as("row")).select("row.*"),
                "file_hash"),
            new Part(
                ArchiveTable.FINGERS,
                firsts.select(explode(col("fingers")).as("row")).select("row.*"),
                "file_hash"),
            new Part(
                ArchiveTable.QUARANTINE,
                results.where(col("kind").equalTo(ResultRow.QUARANTINE)).select("quarantine.*"),
                "input")));
    doubles.unpersist();
  }

  private record Part(ArchiveTable table, Dataset<Row> rows, String order) {}

  private void write(List<Part> parts) {
    List<CompletableFuture<Void>> writing = new ArrayList<>();
    for (Part part : parts) {
      writing.add(
          CompletableFuture.runAsync(
              () ->
                  part.rows()
                      .repartition(col(DAY))
                      .sortWithinPartitions(DAY, part.order())
                      .write()
                      .mode(SaveMode.Overwrite)
                      .partitionBy(DAY)
                      .parquet(new Path(stage, part.table().folder()).toString())));
    }
    writing.forEach(CompletableFuture::join);
  }

  /** Of files with the same bytes in one batch the first by the hash of its address counts. */
  private static Dataset<Row> marked(Dataset<Row> examined, Dataset<Row> doubles) {
    return examined
        .join(broadcast(doubles), col("file.file_hash").equalTo(col("double_hash")), "left")
        .withColumn("again", coalesce(col("first_input").notEqual(col("file.input")), lit(false)));
  }

  /** The columns of a file, with what was found out about it taken from where it stands. */
  private static Column[] fileColumns(String prefix) {
    return Arrays.stream(ArchiveTable.FILES.schema().fieldNames())
        .map(name -> "repeat".equals(name) ? col(name) : col(prefix + name).as(name))
        .toArray(Column[]::new);
  }

  private static Dataset<Row> copied(Dataset<Row> repeats, Dataset<Row> archived) {
    List<String> own = List.of("input", "bytes", "modified", "examined");
    Dataset<Row> firsts = archived.where("not repeat").as("first");
    Column[] columns =
        Arrays.stream(ArchiveTable.FILES.schema().fieldNames())
            .map(
                name ->
                    "repeat".equals(name)
                        ? lit(true).as(name)
                        : col((own.contains(name) ? "again." : "first.") + name).as(name))
            .toArray(Column[]::new);
    return firsts
        .join(
            broadcast(repeats.as("again")), col("first.file_hash").equalTo(col("again.file_hash")))
        .select(columns);
  }
}
