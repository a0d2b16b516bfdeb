package ridgeproof.corpus.composition;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.Skin;
import ridgeproof.spec.layout.FingerPosition;

/** The people of some stories; each finger is grown once. Safe to share between threads. */
public final class SubjectCache {

  private record Key(long person, FingerPosition digit, Skin skin) {}

  private final Map<Key, MasterFinger> grown = new ConcurrentHashMap<>();

  MasterFinger finger(long person, FingerPosition digit, Skin skin) {
    return grown.computeIfAbsent(
        new Key(person, digit, skin),
        key -> MasterFinger.grow(key.person(), key.digit(), key.skin()));
  }
}
