package ridgeproof.corpus.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import ridgeproof.corpus.year.OfficeYear;

/** Writes the files of a year of a small office. */
@Command(
    name = "year",
    mixinStandardHelpOptions = true,
    description = {
      "Writes a year of a small office that does not exist: submissions and responses, operators.txt"
          + " for ledger report --operators, and truth.txt with what happened.",
      ""
    },
    footer = {"", "Field 2.3001 names the operator: examine --operator-field 2.3001."})
final class YearCommand implements Callable<Integer> {

  private static final int MAX_SUBMISSIONS = 99_999;

  @Option(
      names = "--output",
      paramLabel = "DIR",
      required = true,
      description = "the folder to write to; it is made if need be")
  Path folder;

  @Option(names = "--overwrite", description = "write into a folder that holds something already")
  boolean overwrite;

  @Option(
      names = "--seed",
      paramLabel = "S",
      defaultValue = "1",
      description = "a whole number; another gives another year (default: 1)")
  long seed;

  @Option(
      names = "--submissions",
      paramLabel = "N",
      defaultValue = "2000",
      description = "how many (default: 2000)")
  int submissions;

  @Option(
      names = "--without-stories",
      description = "nothing happens: no spot, no other encoder, nobody rolls too narrowly")
  boolean withoutStories;

  @Option(
      names = "--uncompressed",
      description = "store images as pixels, which is quicker; the encoder cannot be seen then")
  boolean uncompressed;

  @Spec CommandSpec spec;

  @Override
  public Integer call() throws InterruptedException {
    if (submissions < 1 || submissions > MAX_SUBMISSIONS) {
      throw new ParameterException(spec.commandLine(), "--submissions is 1 to " + MAX_SUBMISSIONS);
    }
    return new OutputFolder(folder, overwrite).fill(this::write, spec.commandLine().getErr());
  }

  private void write() throws IOException, InterruptedException {
    OfficeYear year = new OfficeYear(seed, submissions, !withoutStories, !uncompressed);
    Path files = Files.createDirectories(folder.resolve("files"));
    year.forEach(
        (name, bytes) -> Files.write(files.resolve(name), bytes),
        Runtime.getRuntime().availableProcessors());
    Files.write(folder.resolve("operators.txt"), OfficeYear.operators());
    Files.write(folder.resolve("truth.txt"), year.truth());
  }
}
