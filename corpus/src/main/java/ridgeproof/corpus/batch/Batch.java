package ridgeproof.corpus.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import ridgeproof.corpus.composition.ComposedTransaction;
import ridgeproof.corpus.composition.FileEncoding;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.composition.TransactionComposer;
import ridgeproof.corpus.scenario.Scenario;

/** Writes many files with their labels; the same seed gives the same folder. */
final class Batch {

  static final String LABELS = "labels.csv";

  /** Enough to keep every core busy, few enough that memory does not grow with the batch. */
  private static final int AHEAD_OF_EACH_CORE = 3;

  private final SubjectPlan plan;
  private final Path folder;
  private final int cores;
  private final FileEncoding encoding;

  Batch(SubjectPlan plan, Path folder, int cores, FileEncoding encoding) {
    this.encoding = encoding;
    this.plan = plan;
    this.folder = folder;
    this.cores = cores;
  }

  /** Writes {@code subject-000001.an2} and so on, and {@code labels.csv}. */
  void write(int subjects) throws IOException, InterruptedException {
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setHeader(LabelRow.COLUMNS).setRecordSeparator("\n").get();
    ExecutorService pool = Executors.newFixedThreadPool(cores);
    try (CSVPrinter labels =
        new CSVPrinter(Files.newBufferedWriter(folder.resolve(LABELS)), format)) {
      Deque<Future<List<LabelRow>>> ahead = new ArrayDeque<>();
      for (int subject = 1; subject <= subjects; subject++) {
        int number = subject;
        Callable<List<LabelRow>> work = () -> writeOne(number);
        ahead.add(pool.submit(work));
        if (ahead.size() >= cores * AHEAD_OF_EACH_CORE) {
          print(ahead.remove(), labels);
        }
      }
      while (!ahead.isEmpty()) {
        print(ahead.remove(), labels);
      }
    } finally {
      pool.shutdownNow();
    }
  }

  private List<LabelRow> writeOne(int subject) throws IOException {
    Scenario scenario = plan.scenario(subject);
    // What befalls bytes of the traditional encoding is nothing that XML has.
    ComposedTransaction composed =
        new TransactionComposer(new SubjectCache())
            .compose(encoding == FileEncoding.XML ? scenario.withoutDamages() : scenario);
    String file = scenario.name() + encoding.extension();
    Files.write(folder.resolve(file), encoding.of(composed.bytes()));
    return LabelRow.of(file, composed);
  }

  private static void print(Future<List<LabelRow>> done, CSVPrinter labels)
      throws IOException, InterruptedException {
    try {
      for (LabelRow row : done.get()) {
        labels.printRecord(row.cells());
      }
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException cause) {
        throw cause;
      }
      throw new IllegalStateException(e.getCause());
    }
  }
}
