package ridgeproof.imagery.blank;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageCodec.StatedSize;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.ImageSamples;
import ridgeproof.imagery.codec.ImageCodecs;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.record.ByteSource;

class BlankImagesTest {

  private static final Set<String> HARMLESS = Set.of("NIST_COM", "PPI", "PIX_WIDTH");
  private static final StatedSize SIZE = new StatedSize(ImageSamples.WIDTH, ImageSamples.HEIGHT, 8);

  /** A directory, and Huffman tables between scans. */
  private static final Set<String> WITH_TABLES_AT_THE_END =
      Set.of("group4.tif", "colour-progressive.jpg");

  private static final int COPIED_BY_CHANCE = 16;

  static Set<String> names() {
    return ImageSamples.all().keySet();
  }

  private static byte[] blank(byte[] image, boolean sound) {
    return new BlankImages((key, value) -> HARMLESS.contains(key))
        .inPlaceOf(ByteSource.of(image), ImageFormat.RAW, 8, sound);
  }

  private static ImageHeader header(byte[] image) {
    return ImageHeaders.read(ByteSource.of(image));
  }

  private static Decoding decode(byte[] image) {
    return ImageCodecs.standard()
        .decode(ByteSource.of(image), header(image), SIZE, DecodingLimits.standard());
  }

  private static Set<Integer> grays(GrayImage image) {
    Set<Integer> levels = new TreeSet<>();
    for (byte pixel : image.toArray()) {
      levels.add(pixel & 0xFF);
    }
    return levels;
  }

  @ParameterizedTest
  @MethodSource("names")
  void aBlankImageHasTheSizeDepthAndBytesOfTheOneItStandsFor(String name) {
    byte[] image = ImageSamples.all().get(name);
    byte[] blank = blank(image, true);
    assertEquals(image.length, blank.length);
    assertFalse(Arrays.equals(image, blank));
    ImageHeader before = header(image);
    ImageHeader after = header(blank);
    assertEquals(before.format(), after.format());
    assertEquals(before.width(), after.width());
    assertEquals(before.height(), after.height());
    assertEquals(before.bitsPerPixel(), after.bitsPerPixel());
    assertEquals(before.density(), after.density());
    assertEquals(before.extent(), after.extent());
  }

  @ParameterizedTest
  @MethodSource("names")
  void aBlankImageShowsNothing(String name) {
    Decoding decoding = decode(blank(ImageSamples.all().get(name), true));
    boolean coded = !List.of("colour-progressive.jpg", "gray-arithmetic.jpg").contains(name);
    assertEquals(coded, decoding.image().isPresent() && decoding.defects().isEmpty(), name);
    decoding
        .image()
        .filter(image -> coded)
        .ifPresent(image -> assertEquals(1, grays(image).size(), () -> grays(image).toString()));
  }

  @ParameterizedTest
  @MethodSource("names")
  void nothingOfTheCodedDataIsLeft(String name) {
    byte[] image = ImageSamples.all().get(name);
    for (boolean sound : new boolean[] {true, false}) {
      byte[] blank = blank(image, sound);
      // Headers and tables stand before the last quarter of each sample; end markers after it.
      int from = image.length * 3 / 4;
      int same = 0;
      for (int i = from; i < image.length - COPIED_BY_CHANCE; i++) {
        same = image[i] == blank[i] ? same + 1 : 0;
        assertTrue(
            same < COPIED_BY_CHANCE || WITH_TABLES_AT_THE_END.contains(name), name + " at " + i);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void damageOfTheCodestreamStaysDamage(String name) {
    byte[] whole = ImageSamples.all().get(name);
    byte[] cut = Arrays.copyOf(whole, whole.length * 2 / 3);
    byte[] blank = blank(cut, false);
    assertEquals(cut.length, blank.length);
    if (!header(cut).defects().isEmpty()) {
      assertTrue(
          header(blank).defects().stream().anyMatch(d -> d.kind() == ImageDefect.Kind.DAMAGE),
          name);
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void anythingAtAllInItsPlaceIsNoReasonToThrow(String name) {
    byte[] image = ImageSamples.all().get(name);
    for (int i = 2; i < image.length; i += 37) {
      byte[] changed = image.clone();
      changed[i] ^= (byte) 0xA5;
      assertEquals(image.length, blank(changed, false).length);
      assertEquals(i, blank(Arrays.copyOf(image, i), false).length);
    }
  }

  @Test
  void aCommentKeepsItsHarmlessLinesAlone() {
    String comment = "NIST_COM 3\nPPI 500\nOPERATOR SPECIMEN\nPIX_WIDTH 61";
    byte[] image = withComment(ImageSamples.wsq(), 0xA8, comment);
    String blank = new String(blank(image, true), StandardCharsets.ISO_8859_1);
    assertTrue(blank.contains("NIST_COM 3\nPPI 500\nxxxxxxxxxxxxxxxxx\nPIX_WIDTH 61"), blank);
    String skeleton = new String(blank(image, false), StandardCharsets.ISO_8859_1);
    assertFalse(skeleton.contains("SPECIMEN"));
    assertTrue(skeleton.contains("PPI 500"));
  }

  @Test
  void aCommentInWordsGoesWhole() {
    for (byte[] image :
        List.of(
            withComment(ImageSamples.wsq(), 0xA8, "taken by SPECIMEN"),
            withComment(ImageSamples.all().get("baseline.jpg"), 0xFE, "taken by SPECIMEN"),
            withComment(ImageSamples.all().get("baseline.jpg"), 0xE1, "Exif\0\0 SPECIMEN"))) {
      for (boolean sound : new boolean[] {true, false}) {
        String blank = new String(blank(image, sound), StandardCharsets.ISO_8859_1);
        assertFalse(blank.contains("SPECIMEN"));
        assertFalse(blank.contains("taken"));
      }
    }
  }

  /** A segment right behind the start marker. */
  private static byte[] withComment(byte[] image, int code, String text) {
    List<Byte> bytes = new ArrayList<>();
    for (byte b : Arrays.copyOf(image, 2)) {
      bytes.add(b);
    }
    int length = text.length() + 2;
    for (int b : new int[] {0xFF, code, length >>> 8, length}) {
      bytes.add((byte) b);
    }
    text.chars().forEach(c -> bytes.add((byte) c));
    for (int i = 2; i < image.length; i++) {
      bytes.add(image[i]);
    }
    byte[] all = new byte[bytes.size()];
    for (int i = 0; i < all.length; i++) {
      all[i] = bytes.get(i);
    }
    return all;
  }

  @Test
  void aWsqKeepsTheNumbersOfItsEncoder() {
    assertEquals("42123", header(blank(ImageSamples.wsq(), true)).facts().get("software number"));
  }

  @Test
  void pixelsAsTheyAreBecomeGray() {
    byte[] pixels = ImageSamples.grayImage().toArray();
    byte[] gray = new byte[pixels.length];
    Arrays.fill(gray, (byte) 0x80);
    assertArrayEquals(gray, blank(pixels, true));
  }
}
