package ridgeproof.imagery.codec;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageCodec.StatedSize;
import ridgeproof.imagery.ImageDefect.Kind;
import ridgeproof.transaction.record.ByteSource;

class RawCodecTest {

  private static Decoding decode(int width, int height, int bits, int... bytes) {
    byte[] pixels = new byte[bytes.length];
    for (int i = 0; i < bytes.length; i++) {
      pixels[i] = (byte) bytes[i];
    }
    return new RawCodec()
        .decode(
            ByteSource.of(pixels), new StatedSize(width, height, bits), DecodingLimits.standard());
  }

  private static int[] grays(Decoding decoding) {
    assertEquals(List.of(), decoding.defects());
    byte[] pixels = decoding.image().orElseThrow().toArray();
    int[] grays = new int[pixels.length];
    for (int i = 0; i < grays.length; i++) {
      grays[i] = pixels[i] & 0xFF;
    }
    return grays;
  }

  @Test
  void eightBitsAreTakenAsTheyAre() {
    assertArrayEquals(new int[] {0, 127, 200, 255}, grays(decode(2, 2, 8, 0, 127, 200, 255)));
  }

  @Test
  void sixteenBitsAreScaledRounding() {
    assertArrayEquals(
        new int[] {0, 255, 128, 1},
        grays(decode(4, 1, 16, 0x00, 0x80, 0xFF, 0xFF, 0x80, 0x00, 0x00, 0x81)));
  }

  @Test
  void twentyFourBitsBecomeLuminance() {
    assertArrayEquals(
        new int[] {76, 150, 29, 255},
        grays(decode(4, 1, 24, 255, 0, 0, 0, 255, 0, 0, 0, 255, 255, 255, 255)));
  }

  @Test
  void oneIsBlackInABinaryImage() {
    assertArrayEquals(
        new int[] {0, 255, 0, 255, 255, 255, 255, 255, 0}, grays(decode(9, 1, 1, 0xA0, 0x80)));
  }

  @Test
  void binaryRowsBeginOnAByteUnlessOnlyPackedRowsFit() {
    assertArrayEquals(new int[] {0, 255, 255, 0, 0, 255}, grays(decode(3, 2, 1, 0x80, 0xC0)));
    assertArrayEquals(new int[] {0, 255, 255, 0, 0, 255}, grays(decode(3, 2, 1, 0x98)));
  }

  @Test
  void missingRowsAreDamageAndThoseThereAreShown() {
    Decoding decoding = decode(2, 3, 8, 1, 2, 3, 4, 5);
    assertEquals(2, decoding.image().orElseThrow().height());
    assertEquals(Kind.DAMAGE, decoding.defects().get(0).kind());
    assertEquals(5, decoding.defects().get(0).offset());
  }

  @Test
  void bytesAfterTheLastRowAreTrailing() {
    Decoding decoding = decode(2, 2, 8, 1, 2, 3, 4, 5, 6);
    assertEquals(Kind.TRAILING_BYTES, decoding.defects().get(0).kind());
    assertEquals(4, decoding.defects().get(0).offset());
  }

  @ParameterizedTest
  @CsvSource({"0, 5, 8", "5, 0, 8", "-1, 5, 8", "2, 2, 7", "2, 2, 0", "1000, 1000, 8"})
  void sizesThatCannotBeGiveNoImage(int width, int height, int bits) {
    Decoding decoding = decode(width, height, bits, 1, 2, 3);
    assertTrue(decoding.image().isEmpty());
    assertEquals(Kind.DAMAGE, decoding.defects().get(0).kind());
  }
}
