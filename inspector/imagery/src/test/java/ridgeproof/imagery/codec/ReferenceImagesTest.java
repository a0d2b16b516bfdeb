package ridgeproof.imagery.codec;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageCodec.StatedSize;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.testing.ReferenceFiles;
import ridgeproof.transaction.record.ByteSource;

/** Images of the public reference transactions, found by where each record has its data. */
class ReferenceImagesTest {

  private static final int FILE_SEPARATOR = 0x1C;
  private static final int GROUP_SEPARATOR = 0x1D;

  private static ByteSource file(String name) {
    return ByteSource.of(ReferenceFiles.read(name));
  }

  /** The data of the first record of a type: from its tag's colon to the end its length states. */
  private static ByteSource taggedData(ByteSource file, int type) {
    int start = positionAfter(file, (char) FILE_SEPARATOR + "" + type + ".001:", 0);
    int lengthEnd = file.indexOf(GROUP_SEPARATOR, start);
    int length = Integer.parseInt(file.latin1(start, lengthEnd - start));
    int recordStart = start - (type + ".001:").length();
    int data = positionAfter(file, (char) GROUP_SEPARATOR + "" + type + ".999:", start);
    return file.slice(data, recordStart + length - 1 - data);
  }

  private static int positionAfter(ByteSource file, String text, int from) {
    int at = from;
    while (!file.startsWith(at, text.chars().toArray())) {
      at++;
    }
    return at + text.length();
  }

  /** The last record of a file whose first two records are tagged. */
  private static ByteSource binaryRecord(ByteSource file) {
    int first = file.indexOf(FILE_SEPARATOR, 0);
    return file.from(file.indexOf(FILE_SEPARATOR, first + 1) + 1);
  }

  @ParameterizedTest
  @CsvSource({
    "type-10-branded-tattoo-mark.an2, 10, JPEG, 640, 400, 24",
    "type-10-sap10.an2, 10, JPEG, 1181, 1575, 24",
    "type-17-iris.an2, 17, PNG, 449, 312, 8"
  })
  void codestreamsStateTheSizeOfTheirRecordAndDecode(
      String name, int type, ImageFormat format, int width, int height, int bits) {
    ByteSource data = taggedData(file(name), type);
    ImageHeader header = ImageHeaders.read(data);
    assertEquals(format, header.format());
    assertEquals(width, header.width());
    assertEquals(height, header.height());
    assertEquals(bits, header.bitsPerPixel());
    assertEquals(List.of(), header.defects());
    Decoding decoding =
        ImageCodecs.standard()
            .decode(data, header, new StatedSize(0, 0, 8), DecodingLimits.standard());
    assertEquals(List.of(), decoding.defects());
    GrayImage image = decoding.image().orElseThrow();
    assertEquals(width, image.width());
    assertEquals(height, image.height());
  }

  @ParameterizedTest
  @CsvSource({
    "type-3.an2, 13, 18, 8",
    "type-5.an2, 13, 18, 1",
    "type-6.an2, 13, 18, 1",
    "type-7-latent.an2, 13, 18, 8",
    "type-8-sig.an2, 8, 12, 1"
  })
  void pixelsWithoutCompressionFillTheStatedSizeExactly(
      String name, int sizes, int headerBytes, int bits) {
    ByteSource record = binaryRecord(file(name));
    StatedSize stated = new StatedSize(record.uint16At(sizes), record.uint16At(sizes + 2), bits);
    ByteSource pixels = record.from(headerBytes);
    ImageHeader header = ImageHeaders.read(pixels);
    assertEquals(ImageFormat.RAW, header.format());
    Decoding decoding =
        ImageCodecs.standard().decode(pixels, header, stated, DecodingLimits.standard());
    assertEquals(List.of(), decoding.defects());
    assertEquals(stated.width(), decoding.image().orElseThrow().width());
    assertEquals(stated.height(), decoding.image().orElseThrow().height());
  }

  @Test
  void oneIsBlackAsTheGrayImageOfTheSameFingerShows() {
    GrayImage gray = decoded("type-3.an2", 8);
    GrayImage binary = decoded("type-5.an2", 1);
    double[] sum = new double[2];
    int[] count = new int[2];
    for (int y = 0; y < gray.height(); y++) {
      for (int x = 0; x < gray.width(); x++) {
        int level = binary.grayAt(x, y) == 0 ? 0 : 1;
        sum[level] += gray.grayAt(x, y);
        count[level]++;
      }
    }
    assertTrue(
        sum[0] / count[0] + 40 < sum[1] / count[1], sum[0] / count[0] + " " + sum[1] / count[1]);
  }

  private static GrayImage decoded(String name, int bits) {
    ByteSource record = binaryRecord(file(name));
    StatedSize stated = new StatedSize(record.uint16At(13), record.uint16At(15), bits);
    return new RawCodec()
        .decode(record.from(18), stated, DecodingLimits.standard())
        .image()
        .orElseThrow();
  }

  @Test
  void theFacsimileSignatureIsATiffOfTheStatedSize() {
    ByteSource record = binaryRecord(file("type-8-sig-fax.an2"));
    ByteSource data = record.from(12);
    ImageHeader header = ImageHeaders.read(data);
    assertEquals(ImageFormat.TIFF, header.format());
    assertEquals("CCITT Group 4", header.facts().get("compression"));
    assertEquals(record.uint16At(8), header.width());
    assertEquals(record.uint16At(10), header.height());
    assertEquals(List.of(), header.defects());
    Decoding decoding =
        ImageCodecs.standard()
            .decodeGroup4(data, new StatedSize(0, 0, 1), DecodingLimits.standard());
    assertEquals(List.of(), decoding.defects());
    ByteBuffer pixels = decoding.image().orElseThrow().asBuffer();
    int black = 0;
    while (pixels.hasRemaining()) {
      black += pixels.get() == 0 ? 1 : 0;
    }
    assertTrue(black > 100 && black < pixels.capacity() / 4, black + " black pixels");
  }

  @Test
  void wsqImagesDecodeToTheStatedSize() {
    ByteSource file = file("type-4-slaps.an2");
    ByteSource record = binaryRecord(file);
    ByteSource data = record.slice(18, (int) record.uint32At(0) - 18);
    ImageHeader header = ImageHeaders.read(data);
    assertEquals(ImageFormat.WSQ, header.format());
    assertEquals(List.of(), header.defects());
    assertEquals(record.uint16At(13), header.width());
    assertEquals(record.uint16At(15), header.height());
    Decoding decoding =
        ImageCodecs.standard()
            .decode(data, header, new StatedSize(0, 0, 8), DecodingLimits.standard());
    assertEquals(List.of(), decoding.defects());
    assertEquals(header.width(), decoding.image().orElseThrow().width());
  }
}
