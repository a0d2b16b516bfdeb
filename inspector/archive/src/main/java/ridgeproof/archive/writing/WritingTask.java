package ridgeproof.archive.writing;

import java.io.IOException;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.Path;
import org.apache.spark.TaskContext;
import org.apache.spark.api.java.function.FlatMapFunction;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.util.SerializableConfiguration;
import ridgeproof.archive.examining.FileResult;
import ridgeproof.archive.examining.ResultKey;
import ridgeproof.archive.store.ArchiveTable;
import ridgeproof.archive.store.KnownRows;
import scala.Tuple2;

/** Writes the results of some days, in the order of their keys, to the tables. */
final class WritingTask
    implements FlatMapFunction<Iterator<Tuple2<ResultKey, byte[]>>, WrittenTables> {

  private static final long serialVersionUID = 1L;

  private final String stage;
  private final Broadcast<SerializableConfiguration> configuration;

  WritingTask(String stage, Broadcast<SerializableConfiguration> configuration) {
    this.stage = stage;
    this.configuration = configuration;
  }

  @Override
  public Iterator<WrittenTables> call(Iterator<Tuple2<ResultKey, byte[]>> results)
      throws IOException {
    if (!results.hasNext()) {
      return List.of(WrittenTables.none()).iterator();
    }
    Path folder = new Path(stage);
    TaskContext task = TaskContext.get();
    String name =
        String.format(
            Locale.ROOT, "%s-%05d-%d", folder.getName(), task.partitionId(), task.taskAttemptId());
    Configuration hadoop = configuration.value().value();
    KnownRows known = KnownRows.none();
    long examined = 0;
    long quarantined = 0;
    DayFiles files = new DayFiles(folder, name, hadoop);
    try (files) {
      String last = "";
      while (results.hasNext()) {
        Tuple2<ResultKey, byte[]> next = results.next();
        ResultKey key = next._1;
        FileResult result = FileResult.of(next._2);
        files.turnTo(key.day());
        known.inputs().add(key.input());
        if (result.kind() == FileResult.Kind.QUARANTINE) {
          files.write(ArchiveTable.QUARANTINE, result.row());
          quarantined++;
          continue;
        }
        known.contents().add(key.fileHash());
        examined++;
        boolean again = key.fileHash().equals(last);
        last = key.fileHash();
        write(files, result, again);
      }
    }
    return List.of(new WrittenTables(files.names(), known, examined, quarantined)).iterator();
  }

  /** Of files with the same bytes in one batch the first by the hash of its address counts. */
  private static void write(DayFiles files, FileResult result, boolean again) throws IOException {
    files.write(ArchiveTable.FILES, again ? repeated(result.row()) : result.row());
    if (again) {
      return;
    }
    for (Row finding : result.findings()) {
      files.write(ArchiveTable.FINDINGS, finding);
    }
    for (Row finger : result.fingers()) {
      files.write(ArchiveTable.FINGERS, finger);
    }
  }

  private static Row repeated(Row file) {
    Object[] values = new Object[file.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = i == ArchiveTable.REPEAT ? true : file.get(i);
    }
    return RowFactory.create(values);
  }
}
