package ridgeproof.cli.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.IoErrorMessages;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.store.LedgerError;
import ridgeproof.ledger.store.LedgerStore;

/**
 * Where a ledger is.
 *
 * @param address of the database
 * @param file that holds it, where it is a file
 * @param key file with the secret
 */
record LedgerPlace(String address, Optional<Path> file, Path key) {

  private static final String ADDRESS = "jdbc:";

  /**
   * @param ledger a file or an address
   * @param key null for the usual place
   */
  static LedgerPlace of(String ledger, Path key) {
    if (ledger.startsWith(ADDRESS)) {
      if (key == null) {
        throw CommandFailure.usage("--ledger with an address needs --ledger-key FILE");
      }
      return new LedgerPlace(ledger, Optional.empty(), key);
    }
    Path file = Path.of(ledger).toAbsolutePath();
    Path usual = file.resolveSibling(file.getFileName() + ".key");
    return new LedgerPlace("jdbc:sqlite:" + file, Optional.of(file), key == null ? usual : key);
  }

  /** The hash by the key of a ledger to write to, which is made with a new ledger. */
  KeyedHash hashToRecord() {
    return new KeyedHash(LedgerKey.readOrMake(key, file.isEmpty() || !exists()));
  }

  /** The hash by the key of a ledger that is there. */
  KeyedHash hash() {
    if (file.isPresent() && !exists()) {
      throw CommandFailure.inputOutput(file.get() + ": there is no ledger");
    }
    return new KeyedHash(LedgerKey.readOrMake(key, false));
  }

  private boolean exists() {
    return file.isPresent() && Files.exists(file.get());
  }

  /** Opens it and makes it if need be. */
  LedgerStore open(KeyedHash hash) {
    try {
      if (file.isPresent() && !Files.exists(file.get())) {
        makeEmpty(file.get());
      }
      return LedgerStore.open(address, hash.verifier());
    } catch (LedgerError e) {
      throw CommandFailure.inputOutput(where() + ": " + e.getMessage());
    }
  }

  /** An address may hold a password. */
  private String where() {
    return file.map(Path::toString).orElse("ledger");
  }

  /** An empty file is an empty database; made here so that others cannot read it. */
  private static void makeEmpty(Path file) {
    try {
      Files.newByteChannel(
              file,
              Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE),
              LedgerKey.ownerOnly(file))
          .close();
    } catch (IOException e) {
      throw CommandFailure.inputOutput(IoErrorMessages.of(file, e));
    }
  }
}
