package ridgeproof.benchmarks;

import java.lang.management.ManagementFactory;
import java.util.function.LongSupplier;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Counts pixels and the processor time of the measuring thread, which says more than the clock
 * where other work shares the machine.
 */
@State(Scope.Thread)
@AuxCounters(AuxCounters.Type.EVENTS)
public class ProcessorTime {

  private long pixels;
  private long nanos;

  @Setup(Level.Iteration)
  public void startAnew() {
    pixels = 0;
    nanos = 0;
  }

  /** Does the work and counts it. */
  long measure(LongSupplier work) {
    long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    long done = work.getAsLong();
    add(done, ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start);
    return done;
  }

  /** Counts work that was measured elsewhere. */
  void add(long donePixels, long takenNanos) {
    pixels += donePixels;
    nanos += takenNanos;
  }

  /** Million pixels of all iterations. */
  public double megapixels() {
    return pixels / 1e6;
  }

  /** Seconds of processor time that they took. */
  public double processorSeconds() {
    return nanos / 1e9;
  }
}
