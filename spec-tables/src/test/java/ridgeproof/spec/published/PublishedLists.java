package ridgeproof.spec.published;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import ridgeproof.testing.SharedFolder;

/** The published lists in {@code shared/}. */
final class PublishedLists {

  private final Path folder;

  private PublishedLists(Path folder) {
    this.folder = folder;
  }

  static PublishedLists open() {
    return new PublishedLists(SharedFolder.of("standards", "published lists").getParent());
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
