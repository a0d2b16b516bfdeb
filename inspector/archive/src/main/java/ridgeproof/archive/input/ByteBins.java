package ridgeproof.archive.input;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/** Divides inputs into parts of about as many bytes each, for one task each. */
public final class ByteBins {

  /** What opening and examining a file costs beside its bytes, as bytes. */
  private static final long OVERHEAD = 64 << 10;

  private static final long MAX_BIN = 256L << 20;

  private ByteBins() {}

  private static final class Bin {
    private final ArrayList<ArchiveInput> inputs = new ArrayList<>();
    private long bytes;
  }

  /**
   * The parts, the largest first.
   *
   * @param atLeast so many parts where there are so many inputs, for cores to be busy to the end
   */
  public static List<List<ArchiveInput>> of(List<ArchiveInput> inputs, int atLeast) {
    long total = inputs.stream().mapToLong(ByteBins::weight).sum();
    long count = Math.min(inputs.size(), Math.max(atLeast, 1 + total / MAX_BIN));
    PriorityQueue<Bin> bins = new PriorityQueue<>(Comparator.comparingLong(bin -> bin.bytes));
    for (long i = 0; i < count; i++) {
      bins.add(new Bin());
    }
    List<ArchiveInput> sorted = new ArrayList<>(inputs);
    sorted.sort(Comparator.comparingLong(ByteBins::weight).reversed());
    for (ArchiveInput input : sorted) {
      Bin least = bins.remove();
      least.inputs.add(input);
      least.bytes += weight(input);
      bins.add(least);
    }
    List<List<ArchiveInput>> parts = new ArrayList<>();
    bins.stream()
        .sorted(Comparator.comparingLong((Bin bin) -> bin.bytes).reversed())
        .forEach(bin -> parts.add(bin.inputs));
    return parts;
  }

  private static long weight(ArchiveInput input) {
    return OVERHEAD + input.bytes();
  }
}
