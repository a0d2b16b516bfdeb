package ridgeproof.imagery.header;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageCodec.StatedSize;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageDefect.Kind;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.ImageSamples;
import ridgeproof.imagery.codec.ImageCodecs;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;

class ImageHeadersTest {

  private static final int ORIGIN = 1000;

  /** As an image stands in a transaction: not at the start of the file. */
  private static ImageHeader readAtOrigin(byte[] image) {
    byte[] file = new byte[ORIGIN + image.length];
    System.arraycopy(image, 0, file, ORIGIN, image.length);
    return ImageHeaders.read(ByteSource.of(file).from(ORIGIN));
  }

  private static ImageHeader read(byte[] image) {
    return ImageHeaders.read(ByteSource.of(image));
  }

  private static ImageHeader readSample(String name) {
    return read(ImageSamples.all().get(name));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "gray-53.j2k",
        "gray-97.jp2",
        "gray-tiles.jp2",
        "colour-53.jp2",
        "colour-progressive.jpg",
        "gray-restart.jpg",
        "gray-arithmetic.jpg",
        "baseline.jpg",
        "lossless.jpg",
        "gray.png",
        "group4.tif",
        "gray.wsq"
      })
  void everySampleStatesItsSizeAndHasNoDefect(String name) {
    byte[] file = ImageSamples.all().get(name);
    ImageHeader header = readAtOrigin(file);
    assertEquals(List.of(), header.defects());
    assertEquals(ImageSamples.WIDTH, header.width());
    assertEquals(ImageSamples.HEIGHT, header.height());
    assertEquals(new ByteRange(ORIGIN, file.length), header.extent());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "gray-53.j2k",
        "gray-97.jp2",
        "colour-progressive.jpg",
        "gray-restart.jpg",
        "lossless.jpg",
        "gray.png",
        "group4.tif",
        "gray.wsq"
      })
  void bytesAfterTheEndAreTrailingAtAnAbsoluteOffset(String name) {
    byte[] file = ImageSamples.all().get(name);
    ImageHeader header = readAtOrigin(Arrays.copyOf(file, file.length + 3));
    assertEquals(1, header.defects().size());
    ImageDefect defect = header.defects().get(0);
    assertEquals(Kind.TRAILING_BYTES, defect.kind());
    assertEquals(ORIGIN + file.length, defect.offset());
    assertTrue(defect.detail().startsWith("3 bytes after the end of the "), defect.detail());
    assertEquals(new ByteRange(ORIGIN, file.length), header.extent());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "gray-53.j2k",
        "gray-97.jp2",
        "colour-progressive.jpg",
        "gray-restart.jpg",
        "lossless.jpg",
        "gray.png",
        "group4.tif",
        "gray.wsq"
      })
  void aFileCutOneByteShortIsDamaged(String name) {
    byte[] file = ImageSamples.all().get(name);
    ImageHeader header = read(Arrays.copyOf(file, file.length - 1));
    assertTrue(header.defects().stream().anyMatch(d -> d.kind() == Kind.DAMAGE));
    assertFalse(header.defects().stream().anyMatch(d -> d.kind() == Kind.TRAILING_BYTES));
  }

  @Test
  void formatsAreToldByTheFirstBytes() {
    assertEquals(ImageFormat.JPEG_2000, readSample("gray-53.j2k").format());
    assertEquals(ImageFormat.JPEG_2000, readSample("gray-97.jp2").format());
    assertEquals(ImageFormat.JPEG, readSample("baseline.jpg").format());
    assertEquals(ImageFormat.JPEG_LOSSLESS, readSample("lossless.jpg").format());
    assertEquals(ImageFormat.PNG, readSample("gray.png").format());
    assertEquals(ImageFormat.TIFF, readSample("group4.tif").format());
    assertEquals(ImageFormat.WSQ, readSample("gray.wsq").format());
  }

  @Test
  void pixelsWithoutACodestreamAreRawAndStateNothing() {
    byte[] white = new byte[500];
    Arrays.fill(white, (byte) 0xFF);
    for (byte[] raw : List.of(new byte[0], new byte[] {1}, new byte[500], white)) {
      ImageHeader header = read(raw);
      assertEquals(ImageFormat.RAW, header.format());
      assertEquals(0, header.width() + header.height() + header.bitsPerPixel());
      assertEquals(List.of(), header.defects());
      assertEquals(raw.length, header.extent().length());
    }
    byte[] almostJpeg = {(byte) 0xFF, (byte) 0xD8, 0x12, 0x34};
    assertEquals(ImageFormat.RAW, read(almostJpeg).format());
  }

  @Test
  void progressiveJpegTellsItsProcessAndScans() {
    ImageHeader header = readSample("colour-progressive.jpg");
    assertEquals("progressive DCT", header.facts().get("coding process"));
    assertTrue(Integer.parseInt(header.facts().get("scans")) > 3);
    assertEquals(24, header.bitsPerPixel());
    assertEquals(3, header.components());
    assertEquals(Optional.of(false), header.lossless());
    assertEquals("2x2 1x1 1x1", header.facts().get("sampling factors"));
  }

  @Test
  void restartMarkersAreCountedAndTheirOrderChecked() {
    byte[] file = ImageSamples.resource("gray-restart.jpg");
    ImageHeader header = read(file);
    assertEquals("5", header.facts().get("restart markers"));
    assertEquals("8 MCU", header.facts().get("restart interval"));
    int third = indexOf(file, 0xFF, 0xD2);
    file[third + 1] = (byte) 0xD6;
    ImageDefect defect = read(file).defects().get(0);
    assertEquals("restart marker 6 where 2 is expected", defect.detail());
    assertEquals(third, defect.offset());
  }

  @Test
  void losslessJpegTellsPredictorAndDensity() {
    ImageHeader header = readSample("lossless.jpg");
    assertEquals(Optional.of(true), header.lossless());
    assertEquals("1", header.facts().get("predictor"));
    assertEquals(500, header.density().orElseThrow().horizontalPpi());
    assertEquals("inch", header.facts().get("JFIF density unit"));
  }

  @Test
  void jfifDensityInCentimetresBecomesPixelsPerInch() {
    byte[] file = ImageSamples.all().get("lossless.jpg");
    int jfif = indexOf(file, 'J', 'F', 'I', 'F');
    file[jfif + 7] = 2;
    ByteBuffer.wrap(file).putShort(jfif + 8, (short) 197).putShort(jfif + 10, (short) 100);
    ImageHeader header = read(file);
    assertEquals(500.38, header.density().orElseThrow().horizontalPpi(), 1e-9);
    assertEquals(254, header.density().orElseThrow().verticalPpi(), 1e-9);
    file[jfif + 7] = 0;
    assertEquals(Optional.empty(), read(file).density());
  }

  @Test
  void aJpegWithoutItsTablesIsDamaged() {
    byte[] file = ImageSamples.resource("gray-restart.jpg");
    file[indexOf(file, 0xFF, 0xDB) + 1] = (byte) 0xEF;
    assertEquals(
        List.of("a scan without the quantization table (DQT) it uses"),
        read(file).defects().stream().map(ImageDefect::detail).toList());
  }

  @Test
  void reversibleJpeg2000TellsItsCoding() {
    ImageHeader header = readSample("gray-53.j2k");
    assertEquals("reversible 5/3", header.facts().get("wavelet"));
    assertEquals("1", header.facts().get("quality layers"));
    assertEquals("3", header.facts().get("decomposition levels"));
    assertEquals(Optional.of(true), header.lossless());
    assertEquals(8, header.bitsPerPixel());
    assertTrue(header.comments().containsKey("COM"));
  }

  @Test
  void irreversibleJpeg2000TellsItsLayers() {
    ImageHeader header = readSample("gray-97.jp2");
    assertEquals("irreversible 9/7", header.facts().get("wavelet"));
    assertEquals("2", header.facts().get("quality layers"));
    assertEquals(Optional.of(false), header.lossless());
    assertEquals("grayscale", header.facts().get("color space"));
    assertEquals("4", readSample("gray-tiles.jp2").facts().get("tiles"));
    assertEquals(24, readSample("colour-53.jp2").bitsPerPixel());
  }

  @Test
  void jp2CaptureResolutionGoesBeforeDisplayResolution() {
    byte[] header =
        concat(box("resd", 100, 1, 100, 1, 0x0202), box("resc", 19685, 1, 19685, 1, 0x0000));
    byte[] resolution = box("res ", header);
    byte[] file = ImageSamples.resource("gray-97.jp2");
    int jp2h = indexOf(file, 'j', 'p', '2', 'h') - 4;
    int end = jp2h + ByteBuffer.wrap(file).getInt(jp2h);
    byte[] with =
        concat(
            concat(Arrays.copyOf(file, end), resolution),
            Arrays.copyOfRange(file, end, file.length));
    ByteBuffer.wrap(with).putInt(jp2h, end - jp2h + resolution.length);
    ImageHeader read = read(with);
    assertEquals(List.of(), read.defects());
    assertEquals(499.999, read.density().orElseThrow().horizontalPpi(), 1e-9);
    assertEquals("10000.0 x 10000.0 per meter", read.facts().get("display resolution"));
  }

  @Test
  void boxesNestedWithoutEndDoNotExhaustTheStack() {
    byte[] nest = new byte[400_000];
    ByteBuffer out = ByteBuffer.wrap(nest);
    out.put(ImageSamples.resource("gray-97.jp2"), 0, 12);
    while (out.remaining() >= 8) {
      out.putInt(out.remaining()).put("jp2h".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    }
    assertTrue(read(nest).defects().stream().anyMatch(d -> d.detail().contains("no codestream")));
  }

  @Test
  void aMissingTileIsDamage() {
    byte[] file = ImageSamples.resource("gray-tiles.jp2");
    int second = indexOf(file, 0xFF, 0x90, 0, 10, 0, 1);
    file[second + 5] = 0;
    assertEquals("holds 3 of 4 tiles", read(file).defects().get(0).detail());
  }

  @Test
  void markerCodesWithinCodedDataAreDamageAndAreNotDecoded() {
    byte[] file = ImageSamples.resource("gray-53.j2k");
    int data = indexOf(file, 0xFF, 0x93) + 2;
    file[data + 40] = (byte) 0xFF;
    file[data + 41] = (byte) 0xFF;
    ByteSource source = ByteSource.of(file);
    ImageHeader header = ImageHeaders.read(source);
    assertEquals("a marker code within coded data", header.defects().get(0).detail());
    assertEquals(data + 40, header.defects().get(0).offset());
    Decoding decoding =
        ImageCodecs.standard()
            .decode(source, header, new StatedSize(0, 0, 8), DecodingLimits.standard());
    assertTrue(decoding.image().isEmpty());
    assertEquals(Kind.DAMAGE, decoding.defects().get(0).kind());
  }

  @Test
  void pngDensityAndChecksums() {
    byte[] file = ImageSamples.png(ImageSamples.gray(), 19685);
    ImageHeader header = read(file);
    assertEquals(499.999, header.density().orElseThrow().verticalPpi(), 1e-9);
    assertEquals(Optional.of(true), header.lossless());
    int data = indexOf(file, 'I', 'D', 'A', 'T');
    file[data + 10] ^= 1;
    ImageDefect defect = read(file).defects().get(0);
    assertEquals("the checksum (CRC) of chunk IDAT is wrong", defect.detail());
    assertEquals(data - 4, defect.offset());
  }

  @Test
  void groupFourTiffTellsItsCompression() {
    ImageHeader header = readSample("group4.tif");
    assertEquals("CCITT Group 4", header.facts().get("compression"));
    assertEquals(1, header.bitsPerPixel());
    assertEquals(Optional.of(true), header.lossless());
  }

  @Test
  void tiffDirectoriesInACircleEnd() {
    byte[] file = new byte[14];
    ByteBuffer.wrap(file).put(new byte[] {'M', 'M', 0, 42}).putInt(8).putShort((short) 0).putInt(8);
    assertEquals("64", read(file).facts().get("directories"));
  }

  @Test
  void wsqTellsItsCommentsAndFrame() {
    ImageHeader header = readSample("gray.wsq");
    assertEquals("61", header.comments().get("PIX_WIDTH"));
    assertEquals(500, header.density().orElseThrow().verticalPpi());
    assertEquals("42123", header.facts().get("software number"));
    double mean = mean(ImageSamples.grayImage().toArray());
    assertEquals(mean, Double.parseDouble(header.facts().get("shift")), 0.01);
    assertEquals("255", header.facts().get("white"));
  }

  private static double mean(byte[] pixels) {
    long sum = 0;
    for (byte pixel : pixels) {
      sum += pixel & 0xFF;
    }
    return (double) sum / pixels.length;
  }

  private static byte[] box(String type, byte[] content) {
    return ByteBuffer.allocate(8 + content.length)
        .putInt(8 + content.length)
        .put(type.getBytes(java.nio.charset.StandardCharsets.US_ASCII))
        .put(content)
        .array();
  }

  private static byte[] box(String type, int... numbers) {
    ByteBuffer content = ByteBuffer.allocate(2 * numbers.length);
    for (int number : numbers) {
      content.putShort((short) number);
    }
    return box(type, content.array());
  }

  private static byte[] concat(byte[] first, byte[] second) {
    byte[] both = Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, both, first.length, second.length);
    return both;
  }

  private static int indexOf(byte[] bytes, int... wanted) {
    ByteSource source = ByteSource.of(bytes);
    for (int i = 0; i < bytes.length; i++) {
      if (source.startsWith(i, wanted)) {
        return i;
      }
    }
    throw new AssertionError("not there");
  }
}
