package ridgeproof.ledger.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import ridgeproof.ledger.Entry;

/**
 * Processes that write into one ledger, two at a time, each killed at a random moment. {@code
 * -Dridgeproof.kills=200} kills so many; a usual build kills fewer.
 */
final class KilledWriters {

  private static final int KILLS = Integer.getInteger("ridgeproof.kills", 12);
  private static final int AT_ONCE = 2;
  private static final int MAX_DELAY_MS = 250;

  /**
   * What came of it.
   *
   * @param acknowledged entries whose writing was reported before the kill
   * @param kept entries in the ledger at the end
   */
  record Outcome(int kills, int acknowledged, long kept, List<String> problems) {
    String words() {
      return String.format(
          Locale.ROOT,
          "%d writers killed: %d entries acknowledged, %d in the ledger",
          kills,
          acknowledged,
          kept);
    }
  }

  private KilledWriters() {}

  /** The writer: entries without end, each number on a line of standard output once it is safe. */
  public static void main(String[] arguments) {
    SampleEntries sample = new SampleEntries(Long.parseLong(arguments[1]));
    try (LedgerStore ledger = LedgerStore.open(arguments[0], SampleEntries.VERIFIER)) {
      for (int i = 0; ; i++) {
        Entry entry = sample.any(i);
        ledger.add(entry);
        System.out.println(entry.id());
        System.out.flush();
      }
    }
  }

  static Outcome run(String address) throws IOException, InterruptedException {
    Random random = new Random(4);
    List<Long> acknowledged = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    for (int killed = 0; killed < KILLS; killed += AT_ONCE) {
      List<Writer> writers = new ArrayList<>();
      for (int i = 0; i < AT_ONCE; i++) {
        writers.add(Writer.start(address, random.nextLong()));
      }
      for (Writer writer : writers) {
        writer.awaitFirst();
        Thread.sleep(random.nextInt(MAX_DELAY_MS));
        writer.kill();
      }
      for (Writer writer : writers) {
        acknowledged.addAll(writer.acknowledged());
      }
      try (LedgerStore ledger = LedgerStore.open(address, SampleEntries.VERIFIER)) {
        problems.addAll(ledger.check());
      }
    }
    Set<Long> kept = new HashSet<>();
    long count;
    try (LedgerStore ledger = LedgerStore.open(address, SampleEntries.VERIFIER)) {
      ledger.forEach(entry -> kept.add(entry.id()));
      count = ledger.count();
    }
    acknowledged.stream()
        .filter(id -> !kept.contains(id))
        .forEach(id -> problems.add("entry " + id + " was acknowledged and is lost"));
    if (kept.size() != count) {
      problems.add(count - kept.size() + " entries are there twice");
    }
    if (count > acknowledged.size() + KILLS) {
      problems.add("more entries than the writers can have had in hand");
    }
    return new Outcome(KILLS, acknowledged.size(), count, problems);
  }

  private record Writer(Process process, Path output) {

    static Writer start(String address, long seed) throws IOException {
      Path output = Files.createTempFile("ledger-writer", ".txt");
      Process process =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-XX:+UseSerialGC",
                  "-XX:TieredStopAtLevel=1",
                  "-cp",
                  System.getProperty("java.class.path"),
                  KilledWriters.class.getName(),
                  address,
                  Long.toString(seed))
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .redirectOutput(output.toFile())
              .start();
      return new Writer(process, output);
    }

    void awaitFirst() throws IOException, InterruptedException {
      while (Files.size(output) == 0) {
        if (process.waitFor(5, TimeUnit.MILLISECONDS)) {
          throw new IllegalStateException("the writer ended by itself");
        }
      }
    }

    void kill() throws InterruptedException {
      process.destroyForcibly().waitFor();
    }

    /** The last line may be cut. */
    List<Long> acknowledged() throws IOException {
      String text = Files.readString(output, StandardCharsets.US_ASCII);
      Files.delete(output);
      int end = text.lastIndexOf('\n') + 1;
      return text.substring(0, end).lines().map(Long::valueOf).toList();
    }
  }
}
