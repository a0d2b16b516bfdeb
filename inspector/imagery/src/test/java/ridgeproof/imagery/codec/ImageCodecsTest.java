package ridgeproof.imagery.codec;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageCodec;
import ridgeproof.imagery.ImageCodec.StatedSize;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageDefect.Kind;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageSamples;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.record.ByteSource;

class ImageCodecsTest {

  private static final StatedSize NOTHING_STATED = new StatedSize(0, 0, 8);
  private static final byte[] GRAY = ImageSamples.grayImage().toArray();

  private static Decoding decode(byte[] file) {
    return decode(file, NOTHING_STATED, DecodingLimits.standard());
  }

  private static Decoding decode(byte[] file, StatedSize stated, DecodingLimits limits) {
    ByteSource source = ByteSource.of(file);
    return ImageCodecs.standard().decode(source, ImageHeaders.read(source), stated, limits);
  }

  private static GrayImage pixels(byte[] file) {
    Decoding decoding = decode(file);
    assertEquals(List.of(), decoding.defects());
    GrayImage image = decoding.image().orElseThrow();
    assertEquals(ImageSamples.WIDTH, image.width());
    assertEquals(ImageSamples.HEIGHT, image.height());
    return image;
  }

  private static int furthest(byte[] expected, byte[] actual) {
    int furthest = 0;
    for (int i = 0; i < expected.length; i++) {
      furthest = Math.max(furthest, Math.abs((expected[i] & 0xFF) - (actual[i] & 0xFF)));
    }
    return furthest;
  }

