package ridgeproof.benchmarks;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.WsqDecoder;
import ridgeproof.imagery.wsq.WsqEncoder;
import ridgeproof.imagery.wsq.WsqEncoding;
import ridgeproof.transaction.record.ByteSource;

/**
 * One pass over all WSQ images of the reference transactions on one thread: our decoder, another
 * one, our encoder; and the JPEG decoder of the system on the same pixels as a yardstick.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 7, time = 2)
@Fork(
    value = 1,
    jvmArgsAppend = {"-XX:+UseSerialGC", "-Xmx2g"})
public class WsqBenchmark {

  private List<ByteSource> codestreams;
  private List<GrayImage> images;

  @Setup
  public void read() throws IOException {
    codestreams = BenchmarkImages.wsq();
    images = new ArrayList<>();
    for (ByteSource codestream : codestreams) {
      images.add(WsqDecoder.decode(codestream).image().orElseThrow());
    }
  }

  @Benchmark
  public long decodeOurs(ProcessorTime time) {
    return time.measure(() -> codestreams.stream().mapToLong(c -> pixels(decoded(c))).sum());
  }

  private static GrayImage decoded(ByteSource codestream) {
    return WsqDecoder.decode(codestream).image().orElseThrow();
  }

  @Benchmark
  public long decodeJnbis(ProcessorTime time) {
    return time.measure(() -> codestreams.stream().mapToLong(WsqBenchmark::byJnbis).sum());
  }

  private static long byJnbis(ByteSource codestream) {
    return new org.jnbis.internal.WsqDecoder().decode(codestream.toArray()).getLength();
  }

  @Benchmark
  public long encodeOurs(ProcessorTime time) {
    return time.measure(() -> images.stream().mapToLong(WsqBenchmark::encodedPixels).sum());
  }

  private static long encodedPixels(GrayImage image) {
    byte[] codestream = WsqEncoder.encode(image, WsqEncoding.standard(500));
    return codestream.length > 0 ? pixels(image) : 0;
  }

  /** The JPEG files that the system's decoder is timed on. */
  @State(Scope.Benchmark)
  public static class Yardstick {
    private JpegYardstick jpeg;

    @Setup
    public void write(WsqBenchmark benchmark) throws IOException, InterruptedException {
      jpeg = JpegYardstick.of(benchmark.images);
      System.out.printf(Locale.ROOT, "# JPEG files: %.1f : 1%n", jpeg.compressionRatio());
    }

    @TearDown
    public void delete() throws IOException {
      jpeg.delete();
    }
  }

  @Benchmark
  public long decodeJpegBySystem(ProcessorTime time, Yardstick yardstick)
      throws IOException, InterruptedException {
    time.add(yardstick.jpeg.pixels(), yardstick.jpeg.decodeAll());
    return yardstick.jpeg.pixels();
  }

  private static long pixels(GrayImage image) {
    return (long) image.width() * image.height();
  }
}
