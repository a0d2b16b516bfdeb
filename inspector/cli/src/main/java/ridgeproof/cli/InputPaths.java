package ridgeproof.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.FileVisitResult;
import java.nio.file.FileVisitor;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Turns what the user names into files: files as they are, folders searched, patterns expanded. */
final class InputPaths {

  private static final Pattern OPENING = Pattern.compile("1\\.0*1:.*", Pattern.DOTALL);
  private static final int OPENING_BYTES = 8;

  private InputPaths() {}

  static List<Path> expand(List<String> names) {
    List<Path> paths = new ArrayList<>();
    for (String name : names) {
      Path path = path(name);
      if (Files.isDirectory(path)) {
        paths.addAll(transactionsIn(path));
      } else if (Files.exists(path) || !isPattern(name)) {
        paths.add(path);
      } else {
        paths.addAll(matching(path, name));
      }
    }
    return paths;
  }

  private static Path path(String name) {
    try {
      return Path.of(name);
    } catch (InvalidPathException e) {
      if (isPattern(name)) {
        throw CommandFailure.inputOutput(name + ": patterns are only expanded by the shell here");
      }
      throw CommandFailure.usage("not a file name: " + name);
    }
  }

  private static boolean isPattern(String name) {
    return name.indexOf('*') >= 0 || name.indexOf('?') >= 0;
  }

  private static List<Path> transactionsIn(Path folder) {
    List<Path> found = new ArrayList<>();
    try {
      Files.walkFileTree(folder, collectingInto(found));
    } catch (IOException e) {
      throw CommandFailure.inputOutput(IoWords.of(folder, e));
    }
    if (found.isEmpty()) {
      throw CommandFailure.inputOutput(folder + ": no transaction file in this folder");
    }
    found.sort(null);
    return found;
  }

  private static FileVisitor<Path> collectingInto(List<Path> found) {
    return new SimpleFileVisitor<>() {
      @Override
      public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
        // A link is followed to a file, never to a folder, which could lead round in a circle.
        if (Files.isRegularFile(file) && opensLikeOne(file)) {
          found.add(file);
        }
        return FileVisitResult.CONTINUE;
      }

      @Override
      public FileVisitResult visitFileFailed(Path file, IOException failure) {
        found.add(file); // so that the failure is told when the file is opened
        return FileVisitResult.CONTINUE;
      }
    };
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
      throw CommandFailure.inputOutput(IoWords.of(parent, e));
    }
  }

  /** Folders hold all sorts of files; only those that begin like a transaction are meant. */
  private static boolean opensLikeOne(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      String opening = new String(in.readNBytes(OPENING_BYTES), StandardCharsets.ISO_8859_1);
      return OPENING.matcher(opening).matches();
    } catch (IOException e) {
      return true; // so that the failure is told when the file is opened
    }
  }
}
