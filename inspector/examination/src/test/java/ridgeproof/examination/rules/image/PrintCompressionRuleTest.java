package ridgeproof.examination.rules.image;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class PrintCompressionRuleTest {

  private static final String NO_JPEG = "; no compression, WSQ at 500 ppi or JPEG 2000 at 1000 ppi";

  private static List<String> at(String ppi, String code) {
    return OpenedPrint.of(draft -> draft.with(9, ppi).with(10, ppi).with(11, code))
        .found(new PrintCompressionRule());
  }

  private static List<String> unscaled(String code) {
    return OpenedPrint.of(draft -> draft.without(9).without(10).with(11, code))
        .found(new PrintCompressionRule());
  }

  @Test
  void aFormatBelongsToAResolution() {
    assertEquals(List.of(), at("500", "WSQ20"));
    assertEquals(
        List.of("RP-IMG-012 WSQ at 1000 ppi; WSQ at 500 ppi, or JPEG 2000"), at("1000", "WSQ20"));
    assertEquals(List.of("RP-IMG-024 JPEG 2000 at 500 ppi; WSQ at 500 ppi"), at("500", "JP2"));
    assertEquals(List.of(), at("1000", "JP2"));
    assertEquals(List.of("RP-IMG-023 JPEG at 500 ppi" + NO_JPEG), at("500", "JPEGB"));
    assertEquals(List.of(), at("500", "NONE"));
  }

  @Test
  void whereNoResolutionIsStatedOnlyAFormatThatBelongsToNoneIsTold() {
    assertEquals(List.of("RP-IMG-023 JPEG" + NO_JPEG), unscaled("JPEGB"));
    assertEquals(List.of(), unscaled("WSQ20"));
    assertEquals(List.of(), unscaled("JP2"));
  }
}
