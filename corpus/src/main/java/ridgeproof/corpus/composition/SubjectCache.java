package ridgeproof.corpus.composition;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import ridgeproof.corpus.finger.FingerDigit;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.Skin;

/** The people of some stories; each finger is grown once. Safe to share between threads. */
public final class SubjectCache {

  private record Key(long person, FingerDigit digit, Skin skin) {}

  private final Map<Key, MasterFinger> grown = new ConcurrentHashMap<>();

  MasterFinger finger(long person, FingerDigit digit, Skin skin) {
    return grown.computeIfAbsent(
        new Key(person, digit, skin),
        key -> MasterFinger.grow(key.person(), key.digit(), key.skin()));
  }
}
