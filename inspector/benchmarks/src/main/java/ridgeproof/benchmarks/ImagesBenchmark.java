package ridgeproof.benchmarks;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.measure.GrayLevelStatistics;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;

/** What is measured of the fourteen decoded prints of a card, on one thread. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 7, time = 1)
@Fork(
    value = 1,
    jvmArgsAppend = {"-XX:+UseSerialGC", "-Xmx2g"})
public class ImagesBenchmark {

  private List<GrayImage> prints;

  @Setup
  public void decode() throws IOException {
    SpecTables tables = SpecTables.open();
    ImageExtraction extraction = new ImageExtraction(tables, DecodingLimits.standard());
    List<ExaminedImage> images =
        extraction.imagesOf(
            new TransactionReader(tables, ParseLimits.standard())
                .read(BenchmarkImages.transaction("type-4-tpcard.an2")));
    prints =
        images.stream()
            .map(image -> extraction.decode(image).pixels())
            .flatMap(Optional::stream)
            .toList();
  }

  @Benchmark
  public long measurePrints(ProcessorTime time) {
    return time.measure(
        () ->
            prints.stream().mapToLong(print -> GrayLevelStatistics.of(print).all().total()).sum());
  }
}
