package ridgeproof.gate;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The few things that a gate does to files. Tests make each of them fail or the last one ever. */
class GateFiles {

  private static final int CHUNK = 64 * 1024;

  /** What tells whether a file still grows. */
  record Facts(long bytes, long modifiedMillis) {}

  /** Names of files and folders in a folder, sorted; none where there is no such folder. */
  List<Path> list(Path folder) throws IOException {
    try (Stream<Path> found = Files.list(folder)) {
      return found.sorted().toList();
    } catch (NoSuchFileException e) {
      return List.of();
    }
  }

  /** The facts of a file; empty where there is none, also where it is a folder or a link. */
  Optional<Facts> facts(Path file) throws IOException {
    try {
      BasicFileAttributes found =
          Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      return found.isRegularFile()
          ? Optional.of(new Facts(found.size(), found.lastModifiedTime().toMillis()))
          : Optional.empty();
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  boolean exists(Path path) {
    return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
  }

  byte[] read(Path file) throws IOException {
    return Files.readAllBytes(file);
  }

  /** What stands in a file from an offset on. */
  byte[] readFrom(Path file, long offset) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      return Channels.newInputStream(channel.position(offset)).readAllBytes();
    }
  }

  /** The SHA-256 of a file of any size. */
  String sha256(Path file) throws IOException {
    MessageDigest digest = GateExamination.sha256();
    try (InputStream in = Files.newInputStream(file)) {
      byte[] chunk = new byte[CHUNK];
      for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
        digest.update(chunk, 0, read);
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  /** Makes a folder and those above it. */
  void makeFolder(Path folder) throws IOException {
    Files.createDirectories(folder);
  }

  /** Writes a file of our own anew. It is on the disk when this returns. */
  void write(Path file, byte[] bytes) throws IOException {
    store(
        file,
        bytes,
        StandardOpenOption.CREATE,
        StandardOpenOption.TRUNCATE_EXISTING,
        StandardOpenOption.WRITE);
  }

  /** Adds to a file of our own. It is on the disk when this returns. */
  void append(Path file, byte[] bytes) throws IOException {
    store(file, bytes, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
  }

  private static void store(Path file, byte[] bytes, StandardOpenOption... how) throws IOException {
    try (FileChannel channel = FileChannel.open(file, how)) {
      ByteBuffer left = ByteBuffer.wrap(bytes);
      while (left.hasRemaining()) {
        channel.write(left);
      }
      channel.force(true);
    }
  }

  /**
   * Moves a file or a folder to a name that is free. There is no moment in which it is in neither.
   */
  void move(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    remember(from.getParent());
    remember(to.getParent());
  }

  /** Deletes a file of our own or an empty folder. */
  void delete(Path path) throws IOException {
    Files.deleteIfExists(path);
  }

  /**
   * A name in a folder outlives a power failure once the folder is written; not all systems can.
   */
  private static void remember(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // The move itself is done.
    }
  }
}
