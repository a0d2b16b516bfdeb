package ridgeproof.examination.rules.image;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.PixelDensity;

/** The record of the sample states 32 x 24 pixels of 8 bits at 500 ppi. */
class ImageHeaderConsistencyRuleTest {

  private static final Optional<PixelDensity> AS_STATED = Optional.of(PixelDensity.ofPpi(500));

  private static List<String> found(ImageFormat stated, ImageHeader header) {
    return OpenedPrint.sample()
        .saying(header)
        .stated(stated)
        .found(new ImageHeaderConsistencyRule());
  }

  private static List<String> found(int width, int height, int bits, PixelDensity density) {
    return found(
        ImageFormat.PNG,
        OpenedPrint.header(ImageFormat.PNG, width, height, bits, Optional.of(density)));
  }

  @ParameterizedTest(name = "{0} stored as {1}")
  @CsvSource({
    "WSQ, WSQ",
    "RAW, RAW",
    "PEN_VECTORS, RAW",
    "GROUP_4, RAW",
    "GROUP_4, TIFF",
  })
  void aFormatMayBeStoredAsItself(ImageFormat stated, ImageFormat found) {
    assertEquals(List.of(), found(stated, OpenedPrint.header(found)));
  }

  @ParameterizedTest(name = "{0} stored as {1}")
  @CsvSource({
    "RAW, WSQ, WSQ",
    "WSQ, RAW, uncompressed",
    "RAW, TIFF, TIFF",
    "PEN_VECTORS, TIFF, TIFF",
    "GROUP_4, PNG, PNG",
    "PNG, TIFF, TIFF",
  })
  void anotherFormatIsToldByTheNameOfTheOneFound(
      ImageFormat stated, ImageFormat found, String label) {
    assertEquals(
        List.of("RP-IMG-005 code NONE, " + stated.label() + "; " + label),
        found(stated, OpenedPrint.header(found)));
  }

  @Test
  void ofAnotherFormatNothingElseIsCompared() {
    ImageHeader other = OpenedPrint.header(ImageFormat.PNG, 90, 90, 1, AS_STATED);
    assertEquals(List.of("RP-IMG-005 code NONE, WSQ; PNG"), found(ImageFormat.WSQ, other));
  }

  @Test
  void aSizeThatTheImageHasNotIsTold() {
    PixelDensity density = AS_STATED.orElseThrow();
    assertEquals(List.of(), found(32, 24, 8, density));
    assertEquals(
        List.of("RP-IMG-001 record 32 pixels; 33 pixels, as the image has"),
        found(33, 24, 8, density));
    assertEquals(
        List.of("RP-IMG-002 record 24 pixels; 23 pixels, as the image has"),
        found(32, 23, 8, density));
    assertEquals(List.of("RP-IMG-003 record 8 bits; 1 bit"), found(32, 24, 1, density));
  }

  @Test
  void anImageThatSaysNothingOfItsSizeDisagreesWithNoRecord() {
    assertEquals(List.of(), found(0, 0, 0, AS_STATED.orElseThrow()));
  }

  @Test
  void anImageOfOnePixelIsOfAnotherSize() {
    assertEquals(
        List.of(
            "RP-IMG-001 record 32 pixels; 1 pixel, as the image has",
            "RP-IMG-002 record 24 pixels; 1 pixel, as the image has"),
        found(1, 1, 8, AS_STATED.orElseThrow()));
  }

  @ParameterizedTest(name = "{0} x {1}")
  @CsvSource({"500, 500", "505, 500", "495, 500", "500, 505", "500, 495"})
  void aResolutionMayBeOnePercentOff(double across, double down) {
    assertEquals(List.of(), found(32, 24, 8, new PixelDensity(across, down)));
  }

  @ParameterizedTest(name = "{0} x {1}")
  @CsvSource({"505.1, 500, 505", "494.9, 500, 495", "500, 505.1, 500", "500, 494.9, 500"})
  void aResolutionThatIsFurtherOffEitherWayIsTold(double across, double down, String told) {
    assertEquals(
        List.of("RP-IMG-004 " + told + " ppi inside the image; 500 ppi, as the record has"),
        found(32, 24, 8, new PixelDensity(across, down)));
  }

  @Test
  void anImageThatSaysNothingOfItsResolutionDisagreesWithNoRecord() {
    ImageHeader silent = OpenedPrint.header(ImageFormat.PNG, 32, 24, 8, Optional.empty());
    assertEquals(List.of(), found(ImageFormat.PNG, silent));
  }
}
