package ridgeproof.imagery.standin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageCodec.StatedSize;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.ImageSamples;
import ridgeproof.imagery.blank.BlankImages;
import ridgeproof.imagery.codec.Group4Codec;
import ridgeproof.imagery.codec.ImageCodecs;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.record.ByteSource;

class StandInImagesTest {

  private static final StatedSize SIZE = new StatedSize(ImageSamples.WIDTH, ImageSamples.HEIGHT, 8);

  /** Formats that are not written here; a blank image takes their place. */
  private static final Set<String> NOT_WRITTEN = Set.of("gray-arithmetic.jpg");

  private static final double FAR = 24;

  static List<String> names() {
    return ImageSamples.all().keySet().stream()
        .filter(name -> !NOT_WRITTEN.contains(name))
        .toList();
  }

  /** Broad stripes, which every coding keeps. */
  private static GrayImage picture() {
    byte[] pixels = new byte[ImageSamples.WIDTH * ImageSamples.HEIGHT];
    for (int i = 0; i < pixels.length; i++) {
      pixels[i] = (byte) (i % ImageSamples.WIDTH / 20 % 2 == 0 ? 30 : 225);
    }
    return GrayImage.owning(ImageSamples.WIDTH, ImageSamples.HEIGHT, pixels);
  }

  private static Optional<byte[]> standIn(byte[] image) {
    return standIn(image, ImageFormat.RAW, 8);
  }

  private static Optional<byte[]> standIn(byte[] image, ImageFormat stated, int bits) {
    byte[] blank =
        new BlankImages((key, value) -> false).inPlaceOf(ByteSource.of(image), stated, bits, true);
    return StandInImages.inPlaceOf(ByteSource.of(image), blank, stated, bits, picture());
  }

  private static ImageHeader header(byte[] image) {
    return ImageHeaders.read(ByteSource.of(image));
  }

  private static GrayImage decoded(String name, byte[] image) {
    Decoding decoding =
        ImageCodecs.standard()
            .decode(ByteSource.of(image), header(image), SIZE, DecodingLimits.standard());
    assertEquals(List.of(), decoding.defects(), name);
    return decoding.image().orElseThrow(() -> new AssertionError(name + " cannot be decoded"));
  }

  private static double difference(GrayImage one, GrayImage other) {
    long sum = 0;
    for (int y = 0; y < one.height(); y++) {
      for (int x = 0; x < one.width(); x++) {
        sum += Math.abs(one.grayAt(x, y) - other.grayAt(x, y));
      }
    }
    return (double) sum / (one.width() * one.height());
  }

  @ParameterizedTest
  @MethodSource("names")
  void thePictureTakesThePlaceOfTheImageInItsFormatAndLength(String name) {
    byte[] image = ImageSamples.all().get(name);
    byte[] other =
        standIn(image).orElseThrow(() -> new AssertionError(name + ": nothing was written"));
    assertEquals(image.length, other.length, name);
    ImageHeader before = header(image);
    ImageHeader after = header(other);
    assertEquals(before.format(), after.format(), name);
    assertEquals(before.width(), after.width(), name);
    assertEquals(before.height(), after.height(), name);
    assertEquals(before.bitsPerPixel(), after.bitsPerPixel(), name);
    assertEquals(before.density(), after.density(), name);
    assertEquals(List.of(), after.defects(), name);
    GrayImage shown = decoded(name, other);
    assertEquals(ImageSamples.WIDTH, shown.width(), name);
    assertTrue(
        difference(picture(), shown) < (before.bitsPerPixel() == 1 ? 2 * FAR : FAR),
        () -> name + " differs by " + difference(picture(), shown) + " gray levels");
  }

  @ParameterizedTest
  @MethodSource("names")
  void nothingOfTheImageIsLeft(String name) {
    byte[] image = ImageSamples.all().get(name);
    GrayImage before = decoded(name, image);
    GrayImage after = decoded(name, standIn(image).orElseThrow());
    assertTrue(difference(before, after) > FAR, name);
  }

  @Test
  void pixelsWithoutCodingAreFollowedByNothing() {
    byte[] pixels = ImageSamples.grayImage().toArray();
    byte[] longer = Arrays.copyOf(pixels, pixels.length + 7);
    byte[] other = standIn(longer).orElseThrow();
    assertEquals(longer.length, other.length);
    assertEquals(0, other[other.length - 1]);
    assertTrue(standIn(Arrays.copyOf(pixels, pixels.length - 1)).isEmpty());
  }

