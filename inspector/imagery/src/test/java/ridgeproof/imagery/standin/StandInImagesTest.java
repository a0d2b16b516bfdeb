package ridgeproof.imagery.standin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageCodec.StatedSize;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.ImageSamples;
import ridgeproof.imagery.blank.BlankImages;
import ridgeproof.imagery.codec.ImageCodecs;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.record.ByteSource;

class StandInImagesTest {

  private static final StatedSize SIZE = new StatedSize(ImageSamples.WIDTH, ImageSamples.HEIGHT, 8);

  /** Formats that are not written here; a blank image takes their place. */
  private static final Set<String> NOT_WRITTEN =
      Set.of("group4.tif", "gray-arithmetic.jpg", "colour-53.jp2");

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
    byte[] blank =
        new BlankImages((key, value) -> false)
            .inPlaceOf(ByteSource.of(image), ImageFormat.RAW, 8, true);
    return StandInImages.inPlaceOf(ByteSource.of(image), blank, picture());
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
        difference(picture(), shown) < FAR,
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
