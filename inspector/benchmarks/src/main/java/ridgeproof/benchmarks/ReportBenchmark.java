package ridgeproof.benchmarks;

import java.io.IOException;
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
import org.openjdk.jmh.infra.Blackhole;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.page.HtmlReport;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/** The page on a card of fourteen prints, once everything about them is known. */
@State(Scope.Benchmark)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ReportBenchmark {

  /** Whether the images are on the page, which are then decoded again and made smaller. */
  @Param({"false", "true"})
  public boolean images;

  private FileFacts file;
  private FindingsReport report;
  private ImageExtraction extraction;

  @Setup
  public void examine() throws IOException {
    SpecTables tables = SpecTables.open();
    ByteSource bytes = BenchmarkImages.transaction("type-4-tpcard.an2");
    extraction = new ImageExtraction(tables, DecodingLimits.standard());
    report =
        new Examiner(tables, ParseLimits.standard()).examine(bytes, ExaminationOptions.standard());
    file = new FileFacts("card.an2", bytes.length(), "0".repeat(64));
  }

  /** The first page of a process, as the command line makes it. */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  @Fork(
      value = 5,
      jvmArgsAppend = {"-XX:+UseSerialGC"})
  public void first(ProcessorTime time, Blackhole sink) {
    page(time, sink);
  }

  /** One page of many. */
  @Benchmark
  @BenchmarkMode(Mode.AverageTime)
  @Warmup(iterations = 3, time = 1)
  @Measurement(iterations = 5, time = 1)
  @Fork(
      value = 1,
      jvmArgsAppend = {"-XX:+UseSerialGC"})
  public void warm(ProcessorTime time, Blackhole sink) {
    page(time, sink);
  }

  private void page(ProcessorTime time, Blackhole sink) {
    time.measure(
        () -> {
          sink.consume(render());
          return report.images().stream()
              .flatMap(image -> image.pixels().stream())
              .mapToLong(pixels -> (long) pixels.width() * pixels.height())
              .sum();
        });
  }

  private String render() {
    return images
        ? HtmlReport.render(
            file, report, RenderOptions.standard(), image -> extraction.decode(image).pixels())
        : HtmlReport.render(file, report, RenderOptions.standard());
  }
}
