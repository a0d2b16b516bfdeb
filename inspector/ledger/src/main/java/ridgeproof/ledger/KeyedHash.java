package ridgeproof.ledger;

import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import ridgeproof.transaction.record.ByteSource;

/**
 * Hashes by a secret key (HMAC with SHA-256, RFC 2104), so that short numbers cannot be found by
 * trying them all. Each purpose gives other hashes of the same value.
 */
public final class KeyedHash {

  /** Bytes of a key. */
  public static final int KEY_BYTES = 32;

  private static final String ALGORITHM = "HmacSHA256";
  private static final int KEPT_BYTES = 16;

  private final SecretKeySpec key;

  /**
   * @throws IllegalArgumentException if the key is not {@value #KEY_BYTES} bytes long
   */
  public KeyedHash(byte[] key) {
    if (key.length != KEY_BYTES) {
      throw new IllegalArgumentException("a key of " + key.length + " bytes");
    }
    this.key = new SecretKeySpec(key, ALGORITHM);
  }

  /** 32 hexadecimal digits that tell the key from another one and nothing else. */
  public String verifier() {
    return of("key", new byte[0]);
  }

  /** 32 hexadecimal digits for a control number. */
  public String control(String number) {
    return of("control", text(number));
  }

  /** 32 hexadecimal digits for an operator as the file names them. */
  public String operator(String name) {
    return of("operator", text(name));
  }

  /** 32 hexadecimal digits for the bytes of an image. */
  public String image(ByteSource bytes) {
    Mac mac = mac("image");
    bytes.feed(mac::update);
    return hexadecimal(mac);
  }

  private static byte[] text(String value) {
    return value.strip().getBytes(StandardCharsets.UTF_8);
  }

  private String of(String purpose, byte[] bytes) {
    Mac mac = mac(purpose);
    mac.update(bytes);
    return hexadecimal(mac);
  }

  private static String hexadecimal(Mac mac) {
    return HexFormat.of().formatHex(mac.doFinal(), 0, KEPT_BYTES);
  }

  private Mac mac(String purpose) {
    try {
      Mac mac = Mac.getInstance(ALGORITHM);
      mac.init(key);
      mac.update(purpose.getBytes(StandardCharsets.US_ASCII));
      mac.update((byte) 0);
      return mac;
    } catch (NoSuchAlgorithmException | InvalidKeyException e) {
      throw new IllegalStateException("every Java platform has " + ALGORITHM, e);
    }
  }
}
