package ridgeproof.ledger.report;

import java.util.HashMap;
import java.util.Map;

/** Counts cases by a key, and those of them that are meant. */
final class ShareCounts<K> {

  private final Map<K, long[]> counts = new HashMap<>();

  /** Counts one case. */
  void add(K key, boolean meant) {
    long[] count = counts.computeIfAbsent(key, k -> new long[2]);
    count[0] += meant ? 1 : 0;
    count[1]++;
  }

  /** The share of a key, of no cases where there are none. */
  Share of(K key) {
    long[] count = counts.getOrDefault(key, new long[2]);
    return new Share(count[0], count[1]);
  }

  Map<K, Share> shares() {
    Map<K, Share> shares = new HashMap<>();
    counts.keySet().forEach(key -> shares.put(key, of(key)));
    return shares;
  }
}
