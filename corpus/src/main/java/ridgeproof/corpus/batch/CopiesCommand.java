package ridgeproof.corpus.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Makes many files of a few, since drawing prints takes a hundred times as long. */
@Command(
    name = "copies",
    mixinStandardHelpOptions = true,
    description =
        "Makes many different files of a few that corpus/generate drew: copies with control"
            + " numbers and dates of their own, and, if asked, other files among them.")
final class CopiesCommand implements Callable<Integer> {

  private static final Pattern CONTROL = Pattern.compile("1\\.009:BATCH-([0-9]{6})");
  private static final String DRAWN_DAY = "20260302";
  private static final int DAYS = 28;
  private static final int FILES_OF_A_FOLDER = 1000;

  @Option(names = "--from", paramLabel = "DIR", required = true, description = "the drawn files")
  Path from;

  @Option(names = "--files", paramLabel = "N", required = true, description = "how many files")
  int files;

  @Option(
      names = "--others",
      paramLabel = "DIR",
      description = "files that take the place of every 100th copy, in turn")
  Path others;

  @Option(names = "--output", paramLabel = "DIR", required = true, description = "where they go")
  Path output;

  @Override
  public Integer call() throws IOException {
    List<Path> drawn = filesIn(from);
    List<Path> strange = others == null ? List.of() : filesIn(others);
    for (int i = 0; i < files; i++) {
      Path folder = output.resolve(String.format(Locale.ROOT, "%04d", i / FILES_OF_A_FOLDER));
      Files.createDirectories(folder);
      boolean other = !strange.isEmpty() && i % 100 == 99;
      byte[] bytes =
          other
              ? Files.readAllBytes(strange.get(i / 100 % strange.size()))
              : copy(Files.readAllBytes(drawn.get(i % drawn.size())), i);
      Files.write(folder.resolve(String.format(Locale.ROOT, "%06d.an2", i)), bytes);
    }
    return 0;
  }

  private static List<Path> filesIn(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(path -> path.toString().endsWith(".an2")).sorted().toList();
    }
  }

  /** Of the same length, so that no length that a record states changes. */
  private static byte[] copy(byte[] bytes, int number) {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    String day =
        LocalDate.of(2026, 2, 1).plusDays(number % DAYS).format(DateTimeFormatter.BASIC_ISO_DATE);
    Matcher control = CONTROL.matcher(text);
    String changed =
        control
            .replaceFirst(String.format(Locale.ROOT, "1.009:BATCH-%06d", number))
            .replace(DRAWN_DAY, day);
    return changed.getBytes(StandardCharsets.ISO_8859_1);
  }
}