  private static List<ImageDefect> trailing(byte[] image) {
    return header(image).defects().stream()
        .filter(defect -> defect.kind() == ImageDefect.Kind.TRAILING_BYTES)
        .toList();
  }

  /** Bytes behind an image may be of a person. */
  @ParameterizedTest
  @MethodSource("names")
  void whatStandsBehindTheImageIsAsLongAndSaysNothing(String name) {
    byte[] image = ImageSamples.all().get(name);
    byte[] words = "SPECIMEN,ALEX 19700101".getBytes(StandardCharsets.US_ASCII);
    byte[] longer = Arrays.copyOf(image, image.length + words.length);
    System.arraycopy(words, 0, longer, image.length, words.length);
    assertEquals(1, trailing(longer).size(), name);
    byte[] other = standIn(longer).orElseThrow();
    assertEquals(trailing(longer), trailing(other), name);
    byte[] blank =
        new BlankImages((key, value) -> false)
            .inPlaceOf(ByteSource.of(longer), ImageFormat.RAW, 8, true);
    for (byte[] copy : List.of(other, blank)) {
      assertEquals(longer.length, copy.length, name);
      String end = new String(copy, image.length, words.length, StandardCharsets.ISO_8859_1);
      assertEquals(1, end.chars().distinct().count(), name);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "LZW", "Deflate", "PackBits", "ZLib"})
  void aTiffKeepsItsCodingAndIsAsLong(String coding) {
    String compression = coding.isEmpty() ? null : coding;
    for (BufferedImage image : List.of(ImageSamples.gray(), ImageSamples.colour())) {
      byte[] tiff = ImageSamples.tiff(image, compression);
      byte[] other = standIn(tiff).orElseThrow();
      assertEquals(tiff.length, other.length, coding);
      assertEquals(header(tiff).facts(), header(other).facts(), coding);
      assertEquals(header(tiff).bitsPerPixel(), header(other).bitsPerPixel(), coding);
      assertTrue(difference(picture(), decoded(coding, other)) < FAR, coding);
    }
  }

  @ParameterizedTest
  @CsvSource({"1, 0", "8, 0", "16, 0", "24, 0", "1, 5"})
  void pixelsWithoutCodingHaveTheDepthThatTheRecordStates(int bits, int odd) {
    int row = (ImageSamples.WIDTH * bits + 7) / 8;
    byte[] image = new byte[row * ImageSamples.HEIGHT + odd];
    byte[] other = standIn(image, ImageFormat.RAW, bits).orElseThrow();
    assertEquals(image.length, other.length);
    GrayImage shown =
        ImageCodecs.standard()
            .decode(
                ByteSource.of(other),
                header(other),
                new StatedSize(ImageSamples.WIDTH, ImageSamples.HEIGHT, bits),
                DecodingLimits.standard())
            .image()
            .orElseThrow();
    assertTrue(difference(picture(), shown) < (bits == 1 ? 2 * FAR : 1), bits + " bits");
  }

  @Test
  void bareGroup4DataIsAPictureOfBlackAndWhite() {
    byte[] tiff = ImageSamples.tiff(ImageSamples.bilevel(), "CCITT T.6");
    byte[] room = new byte[tiff.length];
    byte[] other = standIn(room, ImageFormat.GROUP_4, 1).orElseThrow();
    assertEquals(room.length, other.length);
    Decoding decoding =
        new Group4Codec().decode(ByteSource.of(other), SIZE, DecodingLimits.standard());
    assertEquals(List.of(), decoding.defects());
    assertTrue(difference(picture(), decoding.image().orElseThrow()) < 2 * FAR);
    assertTrue(standIn(new byte[20], ImageFormat.GROUP_4, 1).isEmpty(), "no room");
  }

  @ParameterizedTest
  @MethodSource("names")
  void anImageThatIsCutIsNoReasonToThrow(String name) {
    byte[] image = ImageSamples.all().get(name);
    for (int i = 12; i < image.length; i += 211) {
      byte[] cut = Arrays.copyOf(image, i);
      standIn(cut).ifPresent(other -> assertEquals(cut.length, other.length, name));
    }
  }
}
