package ridgeproof.archive.store;

import java.io.Serializable;

/** Hashes that an archive has, by their first 128 bits. Takes 32 to 64 bytes of memory for each. */
public final class KnownHashes implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final int DIGITS = 16;
  private static final int HEXADECIMAL = 16;

  /** Pairs of numbers; a pair of zeros is a free place. */
  private long[] pairs = new long[2048];

  private int size;

  /**
   * Adds a hash.
   *
   * @param hash 32 hexadecimal digits or more
   */
  public void add(String hash) {
    add(high(hash), low(hash));
  }

  private void add(long high, long low) {
    if (4L * size >= pairs.length) {
      grow();
    }
    put(high, low);
  }

  public boolean contains(String hash) {
    int place = place(high(hash), low(hash));
    return pairs[place] != 0 || pairs[place + 1] != 0;
  }

  /** Adds all of another set. */
  public void addAll(KnownHashes others) {
    for (int i = 0; i < others.pairs.length; i += 2) {
      if (others.pairs[i] != 0 || others.pairs[i + 1] != 0) {
        add(others.pairs[i], others.pairs[i + 1]);
      }
    }
  }

  public int size() {
    return size;
  }

  private void put(long high, long low) {
    int place = place(high, low);
    if (pairs[place] == 0 && pairs[place + 1] == 0) {
      pairs[place] = high;
      pairs[place + 1] = low;
      size++;
    }
  }

  /** Where the pair is, or the free place where it belongs. */
  private int place(long high, long low) {
    int mask = pairs.length - 1;
    int place = (int) (high << 1) & mask;
    while ((pairs[place] != 0 || pairs[place + 1] != 0)
        && (pairs[place] != high || pairs[place + 1] != low)) {
      place = place + 2 & mask;
    }
    return place;
  }

  private void grow() {
    long[] old = pairs;
    pairs = new long[2 * old.length];
    size = 0;
    for (int i = 0; i < old.length; i += 2) {
      if (old[i] != 0 || old[i + 1] != 0) {
        put(old[i], old[i + 1]);
      }
    }
  }

  private static long high(String hash) {
    return Long.parseUnsignedLong(hash, 0, DIGITS, HEXADECIMAL);
  }

  private static long low(String hash) {
    return Long.parseUnsignedLong(hash, DIGITS, 2 * DIGITS, HEXADECIMAL);
  }
}
