package ridgeproof.gate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The three folders of a gate, with a bureau that takes what is ready. */
final class Harbor {

  private static final String BEGINNING = "<!DOCTYPE html>";

  final Path from;
  final Path ready;
  final Path hold;
  private final List<String> inputs = new ArrayList<>();
  private final List<String> taken = new ArrayList<>();

  Harbor(Path folder) throws IOException {
    from = Files.createDirectories(folder.resolve("from"));
    ready = Files.createDirectories(folder.resolve("ready"));
    hold = Files.createDirectories(folder.resolve("hold"));
  }

  GateFolders folders() {
    return new GateFolders(from, ready, hold);
  }

  /** The station exports a file. */
  void export(String name, byte[] bytes) throws IOException {
    Files.write(from.resolve(name), bytes);
    inputs.add(GateExamination.sha256(bytes));
  }

  /** Something was there before. */
  void leave(Path file, byte[] bytes) throws IOException {
    Files.createDirectories(file.getParent());
    Files.write(file, bytes);
    inputs.add(GateExamination.sha256(bytes));
  }

  /** The bureau takes away what is ready. */
  void collect() throws IOException {
    for (Path file : filesBelow(ready)) {
      taken.add(sha256(file));
      Files.delete(file);
    }
  }

  List<String> taken() {
    return List.copyOf(taken);
  }

  /** Every input is in one place, with its bytes, and nothing else is anywhere but our own. */
  void assertEachInputIsInOnePlace(String when) throws IOException {
    List<String> found = new ArrayList<>(taken);
    for (Path folder : List.of(from, ready, hold)) {
      for (Path file : filesBelow(folder)) {
        if (!isOurs(file)) {
          found.add(sha256(file));
        }
      }
    }
    assertEquals(inputs.stream().sorted().toList(), found.stream().sorted().toList(), when);
  }

  private boolean isOurs(Path file) throws IOException {
    String name = file.getFileName().toString();
    Path own = hold.resolve(".gate");
    if (file.startsWith(own) && file.getParent().equals(own)) {
      return true;
    }
    if (!name.equals("report.html") && !name.equals("report-2.html")) {
      return false;
    }
    String text = Files.readString(file);
    // What a full disk left of a report may be nothing.
    return text.contains(BEGINNING) || file.startsWith(own) && BEGINNING.startsWith(text);
  }

  static List<Path> filesBelow(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }

  private static String sha256(Path file) throws IOException {
    return GateExamination.sha256(Files.readAllBytes(file));
  }
}
