package ridgeproof.archive.writing;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import ridgeproof.archive.store.KnownRows;

/**
 * What a task wrote. Every attempt of a task has files of its own; the driver hears of one of them,
 * and commits no others.
 *
 * @param files with their paths below the folder of the batch
 * @param known what the rows know again
 */
public record WrittenTables(List<String> files, KnownRows known, long examined, long quarantined)
    implements Serializable {

  public static WrittenTables none() {
    return new WrittenTables(List.of(), KnownRows.none(), 0, 0);
  }

  /** Both. */
  public WrittenTables and(WrittenTables other) {
    List<String> all = new ArrayList<>(files);
    all.addAll(other.files);
    known.addAll(other.known);
    return new WrittenTables(
        all, known, examined + other.examined, quarantined + other.quarantined);
  }
}
