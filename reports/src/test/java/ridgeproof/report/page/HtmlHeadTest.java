package ridgeproof.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.PilotCard;
import ridgeproof.report.RenderOptions;

/** The head of every page, and the page with images. */
class HtmlHeadTest {

  @Test
  void everyPageHasTheCommonStyleAndThenItsOwn() {
    HtmlHead plain = HtmlHead.titled("Title");
    assertEquals("Title", plain.title());
    assertTrue(plain.style().startsWith(":root {"), plain.style());
    HtmlHead styled = HtmlHead.styled("Other", "b { color: red; }");
    assertEquals("Other", styled.title());
    assertEquals(plain.style() + "b { color: red; }", styled.style());
    assertNotEquals(plain.policy(), styled.policy());
  }

  @Test
  void aPageWithImagesHoldsThemInItself() {
    FindingsReport report = MadeCardReport.of(PilotCard.ascii());
    GrayImage black = GrayImage.owning(32, 24, new byte[32 * 24]);
    String page =
        HtmlReport.render(
            MadeCardReport.FILE, report, RenderOptions.standard(), image -> Optional.of(black));
    assertEquals(15, page.split("\"data:image/png;base64,", -1).length, "parts around 14 images");
    assertTrue(page.contains("The images are personal data"), page);
  }
}