  private static byte[] luminanceOf(BufferedImage image) {
    byte[] gray = new byte[image.getWidth() * image.getHeight()];
    for (int i = 0; i < gray.length; i++) {
      int rgb = image.getRGB(i % image.getWidth(), i / image.getWidth());
      double y = 0.299 * (rgb >> 16 & 0xFF) + 0.587 * (rgb >> 8 & 0xFF) + 0.114 * (rgb & 0xFF);
      gray[i] = (byte) Math.round(y);
    }
    return gray;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"gray-53.j2k", "gray-tiles.jp2", "lossless.jpg", "old-lossless.jpg", "gray.png"})
  void losslessFormatsGiveBackEveryGrayLevel(String name) {
    assertArrayEquals(GRAY, pixels(ImageSamples.all().get(name)).toArray());
  }

  @Test
  void aTableOfTheOtherClassIsAnOddityWithItsPlace() {
    byte[] file = ImageSamples.all().get("old-lossless.jpg");
    List<ImageDefect> defects = ImageHeaders.read(ByteSource.of(file)).defects();
    assertEquals(1, defects.size());
    assertEquals(Kind.ODDITY, defects.get(0).kind());
    assertEquals(0x10, file[defects.get(0).offset()]);
    assertEquals(
        List.of(),
        ImageHeaders.read(ByteSource.of(ImageSamples.all().get("lossless.jpg"))).defects());
  }

  @Test
  void aLosslessJpegWithoutItsSecondHalfSaysHowFarItWasRead() {
    byte[] file = ImageSamples.all().get("old-lossless.jpg");
    Decoding decoding = decode(Arrays.copyOf(file, file.length / 2));
    String detail = decoding.defects().get(0).detail();
    assertTrue(detail.endsWith("of " + file.length / 2 + " bytes"), detail);
  }

  @Test
  void irreversibleJpeg2000AgreesWithAnotherDecoder() {
    byte[] other = ImageSamples.pixelsOf("gray-97.pgm", GRAY.length);
    assertTrue(furthest(other, pixels(ImageSamples.resource("gray-97.jp2")).toArray()) <= 1);
  }

  @Test
  void restartedJpegAgreesWithAnotherDecoder() {
    byte[] other = ImageSamples.pixelsOf("gray-restart.pgm", GRAY.length);
    assertTrue(furthest(other, pixels(ImageSamples.resource("gray-restart.jpg")).toArray()) <= 1);
  }

  @Test
  void progressiveColourJpegBecomesTheLuminanceOfAnotherDecoder() {
    byte[] other = ImageSamples.pixelsOf("colour-progressive.pgm", GRAY.length);
    byte[] ours = pixels(ImageSamples.resource("colour-progressive.jpg")).toArray();
    double sum = 0;
    for (int i = 0; i < ours.length; i++) {
      sum += Math.abs((ours[i] & 0xFF) - (other[i] & 0xFF));
    }
    // Clipped colours keep single pixels apart; the means must agree.
    assertTrue(sum / ours.length < 3, "mean difference " + sum / ours.length);
  }

  @Test
  void reversibleColourJpeg2000BecomesLuminance() {
    byte[] rgb = ImageSamples.pixelsOf("colour.ppm", 3 * GRAY.length);
    byte[] gray = new byte[GRAY.length];
    for (int i = 0; i < gray.length; i++) {
      double y =
          0.299 * (rgb[3 * i] & 0xFF)
              + 0.587 * (rgb[3 * i + 1] & 0xFF)
              + 0.114 * (rgb[3 * i + 2] & 0xFF);
      gray[i] = (byte) Math.round(y);
    }
    assertTrue(furthest(gray, pixels(ImageSamples.resource("colour-53.jp2")).toArray()) <= 1);
  }

  @Test
  void colourPngBecomesLuminance() {
    BufferedImage colour = ImageSamples.colour();
    assertTrue(furthest(luminanceOf(colour), pixels(ImageSamples.png(colour)).toArray()) <= 1);
  }

  @Test
  void sixteenBitPngIsScaledToEightBits() {
    BufferedImage deep =
        new BufferedImage(ImageSamples.WIDTH, ImageSamples.HEIGHT, BufferedImage.TYPE_USHORT_GRAY);
    for (int i = 0; i < GRAY.length; i++) {
      deep.getRaster()
          .setSample(
              i % ImageSamples.WIDTH,
              i / ImageSamples.WIDTH,
              0,
              Math.min(65_535, (GRAY[i] & 0xFF) * 257 + 100));
    }
    assertArrayEquals(GRAY, pixels(ImageSamples.png(deep)).toArray());
  }

  @ParameterizedTest
  @ValueSource(strings = {"CCITT T.6", "PackBits", "LZW"})
  void bilevelTiffBecomesBlackAndWhite(String compression) {
    byte[] file = ImageSamples.tiff(ImageSamples.bilevel(), compression);
    assertArrayEquals(luminanceOf(ImageSamples.bilevel()), pixels(file).toArray());
  }

  @Test
  void groupFourDataAloneIsDecodedByTheStatedSize() {
    byte[] file = ImageSamples.tiff(ImageSamples.bilevel(), "CCITT T.6");
    ByteSource tiff = ByteSource.of(file);
    ByteSource coded = strip(tiff);
    Decoding decoding =
        ImageCodecs.standard()
            .decodeGroup4(
                coded,
                new StatedSize(ImageSamples.WIDTH, ImageSamples.HEIGHT, 1),
                DecodingLimits.standard());
    assertEquals(List.of(), decoding.defects());
    assertArrayEquals(
        luminanceOf(ImageSamples.bilevel()), decoding.image().orElseThrow().toArray());
  }

  /** The only strip of a big-endian TIFF file of the JDK. */
  private static ByteSource strip(ByteSource tiff) {
    int directory = (int) tiff.uint32At(4);
    int offset = 0;
    int count = 0;
    for (int i = 0; i < tiff.uint16At(directory); i++) {
      int entry = directory + 2 + 12 * i;
      switch (tiff.uint16At(entry)) {
        case 273 -> offset = (int) tiff.uint32At(entry + 8);
        case 279 -> count = (int) tiff.uint32At(entry + 8);
        default -> {}
      }
    }
    return tiff.slice(offset, count);
  }

  @Test
  void damageInsideTheDataBecomesADefect() {
    for (String name : List.of("gray.png", "gray-53.j2k", "lossless.jpg", "gray.wsq")) {
      byte[] file = ImageSamples.all().get(name);
      Decoding decoding = decode(Arrays.copyOf(file, file.length / 2));
      assertTrue(
          decoding.image().isEmpty() || !decoding.defects().isEmpty(),
          name + " is taken for whole");
    }
  }

  @Test
  void whatALibraryCannotDecodeIsADefectAtTheImagesOffset() {
    byte[] file = ImageSamples.resource("gray-restart.jpg");
    int frame = 0;
    while (file[frame] != (byte) 0xFF || file[frame + 1] != (byte) 0xC0) {
      frame++;
    }
    // No library here knows the hierarchical processes.
    file[frame + 1] = (byte) 0xC5;
    ByteSource source =
        ByteSource.of(ByteBuffer.allocate(7 + file.length).position(7).put(file).array()).from(7);
    Decoding decoding =
        ImageCodecs.standard()
            .decode(source, ImageHeaders.read(source), NOTHING_STATED, DecodingLimits.standard());
    assertTrue(decoding.image().isEmpty());
    assertEquals(Kind.DAMAGE, decoding.defects().get(0).kind());
    assertEquals(7, decoding.defects().get(0).offset());
  }

  @Test
  void morePixelsThanTheLimitAreRefusedBeforeDecoding() {
    DecodingLimits few =
        new DecodingLimits(ImageSamples.WIDTH * ImageSamples.HEIGHT - 1, Duration.ofSeconds(9));
    ImageSamples.all()
        .forEach(
            (name, file) -> {
              Decoding decoding = decode(file, NOTHING_STATED, few);
              assertTrue(decoding.image().isEmpty(), name);
              assertEquals(Kind.LIMIT, decoding.defects().get(0).kind(), name);
            });
    Decoding raw = decode(new byte[10], new StatedSize(100_000, 100_000, 8), few);
    assertEquals(Kind.LIMIT, raw.defects().get(0).kind());
  }

  @Test
  void moreThanTheBytesCanHoldIsDamage() {
    byte[] png = ImageSamples.png(ImageSamples.gray());
    ByteBuffer.wrap(png).putInt(16, 14_000).putInt(20, 14_000);
    ImageDefect defect = decode(png).defects().get(0);
    assertEquals(Kind.DAMAGE, defect.kind());
    assertTrue(defect.detail().startsWith("states 14000 x 14000 pixels, more than"));
  }

  @Test
  void noTimeAtAllIsALimit() {
    DecodingLimits noTime = new DecodingLimits(1_000_000, Duration.ZERO);
    byte[] large = ImageSamples.png(new BufferedImage(1000, 1000, BufferedImage.TYPE_BYTE_GRAY));
    Decoding decoding = decode(large, NOTHING_STATED, noTime);
    assertTrue(decoding.image().isEmpty());
    assertEquals(Kind.LIMIT, decoding.defects().get(0).kind());
  }

  @Test
  void anotherCodecCanTakeOverAFormat() {
    GrayImage fixed = GrayImage.owning(1, 1, new byte[] {42});
    ImageCodec other =
        new ImageCodec() {
          @Override
          public Set<ImageFormat> formats() {
            return Set.of(ImageFormat.WSQ);
          }

          @Override
          public Decoding decode(ByteSource source, StatedSize stated, DecodingLimits limits) {
            return new Decoding(java.util.Optional.of(fixed), List.of());
          }
        };
    ByteSource source = ByteSource.of(ImageSamples.wsq());
    Decoding decoding =
        ImageCodecs.standard()
            .with(other)
            .decode(source, ImageHeaders.read(source), NOTHING_STATED, DecodingLimits.standard());
    assertEquals(42, decoding.image().orElseThrow().grayAt(0, 0));
  }
}
