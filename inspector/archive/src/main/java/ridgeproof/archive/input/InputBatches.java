package ridgeproof.archive.input;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.Predicate;

/** Takes inputs from a listing in batches, each of which is committed as a whole. */
public final class InputBatches {

  private final Iterator<ArchiveInput> listing;
  private final Predicate<ArchiveInput> wanted;
  private final long maxFiles;
  private final long maxBytes;
  private long leftOut;

  /**
   * @param wanted whether an input is not in the archive yet
   * @param maxFiles of a batch
   * @param maxBytes of a batch, but a batch has one input at least
   */
  public InputBatches(
      Iterator<ArchiveInput> listing,
      Predicate<ArchiveInput> wanted,
      long maxFiles,
      long maxBytes) {
    this.listing = listing;
    this.wanted = wanted;
    this.maxFiles = maxFiles;
    this.maxBytes = maxBytes;
  }

  /** The next batch; empty at the end. */
  public List<ArchiveInput> next() {
    List<ArchiveInput> batch = new ArrayList<>();
    long bytes = 0;
    while (batch.size() < maxFiles && bytes < maxBytes && listing.hasNext()) {
      ArchiveInput input = listing.next();
      if (wanted.test(input)) {
        batch.add(input);
        bytes += input.bytes();
      } else {
        leftOut++;
      }
    }
    return batch;
  }

  /** How many inputs were in the archive already. */
  public long leftOut() {
    return leftOut;
  }
}
