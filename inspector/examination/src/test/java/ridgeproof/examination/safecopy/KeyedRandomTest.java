package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ridgeproof.transaction.record.ByteSource;

class KeyedRandomTest {

  private static final byte[] FILE = "a file".getBytes(StandardCharsets.US_ASCII);

  private static long number(byte[] file, String purpose, String value, int attempt) {
    return KeyedRandom.of(ByteSource.of(file)).random(purpose, value, attempt).nextLong();
  }

  @Test
  void theSameFilePurposeValueAndAttemptGiveTheSame() {
    assertEquals(number(FILE, "value", "X", 1), number(FILE.clone(), "value", "X", 1));
  }

  @Test
  void anotherFilePurposeValueOrAttemptGivesAnother() {
    long number = number(FILE, "value", "X", 1);
    byte[] lastByteOther = FILE.clone();
    lastByteOther[FILE.length - 1]++;
    assertNotEquals(number, number(lastByteOther, "value", "X", 1));
    assertNotEquals(number, number(FILE, "clock", "X", 1));
    assertNotEquals(number, number(FILE, "value", "Y", 1));
    assertNotEquals(number, number(FILE, "value", "X", 2));
  }

  /** A ticket states the digest of the file: whoever has that must not find what was replaced. */
  @Test
  void theDigestOfTheFileOrOfNothingIsNotTheKey() throws NoSuchAlgorithmException {
    long number = number(FILE, "value", "X", 0);
    byte[] told = HexFormat.of().parseHex(ByteSource.of(FILE).sha256());
    assertNotEquals(seededBy(told), number);
    assertNotEquals(seededBy(new byte[0]), number);
  }

  private static long seededBy(byte[] key) throws NoSuchAlgorithmException {
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    digest.update(key);
    digest.update("value\n0\nX".getBytes(StandardCharsets.US_ASCII));
    return new Random(ByteBuffer.wrap(digest.digest()).getLong()).nextLong();
  }

  @Test
  void withoutTheFileNothingIsTheSame() throws NoSuchAlgorithmException {
    byte[] prefix = "ridgeproof safe copy\n".getBytes(StandardCharsets.US_ASCII);
    byte[] ofNoFile = MessageDigest.getInstance("SHA-256").digest(prefix);
    assertNotEquals(seededBy(ofNoFile), number(FILE, "value", "X", 0));
  }
}
