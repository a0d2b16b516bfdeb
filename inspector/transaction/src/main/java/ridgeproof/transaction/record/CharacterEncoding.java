package ridgeproof.transaction.record;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** How bytes of text fields stand for characters: field 1.015. */
public enum CharacterEncoding {
  /** 7-bit ASCII, the default. */
  ASCII("000", StandardCharsets.US_ASCII),
  /** ISO-8859-1. */
  LATIN_1("001", StandardCharsets.ISO_8859_1),
  UTF_8("003", StandardCharsets.UTF_8);

  private final String code;
  private final Charset charset;

  CharacterEncoding(String code, Charset charset) {
    this.code = code;
    this.charset = charset;
  }

  /** The code of field 1.015. */
  public String code() {
    return code;
  }

  /** The text; bytes outside the set are read as ISO-8859-1, so that nothing is lost. */
  public String decode(byte[] bytes) {
    if (this != UTF_8 || isAscii(bytes)) {
      return new String(bytes, StandardCharsets.ISO_8859_1);
    }
    try {
      return charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      return new String(bytes, StandardCharsets.ISO_8859_1);
    }
  }

  /** Whether every byte is one that the set has in text. */
  public boolean admits(byte[] bytes) {
    if (isAscii(bytes)) {
      return true;
    }
    return switch (this) {
      case ASCII -> false;
      case LATIN_1 -> true;
      case UTF_8 -> isUtf8(bytes);
    };
  }

  /** The bytes of a text. */
  public byte[] encode(String text) {
    return text.getBytes(this == UTF_8 ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1);
  }

  private static boolean isAscii(byte[] bytes) {
    for (byte b : bytes) {
      if (b < 0) {
        return false;
      }
    }
    return true;
  }

  private static boolean isUtf8(byte[] bytes) {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
      return true;
    } catch (CharacterCodingException e) {
      return false;
    }
  }
}
