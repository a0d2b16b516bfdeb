package ridgeproof.ledger.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.KeyedHash;

/**
 * Makes a large ledger to measure on, with the key file that {@code ridgeproof ledger} needs, and
 * prints what writing one more entry takes. Arguments: a new file, the number of entries.
 */
final class ManyEntries {

  private static final int AT_ONCE = 1000;
  private static final int MEASURED = 200;
  private static final double NS_PER_MS = 1e6;

  private ManyEntries() {}

  public static void main(String[] arguments) throws IOException {
    String file = arguments[0];
    int count = Integer.parseInt(arguments[1]);
    Path key = Path.of(file + ".key");
    Files.writeString(key, HexFormat.of().formatHex(new byte[KeyedHash.KEY_BYTES]) + "\n");
    key.toFile().setReadable(false, false);
    key.toFile().setReadable(true, true);
    SampleEntries sample = new SampleEntries(1);
    try (LedgerStore ledger = LedgerStore.open("jdbc:sqlite:" + file, SampleEntries.VERIFIER)) {
      for (int from = 0; from < count; from += AT_ONCE) {
        List<Entry> entries = new ArrayList<>();
        for (int i = from; i < Math.min(count, from + AT_ONCE); i++) {
          entries.add(sample.any(i));
        }
        ledger.addAll(entries);
      }
      double[] times = new double[MEASURED];
      for (int i = 0; i < MEASURED; i++) {
        Entry entry = sample.any(count + 2 * i + count % 2);
        long start = System.nanoTime();
        ledger.add(entry);
        times[i] = (System.nanoTime() - start) / NS_PER_MS;
      }
      Arrays.sort(times);
      System.out.printf(
          Locale.ROOT,
          "%d entries; one more takes %.1f ms (median of %d), %.1f ms at most in 95 of 100%n",
          count,
          times[MEASURED / 2],
          MEASURED,
          times[MEASURED * 95 / 100]);
    }
  }
}
