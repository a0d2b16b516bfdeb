package ridgeproof.cli.io;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;

/** Says in a few words why reading or writing failed. */
public final class IoErrorMessages {

  private IoErrorMessages() {}

  public static String of(Path path, IOException failure) {
    return path + ": " + reason(failure);
  }

  private static String reason(IOException failure) {
    if (failure instanceof NoSuchFileException) {
      return "no such file or folder";
    }
    if (failure instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (failure instanceof FileAlreadyExistsException) {
      return "already exists";
    }
    if (failure instanceof NotDirectoryException || failure instanceof DirectoryNotEmptyException) {
      return "not a folder";
    }
    if (failure instanceof FileSystemException system && system.getReason() != null) {
      return system.getReason();
    }
    return failure.getMessage() == null ? "cannot be read or written" : failure.getMessage();
  }
}
