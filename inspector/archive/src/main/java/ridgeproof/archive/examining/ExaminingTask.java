package ridgeproof.archive.examining;

import java.time.Instant;
import java.util.Iterator;
import java.util.List;
import org.apache.hadoop.conf.Configuration;
import org.apache.spark.api.java.function.FlatMapFunction;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.util.LongAccumulator;
import org.apache.spark.util.SerializableConfiguration;
import ridgeproof.archive.input.ArchiveInput;
import ridgeproof.archive.store.KnownHashes;

/** Examines one part of a batch with one examiner, and keeps no more than one file in memory. */
public final class ExaminingTask
    implements FlatMapFunction<Iterator<List<ArchiveInput>>, StagedResults> {

  private static final long serialVersionUID = 1L;

  private final ExaminationPlan plan;
  private final String folder;
  private final Broadcast<KnownHashes> known;
  private final Instant examined;
  private final Broadcast<SerializableConfiguration> configuration;
  private final LongAccumulator done;

  /**
   * @param folder where the results go
   * @param done counts the files that are done, for the progress
   */
  public ExaminingTask(
      ExaminationPlan plan,
      String folder,
      Broadcast<KnownHashes> known,
      Instant examined,
      Broadcast<SerializableConfiguration> configuration,
      LongAccumulator done) {
    this.plan = plan;
    this.folder = folder;
    this.known = known;
    this.examined = examined;
    this.configuration = configuration;
    this.done = done;
  }

  @Override
  public Iterator<StagedResults> call(Iterator<List<ArchiveInput>> parts) {
    Configuration hadoop = configuration.value().value();
    try (FileExamination examination = new FileExamination(plan, known.value(), examined, hadoop)) {
      StagedResults staged = StagedResults.write(new Examining(parts, examination), folder, hadoop);
      return List.of(staged).iterator();
    }
  }

  private final class Examining implements Iterator<FileResult> {

    private final Iterator<List<ArchiveInput>> parts;
    private final FileExamination examination;
    private Iterator<ArchiveInput> inputs = List.<ArchiveInput>of().iterator();

    Examining(Iterator<List<ArchiveInput>> parts, FileExamination examination) {
      this.parts = parts;
      this.examination = examination;
    }

    @Override
    public boolean hasNext() {
      while (!inputs.hasNext() && parts.hasNext()) {
        inputs = parts.next().iterator();
      }
      return inputs.hasNext();
    }

    @Override
    public FileResult next() {
      FileResult result = examination.of(inputs.next());
      done.add(1);
      return result;
    }
  }
}
