package ridgeproof.transaction.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import org.junit.jupiter.api.Test;

/**
 * The hash of bytes is the same wherever they are held; the values are those of {@code sha256sum}.
 */
class DigestTest {

  private static final String OF_ABC =
      "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
  private static final String OF_NOTHING =
      "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";
  private static final String OF_MANY =
      "0cd0bf930677960951dda8588edcb6b293c0c3b26ef3ba72cddff4ddfc6822c7";

  @Test
  void anArrayAndAPartOfIt() {
    assertEquals(OF_ABC, ByteSource.of(text("abc")).sha256());
    assertEquals(OF_NOTHING, ByteSource.of(text("")).sha256());
    ByteSource part = ByteSource.of(text("12 345abc6"), 100).slice(2, 8);
    assertEquals(OF_ABC, part.slice(4, 3).sha256());
    assertEquals(OF_NOTHING, part.slice(8, 3).sha256());
  }

  @Test
  void aBufferOfMoreThanOnePiece() {
    byte[] many = new byte[10_000];
    for (int i = 0; i < many.length; i++) {
      many[i] = (byte) (i % 251);
    }
    ByteBuffer direct =
        ByteBuffer.allocateDirect(many.length + 7).position(7).put(many).position(7);
    assertEquals(OF_MANY, ByteSource.of(direct).sha256());
    assertEquals(OF_MANY, ByteSource.of(many).sha256());
  }

  @Test
  void whatABase64TextStandsFor() {
    String coded = Base64.getEncoder().encodeToString(text("abc"));
    ByteSource file = ByteSource.of(text("<a>" + coded + "</a>"));
    assertEquals(OF_ABC, ByteSource.ofBase64(file.slice(3, coded.length()), 3).sha256());
  }

  private static byte[] text(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }
}
