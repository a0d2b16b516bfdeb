package ridgeproof.spec.published;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Assumptions;

/**
 * The published lists in {@code shared/}. Tests without that folder are skipped and say so; with
 * {@code CI=true} its absence fails.
 */
final class SharedFolder {

  private static final String SKIPPED =
      "skipped: no published lists in ../shared/standards beside this project";

  private final Path folder;

  private SharedFolder(Path folder) {
    this.folder = folder;
  }

  static SharedFolder open() {
    Optional<Path> folder = find();
    if (folder.isEmpty() && "true".equals(System.getenv("CI"))) {
      throw new AssertionError("CI needs the published lists in ../shared/standards");
    }
    if (folder.isEmpty()) {
      System.out.println(SKIPPED); // a skipped assumption's own message never reaches the console
    }
    Assumptions.assumeTrue(folder.isPresent(), SKIPPED);
    return new SharedFolder(folder.orElseThrow());
  }

  private static Optional<Path> find() {
    for (Path place = Path.of("").toAbsolutePath(); place != null; place = place.getParent()) {
      Path candidate = place.resolve("shared");
      if (Files.isDirectory(candidate.resolve("standards"))) {
        return Optional.of(candidate);
      }
    }
    return Optional.empty();
  }

  /** The rows of one list, each by the names of its columns. */
  List<Map<String, String>> rows(String list) {
    Path file = folder.resolve("standards").resolve(list);
    try (Stream<CSVRecord> records =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(Files.newBufferedReader(file, StandardCharsets.UTF_8))
            .stream()) {
      return records.map(CSVRecord::toMap).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Every file below a folder whose name ends so. */
  List<Path> files(String below, String ending) {
    try (Stream<Path> files = Files.walk(folder.resolve(below))) {
      return files.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
