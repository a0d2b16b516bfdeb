package ridgeproof.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import ridgeproof.transaction.record.ByteSource;

/**
 * The values are those of {@code openssl dgst -sha256 -mac HMAC} for the purpose, a zero, the
 * value.
 */
class KeyedHashTest {

  private final KeyedHash hash = new KeyedHash(key());

  @Test
  void eachPurposeGivesAnotherHash() {
    assertEquals("d8fd5cb8632896753eab1bbebcaae45a", hash.verifier());
    assertEquals("91e3039a801bc099c8955c7d89582c11", hash.control(" AB12 "));
    assertEquals("35b07964a15c0f1212b061f975b37e96", hash.operator("AB12"));
  }

  @Test
  void anImageIsHashedWhereverItIsHeld() {
    byte[] bytes = "12abc3".getBytes(StandardCharsets.ISO_8859_1);
    String expected = "bb63b354e94fa3ef4b6f0037ff32bc48";
    assertEquals(expected, hash.image(ByteSource.of(bytes).slice(2, 3)));
    ByteBuffer direct = ByteBuffer.allocateDirect(6).put(bytes).flip();
    assertEquals(expected, hash.image(ByteSource.of(direct).slice(2, 3)));
  }

  @Test
  void aKeyOfAnotherLengthIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new KeyedHash(new byte[16]));
  }

  private static byte[] key() {
    byte[] key = new byte[KeyedHash.KEY_BYTES];
    for (int i = 0; i < key.length; i++) {
      key[i] = (byte) i;
    }
    return key;
  }
}
