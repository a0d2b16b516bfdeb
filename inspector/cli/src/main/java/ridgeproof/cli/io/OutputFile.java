package ridgeproof.cli.io;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.file.CopyOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Collection;
import java.util.Set;
import java.util.UUID;

/**
 * A file that is written beside its place and moved there when it is whole, so that a reader never
 * sees half of it. What is not whole when it is closed, or when the process is ended, is deleted.
 */
public final class OutputFile implements Closeable {

  private static final Set<PosixFilePermission> OWNER_ALONE =
      Set.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

  private final Path target;
  private final Path temporary;
  private final boolean overwrite;
  private final Thread whenEnded = new Thread(this::discard);
  private final OutputStream stream;
  private boolean discarded;

  private OutputFile(Path target, boolean overwrite) throws IOException {
    Path folder = target.toAbsolutePath().getParent();
    this.target = target;
    this.temporary = folder.resolve("." + target.getFileName() + "." + UUID.randomUUID() + ".part");
    this.overwrite = overwrite;
    // Before there is a file, so that there is no moment in which an end of the process leaves it.
    Runtime.getRuntime().addShutdownHook(whenEnded);
    try {
      this.stream = begin();
    } catch (IOException e) {
      forget();
      throw e;
    }
  }

  private synchronized OutputStream begin() throws IOException {
    if (discarded) {
      throw new IOException("the process is ending");
    }
    return new BufferedOutputStream(
        Channels.newOutputStream(
            Files.newByteChannel(
                temporary,
                Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
                permissions())));
  }

  private FileAttribute<?>[] permissions() {
    return temporary.getFileSystem().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER_ALONE)}
        : new FileAttribute<?>[0];
  }

  /**
   * Fails where the file could not be begun, so that this is known before the work.
   *
   * @param inputs files that must never be written to
   */
  public static void refuse(Path target, boolean overwrite, Collection<Path> inputs) {
    try {
      for (Path input : inputs) {
        if (Files.exists(target) && Files.exists(input) && Files.isSameFile(target, input)) {
          throw isInput(target);
        }
      }
    } catch (IOException e) {
      throw failure(target, e);
    }
    if (Files.exists(target) && !overwrite) {
      throw exists(target);
    }
  }

  /**
   * Begins the file.
   *
   * @param inputs files that must never be written to
   */
  public static OutputFile open(Path target, boolean overwrite, Collection<Path> inputs) {
    refuse(target, overwrite, inputs);
    try {
      return new OutputFile(target, overwrite);
    } catch (IOException e) {
      throw failure(target, e);
    }
  }

  /**
   * Writes the bytes.
   *
   * @param inputs files that must never be written to
   */
  public static void write(Path target, byte[] bytes, boolean overwrite, Collection<Path> inputs) {
    try (OutputFile file = open(target, overwrite, inputs)) {
      file.stream().write(bytes);
      file.commit();
    } catch (IOException e) {
      throw failure(target, e);
    }
  }

  public static CommandFailure isInput(Path target) {
    return CommandFailure.usage(target + ": is an input file, and input files are never changed");
  }

  public static CommandFailure exists(Path target) {
    return CommandFailure.inputOutput(target + ": already exists; --overwrite replaces it");
  }

  public static CommandFailure failure(Path target, IOException cause) {
    return CommandFailure.inputOutput("cannot write " + IoErrorMessages.of(target, cause));
  }

  Path target() {
    return target;
  }

  public OutputStream stream() {
    return stream;
  }

  /** Ends the file and moves it to its place. */
  public void commit() throws IOException {
    stream.close();
    CopyOption[] options =
        overwrite ? new CopyOption[] {StandardCopyOption.REPLACE_EXISTING} : new CopyOption[0];
    Files.move(temporary, target, options);
  }

  /** Deletes the file unless it is whole and in its place. */
  @Override
  public void close() {
    try {
      stream.close();
    } catch (IOException e) {
      // The first failure is the one worth telling.
    }
    forget();
  }

  private void forget() {
    discard();
    try {
      Runtime.getRuntime().removeShutdownHook(whenEnded);
    } catch (IllegalStateException e) {
      // The process is being ended; the hook does the same again.
    }
  }

  private synchronized void discard() {
    discarded = true;
    try {
      Files.deleteIfExists(temporary);
    } catch (IOException e) {
      // The first failure is the one worth telling.
    }
  }
}
