package ridgeproof.examination.rules.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.RidgeImage;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.PixelStatistics;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.codec.PngWriter;
import ridgeproof.transaction.record.ByteRange;

class RecompressionRuleTest {

  private static final Set<String> RULES = Set.of("RP-IMG-030", "RP-IMG-031", "RP-IMG-032");
  private static final GrayImage PRINT = RidgeImage.usual();

  private static List<Finding> found(byte[] data, String compression, GrayImage size) {
    return RidgeImage.withThumb(RidgeImage.record(1, size, data, compression, "500"))
        .examine()
        .findings()
        .stream()
        .filter(finding -> RULES.contains(finding.ruleId()))
        .toList();
  }

  private static byte[] png(GrayImage image) {
    return PngWriter.encode(image, Optional.empty());
  }

  private static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      bytes.writeBytes(part);
    }
    return bytes.toByteArray();
  }

  /** The codestream with a comment right behind its start marker. */
  private static byte[] withComment(byte[] wsq, String text) {
    byte[] comment = text.getBytes(StandardCharsets.US_ASCII);
    int length = comment.length + 2;
    byte[] marker = {(byte) 0xFF, (byte) 0xA8, (byte) (length >> 8), (byte) length};
    return joined(Arrays.copyOf(wsq, 2), marker, comment, Arrays.copyOfRange(wsq, 2, wsq.length));
  }

  @Test
  void oneCodestreamIsRight() {
    assertEquals(List.of(), found(RidgeImage.wsq(PRINT), "WSQ20", PRINT));
    assertEquals(List.of(), found(png(PRINT), "PNG", PRINT));
  }

  @Test
  void aSecondCodestreamBehindTheFirstIsFoundAtItsPlace() {
    byte[] first = RidgeImage.wsq(PRINT);
    List<Finding> found = found(joined(first, first), "WSQ20", PRINT);
    assertEquals(1, found.size());
    assertEquals("RP-IMG-030", found.get(0).ruleId());
    assertEquals(first.length, found.get(0).location().bytes().orElseThrow().length());
  }

  @Test
  void aSecondCodestreamBehindFillingBytesIsFound() {
    List<Finding> found =
        found(joined(png(PRINT), new byte[9], RidgeImage.wsq(PRINT)), "PNG", PRINT);
    assertEquals(1, found.size());
    assertEquals("RP-IMG-030", found.get(0).ruleId());
    assertTrue(found.get(0).observed().text().startsWith("WSQ after the PNG"));
  }

  @Test
  void fillingBytesAloneAreNoSecondCodestream() {
    byte[] filler = new byte[400];
    Arrays.fill(filler, (byte) 0xFF);
    assertEquals(List.of(), found(joined(RidgeImage.wsq(PRINT), filler), "WSQ20", PRINT));
  }

  @Test
  void aCommentThatTellsOfAnotherLossyAlgorithmIsFound() {
    byte[] wsq = withComment(RidgeImage.wsq(PRINT), "NIST_COM 3\nLOSSY 1\nCOMPRESSION JPEGB\n");
    List<Finding> found = found(wsq, "WSQ20", PRINT);
    assertEquals(1, found.size());
    assertEquals("RP-IMG-031", found.get(0).ruleId());
    assertEquals("WSQ; the comment names JPEG", found.get(0).observed().text());
  }

  @Test
  void aCommentThatTellsOfItsOwnOrALosslessAlgorithmIsRight() {
    byte[] wsq = RidgeImage.wsq(PRINT);
    String own = "NIST_COM 4\nLOSSY 1\nCOMPRESSION WSQ\nWSQ_BITRATE 0.750000\n";
    assertEquals(List.of(), found(withComment(wsq, own), "WSQ20", PRINT));
    String lossless = "NIST_COM 3\nLOSSY 0\nCOMPRESSION JPEGL\n";
    assertEquals(List.of(), found(withComment(wsq, lossless), "WSQ20", PRINT));
  }

  @Test
  void aCodestreamTakenForPixelsIsFound() {
    byte[] wsq = RidgeImage.wsq(PRINT);
    int height = wsq.length / 100;
    GrayImage bytes = GrayImage.owning(100, height, Arrays.copyOf(wsq, 100 * height));
    List<Finding> found = found(png(bytes), "PNG", bytes);
    assertEquals(1, found.size());
    assertEquals("RP-IMG-032", found.get(0).ruleId());
  }

  @Test
  void pixelsThatLookLikeAMarkerAreNoCodestream() {
    byte[] pixels = PRINT.toArray();
    pixels[0] = (byte) 0xFF;
    pixels[1] = (byte) 0xA0;
    pixels[2] = (byte) 0xFF;
    GrayImage image = GrayImage.owning(PRINT.width(), PRINT.height(), pixels);
    assertEquals(List.of(), found(png(image), "PNG", image));
  }

  private static List<String> commented(ImageFormat format, boolean lossless, String... comments) {
    ImageHeader plain = OpenedPrint.header(format);
    Map<String, String> texts = new LinkedHashMap<>();
    for (int i = 0; i < comments.length; i += 2) {
      texts.put(comments[i], comments[i + 1]);
    }
    return OpenedPrint.sample()
        .saying(
            new ImageHeader(
                format,
                plain.width(),
                plain.height(),
                8,
                1,
                plain.density(),
                Optional.of(lossless),
                OptionalDouble.empty(),
                new ByteRange(0, SampleCard.WIDTH * SampleCard.HEIGHT),
                texts,
                Map.of(),
                List.of()))
        .found(new RecompressionRule());
  }

  private static List<String> told(String what) {
    return List.of("RP-IMG-031 " + what + "; an image compressed only once");
  }

  @Test
  void aKeyThatOnlyOneEncoderWritesTellsOfItsFormat() {
    assertEquals(
        told("JPEG 2000; the comment names WSQ"),
        commented(ImageFormat.JPEG_2000, false, "WSQ_BITRATE", "0.75"));
    assertEquals(
        told("WSQ; the comment names JPEG"),
        commented(ImageFormat.WSQ, false, "jpegb_quality", "75"));
    assertEquals(List.of(), commented(ImageFormat.WSQ, false, "WSQ_BITRATE", "0.75"));
  }

  @Test
  void theSecondOfTwoCommentsIsReadToo() {
    assertEquals(
        told("WSQ; the comment names JPEG 2000"),
        commented(ImageFormat.WSQ, false, "COMPRESSION", "WSQ", "COMPRESSION 2", " jp2 "));
  }

  @Test
  void aReversibleImageWhoseCommentSaysLossyWasCompressedBefore() {
    assertEquals(
        told("PNG; the comment names an earlier lossy compression"),
        commented(ImageFormat.PNG, true, "LOSSY", "1"));
    assertEquals(List.of(), commented(ImageFormat.PNG, true, "LOSSY", "0"));
    assertEquals(List.of(), commented(ImageFormat.PNG, true, "QUALITY", "1"));
    assertEquals(List.of(), commented(ImageFormat.WSQ, false, "LOSSY", "1"));
  }

  @Test
  void pixelsThatAreStoredAsTheyAreMayBeThoseOfACodestream() {
    byte[] wsq = RidgeImage.wsq(PRINT);
    GrayImage bytes =
        GrayImage.owning(100, wsq.length / 100, Arrays.copyOf(wsq, wsq.length / 100 * 100));
    PixelStatistics pixels = PixelStatistics.of(bytes, true, Optional.empty());
    RecompressionRule rule = new RecompressionRule();
    OpenedPrint plain = OpenedPrint.sample().saying(OpenedPrint.header(ImageFormat.RAW));
    assertEquals(List.of(), plain.showing(pixels).found(rule));
    OpenedPrint png = OpenedPrint.sample().saying(OpenedPrint.header(ImageFormat.PNG));
    assertEquals(
        List.of("RP-IMG-032 PNG whose pixels are the bytes of a WSQ; the pixels of a print"),
        png.showing(pixels).found(rule));
  }
}
