package ridgeproof.archive.writing;

import org.apache.spark.Partitioner;
import ridgeproof.archive.examining.ResultKey;

/** Gives all results of a day to one task, so that a batch has one file for each day and table. */
final class DayPartitioner extends Partitioner {

  private static final long serialVersionUID = 1L;

  private final int parts;

  DayPartitioner(int parts) {
    this.parts = parts;
  }

  @Override
  public int numPartitions() {
    return parts;
  }

  @Override
  public int getPartition(Object key) {
    return (int) Math.floorMod(((ResultKey) key).day(), (long) parts);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DayPartitioner partitioner && partitioner.parts == parts;
  }

  @Override
  public int hashCode() {
    return parts;
  }
}
