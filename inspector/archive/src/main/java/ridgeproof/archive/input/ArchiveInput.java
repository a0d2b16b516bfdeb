package ridgeproof.archive.input;

import java.io.Serializable;
import java.util.Optional;

/**
 * A file that a run is pointed at.
 *
 * @param address as the Hadoop file systems write it
 * @param bytes its length, 0 where it is not known
 * @param modified milliseconds since 1970-01-01 in UTC
 * @param obstacle why it cannot be read, in a few words; null where nothing is known against it
 */
public record ArchiveInput(String address, long bytes, long modified, String obstacle)
    implements Serializable {

  /** What makes it this input: with other bytes or another date it is another one. */
  public String identity() {
    return address + '\0' + bytes + '\0' + modified;
  }

  public Optional<String> whyNot() {
    return Optional.ofNullable(obstacle);
  }

  /** The last part of the address. */
  public String name() {
    return address.substring(address.lastIndexOf('/') + 1);
  }
}
