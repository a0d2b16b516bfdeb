package ridgeproof.desk.work;

import java.security.SecureRandom;
import java.util.List;
import java.util.Optional;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.bookkeeping.Bookkeeper;
import ridgeproof.spec.SpecTables;

/** What a ledger would keep of the files on the desk, for as long as they are there. */
public final class StationShots {

  private final Bookkeeper bookkeeper;

  public StationShots(SpecTables tables) {
    byte[] key = new byte[KeyedHash.KEY_BYTES];
    new SecureRandom().nextBytes(key);
    this.bookkeeper = new Bookkeeper(new KeyedHash(key), tables, "", false, List.of());
  }

  /** Of an examined file; empty for others. */
  public Optional<Entry> of(DeskFile file) {
    return file.examined()
        .filter(examined -> file.state() == DeskFile.State.EXAMINED)
        .map(
            examined ->
                bookkeeper.entry(examined.file().sha256(), examined.report(), file.arrived()));
  }
}
