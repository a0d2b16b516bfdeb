package ridgeproof.archive.input;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;
import ridgeproof.archive.local.ArchiveFileSystem;

/**
 * The files below some addresses, by name, one folder in memory at a time. What cannot be listed is
 * an input with an obstacle, so that it is told of and stops nothing.
 */
public final class InputListing implements Iterator<ArchiveInput> {

  private final Configuration configuration;
  private final Deque<Iterator<Path>> addresses = new ArrayDeque<>();
  private final Deque<List<FileStatus>> waiting = new ArrayDeque<>();
  private ArchiveInput next;

  /**
   * @param addresses of files and folders
   */
  public InputListing(Iterator<Path> addresses, Configuration configuration) {
    this.configuration = configuration;
    this.addresses.add(addresses);
    next = find();
  }

  @Override
  public boolean hasNext() {
    return next != null;
  }

  @Override
  public ArchiveInput next() {
    if (next == null) {
      throw new NoSuchElementException();
    }
    ArchiveInput found = next;
    next = find();
    return found;
  }

  private ArchiveInput find() {
    while (true) {
      while (!waiting.isEmpty()) {
        List<FileStatus> folder = waiting.peek();
        if (folder.isEmpty()) {
          waiting.pop();
          continue;
        }
        ArchiveInput found = visit(folder.remove(folder.size() - 1));
        if (found != null) {
          return found;
        }
      }
      if (!addresses.peek().hasNext()) {
        return null;
      }
      Path address = addresses.peek().next();
      try {
        waiting.push(new ArrayList<>(List.of(fileSystem(address).getFileStatus(address))));
      } catch (IOException | IllegalArgumentException e) {
        return new ArchiveInput(address.toString(), 0, 0, "cannot be found");
      }
    }
  }

  private ArchiveInput visit(FileStatus status) {
    Path path = status.getPath();
    if (!status.isDirectory()) {
      return file(status);
    }
    if (ArchiveFileSystem.isLocal(path) && Files.isSymbolicLink(ArchiveFileSystem.local(path))) {
      return blocked(status, "a link to a folder, which is not followed");
    }
    try {
      List<FileStatus> children = new ArrayList<>(Arrays.asList(fileSystem(path).listStatus(path)));
      if (ArchiveFileSystem.isLocal(path)) {
        children.addAll(deadLinks(path, children.size()));
      }
      // The last is taken first.
      children.sort(Comparator.comparing(FileStatus::getPath).reversed());
      waiting.push(children);
      return null;
    } catch (IOException e) {
      return blocked(status, "a folder that cannot be listed");
    }
  }

  /** Links that point nowhere, which a listing leaves out; looked for only where it lacks names. */
  private static List<FileStatus> deadLinks(Path folder, int listed) throws IOException {
    String[] names = ArchiveFileSystem.local(folder).toFile().list();
    if (names == null || names.length == listed) {
      return List.of();
    }
    List<FileStatus> links = new ArrayList<>();
    try (DirectoryStream<java.nio.file.Path> children =
        Files.newDirectoryStream(ArchiveFileSystem.local(folder), InputListing::isDeadLink)) {
      for (java.nio.file.Path link : children) {
        links.add(new FileStatus(0, false, 0, 0, 0, new Path(link.toUri())));
      }
    } catch (DirectoryIteratorException e) {
      throw e.getCause();
    }
    return links;
  }

  private static boolean isDeadLink(java.nio.file.Path path) {
    return Files.isSymbolicLink(path) && !Files.exists(path);
  }

  private static ArchiveInput file(FileStatus status) {
    Path path = status.getPath();
    if (ArchiveFileSystem.isLocal(path) && isDeadLink(ArchiveFileSystem.local(path))) {
      return blocked(status, "a link that points nowhere");
    }
    if (ArchiveFileSystem.isLocal(path) && !Files.isRegularFile(ArchiveFileSystem.local(path))) {
      return blocked(status, "a pipe or device");
    }
    return new ArchiveInput(path.toString(), status.getLen(), status.getModificationTime(), null);
  }

  /** Without its date: that of a folder changes with what is in it. */
  private static ArchiveInput blocked(FileStatus status, String obstacle) {
    return new ArchiveInput(status.getPath().toString(), 0, 0, obstacle);
  }

  private FileSystem fileSystem(Path path) throws IOException {
    return ArchiveFileSystem.of(path, configuration);
  }
}
