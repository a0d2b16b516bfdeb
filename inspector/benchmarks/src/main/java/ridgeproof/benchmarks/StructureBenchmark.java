package ridgeproof.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/** Reading and rules of a whole transaction, without opening an image. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class StructureBenchmark {

  /** A transaction file; {@code -p file=...} names another. */
  @Param("../shared/reference/type-4-tpcard.an2")
  public String file;

  private final ExaminationOptions options =
      ExaminationOptions.standard().withDepth(Depth.STRUCTURE);
  private Examiner examiner;
  private ByteSource bytes;

  @Setup
  public void open() throws IOException {
    examiner = new Examiner(SpecTables.open(), ParseLimits.standard());
    bytes = ByteSource.of(Files.readAllBytes(locate(Path.of(file))));
  }

  @Benchmark
  public FindingsReport examine() {
    return examiner.examine(bytes, options);
  }

  /** Maven starts the benchmark in its module, a person perhaps in the project. */
  private static Path locate(Path path) {
    return Files.exists(path) ? path : Path.of("../..").resolve(path);
  }
}
