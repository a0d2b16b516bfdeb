package ridgeproof.cli.io;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import ridgeproof.spec.SpecTables;

/** Turns what the user names into files: files as they are, folders searched, patterns expanded. */
public final class InputPaths {

  private InputPaths() {}

  public static Inputs expand(List<String> names, SpecTables tables) {
    List<Path> paths = new ArrayList<>();
    List<Inputs.LeftOut> others = new ArrayList<>();
    for (String name : names) {
      Path path = path(name);
      if (Files.isDirectory(path)) {
        Inputs contents = transactionsIn(path, tables);
        paths.addAll(contents.files());
        others.addAll(contents.others());
      } else if (InputFile.isStandardInput(path) && paths.contains(path)) {
        throw CommandFailure.usage("standard input (-) can be read only once");
      } else if (Files.exists(path) || !isPattern(name)) {
        paths.add(path);
      } else {
        paths.addAll(matching(path, name));
      }
    }
    return new Inputs(paths, others);
  }

  private static Path path(String name) {
    try {
      return Path.of(name);
    } catch (InvalidPathException e) {
      if (isPattern(name)) {
        throw CommandFailure.inputOutput(
            name + ": patterns are expanded only by the shell on this system");
      }
      throw CommandFailure.usage("not a file name: " + name);
    }
  }

  private static boolean isPattern(String name) {
    return name.indexOf('*') >= 0 || name.indexOf('?') >= 0;
  }

  private static Inputs transactionsIn(Path folder, SpecTables tables) {
    Inputs contents;
    try {
      contents = FolderContents.of(folder, tables);
    } catch (IOException e) {
      throw CommandFailure.inputOutput(IoErrorMessages.of(folder, e));
    }
    if (contents.files().isEmpty()) {
      int others = contents.others().size();
      String found =
          others == 0 ? "" : ", " + others + (others == 1 ? " other file" : " other files");
      throw CommandFailure.inputOutput(folder + ": no transaction file in this folder" + found);
    }
    return contents;
  }

  private static List<Path> matching(Path pattern, String name) {
    Path parent = pattern.getParent() == null ? Path.of(".") : pattern.getParent();
    PathMatcher matcher = FileSystems.getDefault().getPathMatcher("glob:" + pattern.getFileName());
    try (Stream<Path> files = Files.list(parent)) {
      List<Path> found =
          files
              .filter(Files::isRegularFile)
              .filter(file -> matcher.matches(file.getFileName()))
              .sorted()
              .toList();
      if (found.isEmpty()) {
        throw CommandFailure.inputOutput(name + ": no file matches");
      }
      return found;
    } catch (IOException e) {
      throw CommandFailure.inputOutput(IoErrorMessages.of(parent, e));
    }
  }
}
