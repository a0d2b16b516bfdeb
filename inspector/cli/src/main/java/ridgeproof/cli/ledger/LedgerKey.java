package ridgeproof.cli.ledger;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Set;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.IoErrorMessages;
import ridgeproof.ledger.KeyedHash;

/** The secret of a ledger: one line of hexadecimal digits in a file for its owner alone. */
public final class LedgerKey {

  private static final Set<PosixFilePermission> OWNER_ONLY =
      PosixFilePermissions.fromString("rw-------");

  private LedgerKey() {}

  /**
   * The key of a file.
   *
   * @param mayMake whether a file that is not there is made; never for a ledger that has entries
   */
  public static byte[] readOrMake(Path file, boolean mayMake) {
    try {
      if (mayMake && !Files.exists(file)) {
        make(file);
      }
      return read(file);
    } catch (NoSuchFileException e) {
      throw CommandFailure.inputOutput(
          file + ": the key file of the ledger is missing; without it entries cannot be tied");
    } catch (IOException e) {
      throw CommandFailure.inputOutput(IoErrorMessages.of(file, e));
    }
  }

  private static byte[] read(Path file) throws IOException {
    if (isPosix(file) && !OWNER_ONLY.containsAll(Files.getPosixFilePermissions(file))) {
      throw CommandFailure.inputOutput(
          file + ": others may read the key file; run: chmod 600 " + file);
    }
    try {
      byte[] key = HexFormat.of().parseHex(Files.readString(file).strip());
      if (key.length == KeyedHash.KEY_BYTES) {
        return key;
      }
    } catch (IllegalArgumentException e) {
      // told below
    }
    throw CommandFailure.inputOutput(file + ": this is not the key file of a ledger");
  }

  /** Whole or not at all, and never over another one: two processes may begin at once. */
  private static void make(Path file) throws IOException {
    byte[] key = new byte[KeyedHash.KEY_BYTES];
    new SecureRandom().nextBytes(key);
    Path parent = file.toAbsolutePath().getParent();
    Path draft = Files.createTempFile(parent, ".key", null, ownerOnly(file));
    try {
      try (SeekableByteChannel out = Files.newByteChannel(draft, StandardOpenOption.WRITE)) {
        String line = HexFormat.of().formatHex(key) + "\n";
        out.write(ByteBuffer.wrap(line.getBytes(StandardCharsets.US_ASCII)));
      }
      Files.createLink(file, draft);
    } catch (FileAlreadyExistsException e) {
      // another process was first
    } catch (UnsupportedOperationException e) {
      Files.move(draft, file);
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  /** What makes a new file its owner's alone; elsewhere the folder of the user does. */
  static FileAttribute<?>[] ownerOnly(Path file) {
    return isPosix(file)
        ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER_ONLY)}
        : new FileAttribute<?>[0];
  }

  private static boolean isPosix(Path file) {
    return file.getFileSystem().supportedFileAttributeViews().contains("posix");
  }
}
