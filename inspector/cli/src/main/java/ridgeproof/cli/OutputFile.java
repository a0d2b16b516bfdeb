package ridgeproof.cli;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.CopyOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collection;

/**
 * A file that is written beside its place and moved there when it is whole, so that a reader never
 * sees half of it. What is not whole when it is closed, or when the process is ended, is deleted.
 */
final class OutputFile implements Closeable {

  private final Path target;
  private final Path temporary;
  private final OutputStream stream;
  private final boolean overwrite;
  private final Thread whenEnded;

  private OutputFile(Path target, Path temporary, boolean overwrite) throws IOException {
    this.target = target;
    this.temporary = temporary;
    this.overwrite = overwrite;
    this.whenEnded = new Thread(() -> discard(temporary));
    Runtime.getRuntime().addShutdownHook(whenEnded);
    this.stream = new BufferedOutputStream(Files.newOutputStream(temporary));
  }

  /**
   * Begins the file.
   *
   * @param inputs files that must never be written to
   */
  static OutputFile open(Path target, boolean overwrite, Collection<Path> inputs) {
    try {
      for (Path input : inputs) {
        if (Files.exists(target) && Files.exists(input) && Files.isSameFile(target, input)) {
          throw CommandFailure.usage(target + ": is an input; inputs are never written to");
        }
      }
      if (Files.exists(target) && !overwrite) {
        throw CommandFailure.inputOutput(target + ": exists already; --overwrite replaces it");
      }
      Path folder = target.toAbsolutePath().getParent();
      Path temporary = Files.createTempFile(folder, "." + target.getFileName(), ".part");
      return new OutputFile(target, temporary, overwrite);
    } catch (IOException e) {
      throw failure(target, e);
    }
  }

  /**
   * Writes the bytes.
   *
   * @param inputs files that must never be written to
   */
  static void write(Path target, byte[] bytes, boolean overwrite, Collection<Path> inputs) {
    try (OutputFile file = open(target, overwrite, inputs)) {
      file.stream().write(bytes);
      file.commit();
    } catch (IOException e) {
      throw failure(target, e);
    }
  }

  static CommandFailure failure(Path target, IOException cause) {
    return CommandFailure.inputOutput("cannot write " + IoWords.of(target, cause));
  }

  Path target() {
    return target;
  }

  OutputStream stream() {
    return stream;
  }

  /** Ends the file and moves it to its place. */
  void commit() throws IOException {
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
    discard(temporary);
    try {
      Runtime.getRuntime().removeShutdownHook(whenEnded);
    } catch (IllegalStateException e) {
      // The process is being ended; the hook does its work again, which does no harm.
    }
  }

  private static void discard(Path temporary) {
    try {
      Files.deleteIfExists(temporary);
    } catch (IOException e) {
      // The first failure is the one worth telling.
    }
  }
}
