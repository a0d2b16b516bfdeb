package ridgeproof.report.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ridgeproof.report.RenderOptions;

/** Everything that the three forms of a comparison say, word by word. */
class ComparisonWholeTest {

  private static final RenderOptions OPTIONS = RenderOptions.standard();

  private static String expected(String name) throws IOException {
    try (InputStream in = ComparisonWholeTest.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void theTextSaysEachDifferenceOnce() throws IOException {
    assertEquals(
        expected("whole.txt"),
        ComparisonText.render(
            MadeComparison.FIRST, MadeComparison.SECOND, MadeComparison.all(), OPTIONS));
  }

  @Test
  void aProgramReadsEachDifferenceOnce() throws IOException {
    assertEquals(
        expected("whole.json"),
        ComparisonJson.render(
            MadeComparison.FIRST, MadeComparison.SECOND, MadeComparison.all(), OPTIONS));
  }

  @Test
  void thePageHasEachDifferenceOnce() throws IOException {
    ComparisonPage page =
        new ComparisonContents(
                MadeComparison.FIRST,
                MadeComparison.SECOND,
                MadeComparison.all(),
                OPTIONS,
                Optional.empty())
            .page();
    assertEquals(expected("whole.page.txt"), lines(page));
  }

  /** The contents of the page, an entry a line. */
  static String lines(ComparisonPage page) {
    return Stream.of(
            List.of(page.stamp(), page.style(), page.lead(), page.next()),
            page.warning(),
            page.summary(),
            page.references(),
            List.of(page.ignored()),
            page.files(),
            page.changes(),
            page.fingers(),
            page.images().stream().map(ComparisonWholeTest::line).toList(),
            page.pairs(),
            page.removed(),
            page.added(),
            page.noted(),
            List.of(page.lengths()),
            page.cautions())
        .flatMap(List::stream)
        .map(Object::toString)
        .collect(Collectors.joining("\n", "", "\n"));
  }

  private static String line(ComparisonPage.ImagePart image) {
    return Stream.of(
            image.anchor(),
            image.title(),
            image.state(),
            image.mark(),
            image.level(),
            image.figures(),
            image.pictures().size(),
            image.prints())
        .map(Object::toString)
        .collect(Collectors.joining("; "));
  }
}
