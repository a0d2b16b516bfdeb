package ridgeproof.archive.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class KnownHashesTest {

  @Test
  void itHasWhatWasAddedAndNothingElse() {
    Random random = new Random(3);
    byte[] bytes = new byte[32];
    Set<String> added = new LinkedHashSet<>();
    KnownHashes known = new KnownHashes();
    for (int i = 0; i < 100_000; i++) {
      random.nextBytes(bytes);
      String hash = HexFormat.of().formatHex(bytes, 0, i % 2 == 0 ? 32 : 16);
      if (i % 3 == 0) {
        assertFalse(known.contains(hash));
      } else {
        known.add(hash);
        known.add(hash);
        added.add(hash);
      }
    }
    assertEquals(added.size(), known.size());
    assertTrue(added.stream().allMatch(known::contains));
  }
}
