package ridgeproof.archive.examining;

import java.time.Instant;
import java.util.Iterator;
import java.util.List;
import org.apache.hadoop.conf.Configuration;
import org.apache.spark.TaskContext;
import org.apache.spark.api.java.function.FlatMapFunction;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.sql.Row;
import org.apache.spark.util.LongAccumulator;
import org.apache.spark.util.SerializableConfiguration;
import org.apache.spark.util.TaskCompletionListener;
import ridgeproof.archive.input.ArchiveInput;
import ridgeproof.archive.store.KnownHashes;

/** Examines one part of a batch with one examiner, and keeps no more than one file in memory. */
public final class ExaminingTask implements FlatMapFunction<Iterator<List<ArchiveInput>>, Row> {

  private static final long serialVersionUID = 1L;

  private final ExaminationPlan plan;
  private final Broadcast<KnownHashes> known;
  private final Instant examined;
  private final Broadcast<SerializableConfiguration> configuration;
  private final LongAccumulator done;

  /**
   * @param done counts the files that are done, for the progress
   */
  public ExaminingTask(
      ExaminationPlan plan,
      Broadcast<KnownHashes> known,
      Instant examined,
      Broadcast<SerializableConfiguration> configuration,
      LongAccumulator done) {
    this.plan = plan;
    this.known = known;
    this.examined = examined;
    this.configuration = configuration;
    this.done = done;
  }

  @Override
  public Iterator<Row> call(Iterator<List<ArchiveInput>> parts) {
    Configuration hadoop = configuration.value().value();
    FileExamination examination = new FileExamination(plan, known.value(), examined, hadoop);
    TaskContext.get()
        .addTaskCompletionListener((TaskCompletionListener) context -> examination.close());
    return new Iterator<>() {
      private Iterator<ArchiveInput> inputs = List.<ArchiveInput>of().iterator();

      @Override
      public boolean hasNext() {
        while (!inputs.hasNext() && parts.hasNext()) {
          inputs = parts.next().iterator();
        }
        return inputs.hasNext();
      }

      @Override
      public Row next() {
        Row row = examination.of(inputs.next());
        done.add(1);
        return row;
      }
    };
  }
}
