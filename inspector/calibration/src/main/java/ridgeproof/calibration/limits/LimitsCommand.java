package ridgeproof.calibration.limits;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/** Examines files that try to cost more than they should and writes what they cost. */
@Command(
    name = "limits",
    mixinStandardHelpOptions = true,
    description = "Examines hostile files of at most two megabytes and writes what they cost.")
public final class LimitsCommand implements Callable<Integer> {

  private static final double NANOSECONDS = 1e9;
  private static final long MEGABYTE = 1 << 20;

  @Option(names = "--report", required = true, description = "the Markdown file to write")
  Path report;

  @Option(
      names = "--output",
      paramLabel = "DIR",
      description = "a folder to write the files to, for other programs")
  Path output;

  @Override
  public Integer call() throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
            Locale.ROOT,
            """
            # What hostile files cost

            Files of at most 2 MB that state or hold far more than a transaction does, examined at full depth with at most %,d MB
            of heap. Processor time is that of all threads, the compiler's included.

                JAVA_TOOL_OPTIONS=-Xmx900m ./inspector/calibration/calibrate limits --report docs/limits.md

            | file | bytes | verdict | processor seconds |
            |---|---:|---|---:|""",
            Runtime.getRuntime().maxMemory() / MEGABYTE));
    Examiner examiner = new Examiner(SpecTables.open(), ParseLimits.standard());
    int number = 0;
    for (HostileFile file : HostileFiles.all()) {
      byte[] bytes = file.bytes().get();
      number++;
      if (output != null) {
        Files.createDirectories(output);
        Files.write(output.resolve(String.format(Locale.ROOT, "%02d.an2", number)), bytes);
      }
      String line = measured(examiner, file.name(), bytes);
      System.err.println(line);
      lines.add(line);
    }
    Files.writeString(report, String.join("\n", lines) + "\n");
    return 0;
  }

  private static String measured(Examiner examiner, String name, byte[] bytes) {
    OperatingSystemMXBean system =
        (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    long before = system.getProcessCpuTime();
    FindingsReport found = examiner.examine(ByteSource.of(bytes), ExaminationOptions.standard());
    double seconds = (system.getProcessCpuTime() - before) / NANOSECONDS;
    return String.format(
        Locale.ROOT, "| %s | %,d | %s | %.1f |", name, bytes.length, found.verdict(), seconds);
  }
}
