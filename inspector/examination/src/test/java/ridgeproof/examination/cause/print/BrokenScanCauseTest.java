package ridgeproof.examination.cause.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.RidgeImage;
import ridgeproof.imagery.GrayImage;

/**
 * One finding for what a scanner or an export did to one image, and none for what is seen of it.
 */
class BrokenScanCauseTest {

  private static final Set<String> RULES = Set.of("RP-IMG-044", "RP-IMG-047", "RP-IMG-048");

  private static Set<String> ids(GrayImage thumb) {
    Set<String> ids = new TreeSet<>();
    RidgeImage.withThumb(thumb)
        .examine()
        .findings()
        .forEach(
            finding -> {
              boolean ofThumb = finding.location().position().orElse(0) == 1;
              if (RULES.contains(finding.ruleId()) || ofThumb && isOfPixels(finding.ruleId())) {
                ids.add(finding.ruleId());
              }
            });
    return ids;
  }

  private static boolean isOfPixels(String rule) {
    return rule.matches("RP-RDG-.*|RP-IMG-03[578]");
  }

  private static GrayImage blackFrom(GrayImage image, double part, int gray) {
    byte[] pixels = image.toArray();
    for (int i = (int) (part * image.height()) * image.width(); i < pixels.length; i++) {
      pixels[i] = (byte) gray;
    }
    return GrayImage.owning(image.width(), image.height(), pixels);
  }

  private static GrayImage begunInTheMiddle(GrayImage image) {
    byte[] pixels = new byte[image.width() * image.height()];
    for (int i = 0; i < pixels.length; i++) {
      int x = (i % image.width() + image.width() / 2) % image.width();
      pixels[i] = (byte) image.grayAt(x, i / image.width());
    }
    return GrayImage.owning(image.width(), image.height(), pixels);
  }

  @Test
  void aWholePrintIsNotAccused() {
    Set<String> found = ids(RidgeImage.usual());
    found.retainAll(RULES);
    assertEquals(Set.of(), found);
  }

  @Test
  void blackAndWhiteSmoothedByCompressionIsToldAsTwoLevels() {
    GrayImage two = RidgeImage.mapped(RidgeImage.usual(), gray -> gray < 140 ? 4 : 250);
    byte[] pixels = two.toArray();
    pixels[0] = (byte) 128;
    assertEquals(Set.of("RP-IMG-044"), ids(GrayImage.owning(two.width(), two.height(), pixels)));
  }

  @Test
  void linesThatWereNotTransferredAreOneFinding() {
    assertEquals(Set.of("RP-IMG-047"), ids(blackFrom(RidgeImage.usual(), 0.55, 0)));
    assertEquals(Set.of("RP-IMG-047"), ids(blackFrom(RidgeImage.usual(), 0.8, 128)));
  }

  @Test
  void whiteLinesAreTheGround() {
    Set<String> found = ids(blackFrom(RidgeImage.usual(), 0.8, 245));
    found.retainAll(RULES);
    assertEquals(Set.of(), found);
  }

  @Test
  void anImageThatBeginsInItsMiddleIsOneFinding() {
    assertEquals(Set.of("RP-IMG-048"), ids(begunInTheMiddle(RidgeImage.usual())));
  }
}
