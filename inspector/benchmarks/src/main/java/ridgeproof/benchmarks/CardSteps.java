package ridgeproof.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import jdk.jfr.Recording;
import jdk.jfr.consumer.RecordedEvent;
import jdk.jfr.consumer.RecordedFrame;
import jdk.jfr.consumer.RecordingFile;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/**
 * Examines files to their ridges and prints the processor time of the whole process for each, cold
 * and warm, and what share of it each step has. It uses nothing that an older version lacks, so
 * that two versions can be measured one after the other.
 */
public final class CardSteps {

  private static final String SAMPLE = "jdk.ExecutionSample";
  private static final Duration PERIOD = Duration.ofMillis(10);

  /** The steps, the innermost first: a sample counts for the first that is on its stack. */
  private enum Step {
    TEMPLATES("templates from pixels", "com.machinezoo.sourceafis.engine.extractor"),
    MATCHING("matching", "com.machinezoo.sourceafis"),
    SMOOTHING("smoothing for templates", "RidgeSmoothing", "Minutiae"),
    MAPS("maps of ridge flow", "RidgeMaps", "XSignatureField"),
    PLACES("who belongs to whom", "Arrangement", "Sequence"),
    MEASURES("segments and measures", "ridgeproof.ridges."),
    DECODING("decoding", "ridgeproof.imagery."),
    OTHER("all else", "");

    private final String words;
    private final String[] prefixes;

    Step(String words, String... prefixes) {
      this.words = words;
      this.prefixes = prefixes;
    }

    /** Classes of ours are known by their own names: packages differ from version to version. */
    private boolean has(String type) {
      String name = type.substring(type.lastIndexOf('.') + 1);
      return Arrays.stream(prefixes)
          .anyMatch(
              prefix ->
                  prefix.isEmpty() || prefix.contains(".")
                      ? type.startsWith(prefix)
                      : type.startsWith("ridgeproof.") && name.startsWith(prefix));
    }
  }

  private CardSteps() {}

  /**
   * @param arguments how many times, then the files
   */
  public static void main(String[] arguments) throws IOException {
    int rounds = Integer.parseInt(arguments[0]);
    Examiner examiner = new Examiner(SpecTables.open(), ParseLimits.standard());
    for (String file : Arrays.copyOfRange(arguments, 1, arguments.length)) {
      ByteSource source = ByteSource.of(Files.readAllBytes(Path.of(file)));
      double first = seconds(examiner, source);
      double[] later = new double[rounds];
      Path recorded = Files.createTempFile("card-steps", ".jfr");
      try (Recording recording = new Recording()) {
        recording.enable(SAMPLE).withPeriod(PERIOD);
        for (int i = 0; i < rounds; i++) {
          // The compiler is busy with the first third.
          if (i == rounds / 3) {
            recording.start();
          }
          later[i] = seconds(examiner, source);
        }
        recording.dump(recorded);
      }
      double[] warm = Arrays.copyOfRange(later, rounds / 3, rounds);
      Arrays.sort(warm);
      System.out.printf(
          Locale.ROOT,
          "%s: first %.2f s of processor time, warm %.2f s (least %.2f, most %.2f of %d)%n",
          Path.of(file).getFileName(),
          first,
          warm[warm.length / 2],
          warm[0],
          warm[warm.length - 1],
          warm.length);
      print(shares(recorded));
      Files.delete(recorded);
    }
  }

  private static double seconds(Examiner examiner, ByteSource source) {
    OperatingSystemMXBean system =
        (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    long start = system.getProcessCpuTime();
    examiner.examine(source, ExaminationOptions.standard());
    return (system.getProcessCpuTime() - start) / 1e9;
  }

  private static Map<Step, Integer> shares(Path recorded) throws IOException {
    Map<Step, Integer> samples = new EnumMap<>(Step.class);
    for (RecordedEvent event : RecordingFile.readAllEvents(recorded)) {
      if (event.getEventType().getName().equals(SAMPLE) && event.getStackTrace() != null) {
        samples.merge(step(event), 1, Integer::sum);
      }
    }
    return samples;
  }

  private static Step step(RecordedEvent event) {
    for (Step step : Step.values()) {
      for (RecordedFrame frame : event.getStackTrace().getFrames()) {
        if (step.has(frame.getMethod().getType().getName())) {
          return step;
        }
      }
    }
    return Step.OTHER;
  }

  private static void print(Map<Step, Integer> samples) {
    int all = samples.values().stream().mapToInt(Integer::intValue).sum();
    samples.forEach(
        (step, count) ->
            System.out.printf(
                Locale.ROOT, "  %-24s %4.0f %%%n", step.words, 100.0 * count / Math.max(1, all)));
  }
}
