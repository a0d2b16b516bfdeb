package ridgeproof.imagery.wsq;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.ReferenceCodestreams.Reference;

/**
 * Prints megapixels per second on one thread over all reference codestreams. With the arguments
 * {@code ours} or {@code other} it prints the time of one first decoding in this JVM instead.
 */
final class WsqTimings {

  private static final int WARM_UP = 8;
  private static final int PASSES = 10;

  private WsqTimings() {}

  public static void main(String[] args) {
    List<Reference> references = ReferenceCodestreams.all();
    if (args.length == 2) {
      Reference first = references.get(Integer.parseInt(args[1]));
      ToLongFunction<Reference> decoder =
          args[0].equals("ours") ? WsqTimings::ours : WsqTimings::other;
      long start = System.nanoTime();
      long pixels = decoder.applyAsLong(first);
      print("cold " + args[0], pixels, System.nanoTime() - start);
      return;
    }
    measure("decode, ours", references, WsqTimings::ours);
    measure("decode, jnbis", references, WsqTimings::other);
    Map<Reference, GrayImage> images = new HashMap<>();
    for (Reference reference : references) {
      images.put(reference, WsqDecoder.decode(reference.source()).image().orElseThrow());
    }
    measure(
        "encode, ours",
        references,
        reference -> {
          GrayImage image = images.get(reference);
          WsqEncoder.encode(image, WsqEncoding.standard(500));
          return (long) image.width() * image.height();
        });
  }

  private static void measure(
      String name, List<Reference> references, ToLongFunction<Reference> work) {
    long[] times = new long[PASSES];
    long pixels = 0;
    for (int pass = -WARM_UP; pass < PASSES; pass++) {
      long start = System.nanoTime();
      pixels = references.stream().mapToLong(work).sum();
      if (pass >= 0) {
        times[pass] = System.nanoTime() - start;
      }
    }
    Arrays.sort(times);
    print(name, pixels, times[PASSES / 2]);
  }

  private static void print(String name, long pixels, long nanos) {
    System.out.printf(
        "%-16s %6.1f Mpx in %8.1f ms: %6.1f Mpx/s%n",
        name, pixels / 1e6, nanos / 1e6, 1e3 * pixels / nanos);
  }

  private static long ours(Reference reference) {
    return WsqDecoder.decode(reference.source()).codestream().frame().orElseThrow().pixels();
  }

  private static long other(Reference reference) {
    return new org.jnbis.internal.WsqDecoder().decode(reference.source().toArray()).getLength();
  }
}
