package ridgeproof.imagery.wsq;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.ReferenceCodestreams.Reference;

/**
 * Prints megapixels per second on one thread over all reference codestreams, by the clock and by
 * the processor time of that thread, which says more on a busy machine. With the arguments {@code
 * ours} or {@code other} and the number of a codestream it prints one first decoding in this JVM
 * instead.
 */
final class WsqTimings {

  private static final int WARM_UP = 10;
  private static final int PASSES = 10;

  private WsqTimings() {}

  public static void main(String[] args) {
    List<Reference> references = ReferenceCodestreams.all();
    if (args.length == 2) {
      Reference reference = references.get(Integer.parseInt(args[1]));
      boolean ours = args[0].equals("ours");
      long start = System.nanoTime();
      long used = threadNanos();
      long pixels = ours ? ours(reference) : other(reference);
      print("first, " + args[0], pixels, System.nanoTime() - start, threadNanos() - used);
      return;
    }
    measure("decode, ours", references, WsqTimings::ours);
    measure("decode, jnbis", references, WsqTimings::other);
    Map<Reference, GrayImage> images = new HashMap<>();
    for (Reference reference : references) {
      images.put(reference, WsqDecoder.decode(reference.source()).image().orElseThrow());
    }
    measure("encode, ours", references, reference -> encoded(images.get(reference)));
  }

  private static void measure(
      String name, List<Reference> references, ToLongFunction<Reference> work) {
    long[] clock = new long[PASSES];
    long[] processor = new long[PASSES];
    long pixels = 0;
    for (int pass = -WARM_UP; pass < PASSES; pass++) {
      long start = System.nanoTime();
      long used = threadNanos();
      pixels = references.stream().mapToLong(work).sum();
      if (pass >= 0) {
        processor[pass] = threadNanos() - used;
        clock[pass] = System.nanoTime() - start;
      }
    }
    Arrays.sort(clock);
    Arrays.sort(processor);
    print(name, pixels, clock[PASSES / 2], processor[PASSES / 2]);
  }

  private static void print(String name, long pixels, long clock, long processor) {
    System.out.printf(
        "%-14s %5.1f Mpx, clock %7.1f ms = %6.1f Mpx/s, processor %7.1f ms = %6.1f Mpx/s%n",
        name,
        pixels / 1e6,
        clock / 1e6,
        1e3 * pixels / clock,
        processor / 1e6,
        1e3 * pixels / processor);
  }

  private static long threadNanos() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static long ours(Reference reference) {
    return WsqDecoder.decode(reference.source()).codestream().frame().orElseThrow().pixels();
  }

  private static long other(Reference reference) {
    return new org.jnbis.internal.WsqDecoder().decode(reference.source().toArray()).getLength();
  }

  private static long encoded(GrayImage image) {
    WsqEncoder.encode(image, WsqEncoding.standard(500));
    return (long) image.width() * image.height();
  }
}
