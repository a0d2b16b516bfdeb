package ridgeproof.corpus.composition;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import ridgeproof.corpus.finger.FingerDigit;
import ridgeproof.corpus.finger.MasterFinger;

/** The people of some stories; each finger is grown once. Safe to share between threads. */
public final class People {

  private record Key(long person, FingerDigit digit) {}

  private final Map<Key, MasterFinger> grown = new ConcurrentHashMap<>();

  MasterFinger finger(long person, FingerDigit digit) {
    return grown.computeIfAbsent(
        new Key(person, digit), key -> MasterFinger.grow(key.person(), key.digit()));
  }
}
