package ridgeproof.examination.rules.image;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.RuleExamples;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.PixelStatistics;
import ridgeproof.examination.limit.MeasuredImage;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageDefect.Kind;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;

/** A print of 32 x 24 pixels with what decoding met. */
class ImageIntegrityRuleTest {

  private static final PixelStatistics PIXELS = MeasuredImage.sound().statistics();

  private static OpenedPrint png() {
    return OpenedPrint.sample().stated(ImageFormat.PNG).saying(OpenedPrint.header(ImageFormat.PNG));
  }

  private static List<String> found(OpenedPrint print) {
    return print.found(new ImageIntegrityRule());
  }

  private static ImageDefect defect(Kind kind, int offset, String detail) {
    return new ImageDefect(kind, offset, detail);
  }

  @Test
  void aWholeImageIsNotTold() {
    assertEquals(List.of(), found(png().showing(PIXELS)));
  }

  @Test
  void anImageWithoutPixelsIsOfAFormatThatCannotBeDecoded() {
    assertEquals(List.of("RP-IMG-014 PNG; a format that can be decoded"), found(png()));
    assertEquals(
        List.of("RP-IMG-014 bytes of no known format; a format that can be decoded"),
        found(
            OpenedPrint.sample()
                .stated(ImageFormat.WSQ)
                .saying(OpenedPrint.header(ImageFormat.RAW))));
  }

  @Test
  void whatStoppedDecodingIsToldAlone() {
    assertEquals(
        List.of("RP-IMG-006 cut; a complete codestream"),
        found(png().meeting(defect(Kind.DAMAGE, 600, "cut"))));
    assertEquals(
        List.of("RP-IMG-015 too large; an image within the limit"),
        found(png().meeting(defect(Kind.LIMIT, 600, "too large"))));
    assertEquals(
        List.of(
            "RP-IMG-070 1 of 1 images not fully examined: too many pixels;"
                + " images of a plausible size for this file"),
        found(png().meeting(defect(Kind.FILE_LIMIT, 600, "too many pixels"))));
  }

  @Test
  void whatDoesNotStopDecodingDoesNotExplainThatThereAreNoPixels() {
    assertEquals(
        List.of(
            "RP-IMG-050 class 1; a table of class 0",
            "RP-IMG-014 PNG; a format that can be decoded"),
        found(png().meeting(defect(Kind.ODDITY, 600, "class 1"))));
    assertEquals(
        List.of(
            "RP-IMG-007 3 bytes; the image only", "RP-IMG-014 PNG; a format that can be decoded"),
        found(png().meeting(defect(Kind.TRAILING_BYTES, 600, "3 bytes"))));
  }

  private static OpenedPrint headed(ImageDefect inHeader, ImageDefect inDecoding) {
    ImageHeader plain = OpenedPrint.header(ImageFormat.PNG);
    ImageHeader header =
        new ImageHeader(
            plain.format(),
            plain.width(),
            plain.height(),
            plain.bitsPerPixel(),
            plain.components(),
            plain.density(),
            plain.lossless(),
            plain.quantizerRate(),
            plain.extent(),
            plain.comments(),
            plain.facts(),
            List.of(inHeader));
    return png().saying(header).showing(PIXELS).meeting(inDecoding);
  }

  @Test
  void theSameDamageMetTwiceIsToldOnce() {
    ImageDefect damage = defect(Kind.DAMAGE, 600, "cut");
    assertEquals(List.of("RP-IMG-006 cut; a complete codestream"), found(headed(damage, damage)));
    assertEquals(
        List.of(
            "RP-IMG-006 cut; a complete codestream", "RP-IMG-006 broken; a complete codestream"),
        found(headed(damage, defect(Kind.DAMAGE, 600, "broken"))));
  }

  @Test
  void theSameBytesBehindTheImageAreToldOnceWhateverTheirWords() {
    ImageDefect rest = defect(Kind.TRAILING_BYTES, 600, "3 bytes");
    assertEquals(
        List.of("RP-IMG-007 3 bytes; the image only"),
        found(headed(rest, defect(Kind.TRAILING_BYTES, 600, "3 bytes after the marker"))));
    assertEquals(
        List.of("RP-IMG-007 3 bytes; the image only", "RP-IMG-007 2 bytes; the image only"),
        found(headed(rest, defect(Kind.TRAILING_BYTES, 601, "2 bytes"))));
    assertEquals(
        List.of("RP-IMG-007 3 bytes; the image only", "RP-IMG-006 cut; a complete codestream"),
        found(headed(rest, defect(Kind.DAMAGE, 600, "cut"))));
    assertEquals(
        List.of("RP-IMG-006 cut; a complete codestream", "RP-IMG-007 3 bytes; the image only"),
        found(headed(defect(Kind.DAMAGE, 600, "cut"), rest)));
  }

  @ParameterizedTest(name = "{0} bits in {1} bytes")
  @CsvSource({"8, 768, 8 bits", "1, 96, 1 bit", "16, 1536, 16 bits"})
  void theBytesOfPlainPixelsAreAsManyAsTheRecordStates(int bits, int bytes, String depth) {
    assertEquals(List.of(), counted(32, bits, bytes));
    String wanted = "; %d bytes for 32 x 24 pixels of %s".formatted(bytes, depth);
    assertEquals(
        List.of("RP-IMG-011 " + (bytes + 1) + " bytes" + wanted), counted(32, bits, bytes + 1));
    assertEquals(
        List.of("RP-IMG-011 " + (bytes - 1) + " bytes" + wanted), counted(32, bits, bytes - 1));
  }

  @Test
  void aRowOfPixelsEndsWithAByte() {
    assertEquals(List.of(), counted(33, 1, 5 * 24));
    assertEquals(
        List.of("RP-IMG-011 99 bytes; 120 bytes for 33 x 24 pixels of 1 bit"),
        counted(33, 1, 33 * 24 / 8));
  }

  private static List<String> counted(int width, int bits, int bytes) {
    return found(
        OpenedPrint.of(
                draft ->
                    RuleExamples.data(
                        draft.with(6, Integer.toString(width)).with(12, Integer.toString(bits)),
                        new byte[bytes]))
            .saying(
                OpenedPrint.header(
                    ImageFormat.RAW, width, SampleCard.HEIGHT, bits, Optional.empty()))
            .showing(PIXELS));
  }

  @Test
  void theBytesOfACodestreamAreNotCounted() {
    assertEquals(
        List.of(),
        found(
            OpenedPrint.of(draft -> RuleExamples.data(draft, new byte[50]))
                .saying(OpenedPrint.header(ImageFormat.PNG))
                .showing(PIXELS)),
        "a codestream where the record says none");
    assertEquals(
        List.of(),
        found(
            OpenedPrint.of(draft -> RuleExamples.data(draft, new byte[50]))
                .stated(ImageFormat.PNG)
                .saying(OpenedPrint.header(ImageFormat.RAW))
                .showing(PIXELS)),
        "no codestream where the record says one");
  }

  @Test
  void withoutASizeBytesAreNotCounted() {
    for (int field : List.of(6, 7, 12)) {
      assertEquals(
          List.of(),
          found(
              OpenedPrint.of(draft -> RuleExamples.data(draft.without(field), new byte[50]))
                  .saying(OpenedPrint.header(ImageFormat.RAW))
                  .showing(PIXELS)),
          () -> "without field " + field);
    }
  }
}
