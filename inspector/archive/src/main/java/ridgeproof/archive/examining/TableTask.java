package ridgeproof.archive.examining;

import java.nio.ByteBuffer;
import java.time.Instant;
import java.util.Iterator;
import java.util.List;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.stream.StreamSupport;
import org.apache.hadoop.conf.Configuration;
import org.apache.spark.api.java.function.FlatMapFunction;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.sql.Row;
import org.apache.spark.util.LongAccumulator;
import org.apache.spark.util.SerializableConfiguration;
import ridgeproof.archive.store.KnownHashes;
import ridgeproof.transaction.record.ByteSource;

/** Examines the rows of a table: a column of bytes, and one that tells the rows apart if it can. */
public final class TableTask implements FlatMapFunction<Iterator<Row>, StagedResults> {

  private static final long serialVersionUID = 1L;

  private final ExaminationPlan plan;
  private final String folder;
  private final Broadcast<KnownHashes> inputs;
  private final Broadcast<KnownHashes> contents;
  private final Instant examined;
  private final Broadcast<SerializableConfiguration> configuration;
  private final LongAccumulator done;

  /**
   * @param folder where the results go
   * @param inputs hashes of rows that were examined before
   * @param contents hashes of files that the archive has
   */
  public TableTask(
      ExaminationPlan plan,
      String folder,
      Broadcast<KnownHashes> inputs,
      Broadcast<KnownHashes> contents,
      Instant examined,
      Broadcast<SerializableConfiguration> configuration,
      LongAccumulator done) {
    this.plan = plan;
    this.folder = folder;
    this.inputs = inputs;
    this.contents = contents;
    this.examined = examined;
    this.configuration = configuration;
    this.done = done;
  }

  @Override
  public Iterator<StagedResults> call(Iterator<Row> rows) {
    Configuration hadoop = configuration.value().value();
    try (FileExamination examination =
        new FileExamination(plan, contents.value(), examined, hadoop)) {
      Iterator<FileResult> results =
          StreamSupport.stream(
                  Spliterators.spliteratorUnknownSize(rows, Spliterator.ORDERED), false)
              .map(row -> result(examination, row))
              .iterator();
      return List.of(StagedResults.write(results, folder, hadoop)).iterator();
    }
  }

  /** Null for a row that was examined before. */
  private FileResult result(FileExamination examination, Row row) {
    byte[] bytes = row.isNullAt(0) ? new byte[0] : row.getAs(0);
    String id =
        row.size() > 1
            ? String.valueOf(row.get(1))
            : ByteSource.of(ByteBuffer.wrap(bytes)).sha256();
    if (inputs.value().contains(ExaminationPlan.inputHash(plan.hash(), id))) {
      return null;
    }
    FileResult result = examination.of(id, bytes);
    done.add(1);
    return result;
  }
}
