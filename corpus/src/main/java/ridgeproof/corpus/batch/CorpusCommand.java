package ridgeproof.corpus.batch;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import ridgeproof.corpus.composition.FileEncoding;

/** Makes many transactions of people who do not exist, with labels of what is wrong in each. */
@Command(
    name = "corpus/generate",
    mixinStandardHelpOptions = true,
    subcommands = {FaultFilesCommand.class, YearCommand.class, CopiesCommand.class},
    description = {
      "Makes transactions of people who do not exist, some with known defects, and labels.csv with"
          + " what is true of each image: file, position, defect, strength, mistake.",
      ""
    },
    footer = {
      "",
      "The same options give the same files. Exit status: 0, 64 wrong usage, 74 cannot write."
    })
public final class CorpusCommand implements Callable<Integer> {

  private static final int USAGE = 64;
  private static final int MAX_SUBJECTS = 999_999;

  @Option(names = "--subjects", paramLabel = "N", description = "how many files, one a subject")
  Integer subjects;

  @Option(
      names = "--seed",
      paramLabel = "S",
      defaultValue = "1",
      description = "a whole number; another gives other people (default: 1)")
  long seed;

  @Option(
      names = "--defect-rate",
      paramLabel = "R",
      defaultValue = "0.1",
      description =
          "share of images with a defect and of files with a mistake, 0 to 1 (default: 0.1)")
  double defectRate;

  @Option(
      names = "--aged",
      description =
          "draw skin by age, and half of the rolled cards on paper (default: young skin, no paper)")
  boolean aged;

  @Option(
      names = "--encoding",
      paramLabel = "ENCODING",
      defaultValue = "traditional",
      description = "traditional or xml (default: traditional); XML has no damaged bytes")
  FileEncoding encoding;

  @Option(
      names = "--output",
      paramLabel = "DIR",
      description = "the folder to write to; it is created if needed")
  Path folder;

  @Option(names = "--overwrite", description = "write into a folder that holds something already")
  boolean overwrite;

  @Spec CommandSpec spec;

  /** Runs the command and ends the process. */
  public static void main(String[] arguments) {
    System.exit(commandLine().execute(arguments));
  }

  static CommandLine commandLine() {
    CommandLine line = new CommandLine(new CorpusCommand());
    line.setExpandAtFiles(false);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler(
        (failure, arguments) -> {
          PrintWriter error = failure.getCommandLine().getErr();
          error.println("corpus/generate: " + failure.getMessage());
          error.println("try: corpus/generate --help");
          error.flush();
          return USAGE;
        });
    return line;
  }

  @Override
  public Integer call() throws InterruptedException {
    // A subcommand has no use for them, so that they cannot be required of every call.
    check(subjects != null, "Missing required option: '--subjects=N'");
    check(folder != null, "Missing required option: '--output=DIR'");
    check(subjects >= 1 && subjects <= MAX_SUBJECTS, "--subjects is 1 to " + MAX_SUBJECTS);
    check(defectRate >= 0 && defectRate <= 1, "--defect-rate is 0 to 1");
    PrintWriter error = spec.commandLine().getErr();
    long start = System.nanoTime();
    int cores = Runtime.getRuntime().availableProcessors();
    Batch batch =
        new Batch(new SubjectPlan(seed, defectRate, defectRate, aged), folder, cores, encoding);
    int status = new OutputFolder(folder, overwrite).fill(() -> batch.write(subjects), error);
    if (status != 0) {
      return status;
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    error.println(
        String.format(
            Locale.ROOT,
            "%d files in %.1f s, %.2f a second on %d cores",
            subjects,
            seconds,
            subjects / seconds,
            cores));
    error.flush();
    return 0;
  }

  private void check(boolean holds, String message) {
    if (!holds) {
      throw new ParameterException(spec.commandLine(), message);
    }
  }
}
