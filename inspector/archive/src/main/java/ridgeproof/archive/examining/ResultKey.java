package ridgeproof.archive.examining;

import java.io.Serializable;

/**
 * The order of results within the tables; files with the same bytes stand beside each other.
 *
 * @param day of the partition, in days since 1970-01-01
 * @param fileHash empty where the file was not read
 * @param input keyed hash of the input
 */
public record ResultKey(long day, String fileHash, String input)
    implements Serializable, Comparable<ResultKey> {

  @Override
  public int compareTo(ResultKey other) {
    int byDay = Long.compare(day, other.day);
    int byFile = byDay != 0 ? byDay : fileHash.compareTo(other.fileHash);
    return byFile != 0 ? byFile : input.compareTo(other.input);
  }
}
