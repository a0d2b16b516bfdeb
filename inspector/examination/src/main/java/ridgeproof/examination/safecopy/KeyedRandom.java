package ridgeproof.examination.safecopy;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Random;
import ridgeproof.transaction.record.ByteSource;

/**
 * Chance that only a holder of the original file can repeat: a digest of its bytes behind a prefix,
 * so that the SHA-256 of the file, which a ticket tells, does not lead to it.
 */
final class KeyedRandom {

  private static final String PREFIX = "ridgeproof safe copy\n";

  private final byte[] key;

  private KeyedRandom(byte[] key) {
    this.key = key;
  }

  static KeyedRandom of(ByteSource file) {
    MessageDigest digest = sha256();
    digest.update(PREFIX.getBytes(StandardCharsets.US_ASCII));
    file.feed(digest::update);
    return new KeyedRandom(digest.digest());
  }

  /** The same for the same purpose, value and attempt. */
  Random random(String purpose, String value, int attempt) {
    MessageDigest digest = sha256();
    digest.update(key);
    digest.update((purpose + '\n' + attempt + '\n' + value).getBytes(StandardCharsets.UTF_8));
    return new Random(ByteBuffer.wrap(digest.digest()).getLong());
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
