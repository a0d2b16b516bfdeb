package ridgeproof.examination.rules.image;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.RuleExamples;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.transaction.writer.RecordDraft;

/** Both sides of each limit, a pixel apart. */
class ImageLimitsRuleTest {

  private static String found(UnaryOperator<RecordDraft> change) {
    List<String> lines =
        SampleCard.examine(
                RuleExamples.tagged(change).bytes(),
                ExaminationOptions.standard()
                    .withToday(SampleCard.TODAY)
                    .withDepth(Depth.STRUCTURE))
            .everyFinding()
            .stream()
            .map(ImageLimitsRuleTest::line)
            .toList();
    return lines.isEmpty() ? "none" : String.join("; ", lines);
  }

  private static String line(Finding finding) {
    return finding.ruleId()
        + " "
        + finding.location().field().map(Object::toString).orElse("")
        + " "
        + finding.observed().text();
  }

  /** A rolled finger may have 1.6 by 1.5 inches, and one percent is within what devices do. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "800|750|none",
        "801|750|RP-IMG-010 14.006 40.69 x 38.10 mm",
        "807|750|RP-IMG-010 14.006 41.00 x 38.10 mm",
        "809|750|RP-IMG-009 14.006 41.10 x 38.10 mm",
        "800|751|RP-IMG-010 14.006 40.64 x 38.15 mm",
        "800|757|RP-IMG-010 14.006 40.64 x 38.46 mm",
        "800|758|RP-IMG-009 14.006 40.64 x 38.51 mm"
      })
  void anImageIsAsLargeAsItsPositionAllows(int width, int height, String expected) {
    assertEquals(
        expected,
        found(
            draft ->
                RuleExamples.data(
                    draft.with(6, Integer.toString(width)).with(7, Integer.toString(height)),
                    new byte[width * height])));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "500|505|none",
        "500|506|RP-IMG-017 14.010 500 and 506 ppi",
        "500|495|none",
        "500|494|RP-IMG-017 14.010 500 and 494 ppi"
      })
  void resolutionsAcrossAndDownDifferByOnePercentAtMost(
      String across, String down, String expected) {
    assertEquals(expected, found(draft -> draft.with(9, across).with(10, down)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "495|none",
        "494|RP-IMG-008 14.009 494.0 ppi",
        "505|none",
        "506|RP-IMG-008 14.009 506.0 ppi",
        "990|none",
        "989|RP-IMG-008 14.009 989.0 ppi",
        "1010|none",
        "1011|RP-IMG-008 14.009 1011.0 ppi"
      })
  void aResolutionIsWithinOnePercentOfAPublishedOne(String ppi, String expected) {
    assertEquals(expected, found(draft -> draft.with(9, ppi).with(10, ppi)));
  }
}
