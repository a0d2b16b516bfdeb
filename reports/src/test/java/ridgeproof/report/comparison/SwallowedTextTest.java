package ridgeproof.report.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.comparison.ValueDifference;
import ridgeproof.examination.facts.Depth;
import ridgeproof.report.PilotCard;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.Renderings;
import ridgeproof.spec.layout.FieldNumber;

/** A field that has lost its end holds what follows it, a name perhaps, and is not shown. */
class SwallowedTextTest {

  private static final String SWALLOWED = "19.69SPECIMEN,ADA";

  /** The nominal resolution, five characters that anyone may see. */
  private static final FieldNumber RESOLUTION = FieldNumber.parse("1.012");

  private final TransactionComparison comparison =
      Renderings.compare(
          PilotCard.ascii().bytes(),
          PilotCard.ascii().header(12, "00.00").bytes(),
          Depth.STRUCTURE);

  private final ComparisonPhrases masking = new ComparisonPhrases(comparison, false);
  private final ComparisonPhrases showing = new ComparisonPhrases(comparison, true);

  @Test
  void aTextThatFitsItsFieldIsShown() {
    ValueDifference difference = difference("19.69", "00.00", 1);
    assertFalse(masking.masks(difference));
    assertEquals("19.69", masking.shown(difference, "19.69"));
  }

  @Test
  void aTextThatIsTooLongIsMaskedWhicheverFileHasIt() {
    for (ValueDifference difference :
        List.of(difference(SWALLOWED, "19.69", 1), difference("19.69", SWALLOWED, 1))) {
      assertTrue(masking.masks(difference), difference.toString());
      assertEquals("[masked]", masking.shown(difference, SWALLOWED));
      assertEquals("[masked]", masking.shown(difference, "19.69"));
      assertFalse(showing.masks(difference), difference.toString());
      assertEquals(SWALLOWED, showing.shown(difference, SWALLOWED));
    }
  }

  @Test
  void aTextThatOnlyOneFileHasIsMaskedToo() {
    ValueDifference gone = only(Optional.of(SWALLOWED), Optional.empty());
    ValueDifference come = only(Optional.empty(), Optional.of(SWALLOWED));
    assertEquals("[masked]", masking.shown(gone, SWALLOWED));
    assertEquals("[masked]", masking.shown(come, SWALLOWED));
  }

  @Test
  void onePartAmongSeveralIsEnough() {
    ValueDifference difference = difference("19.69 | " + SWALLOWED, "19.69", 1);
    assertEquals("[masked]", masking.shown(difference, "19.69"));
  }

  @Test
  void theLengthOfDataIsShownHoweverItIsWorded() {
    ValueDifference difference = difference("1,234,567 bytes", "1,234,568 bytes", 0);
    assertFalse(masking.masks(difference));
    assertEquals("1,234,567 bytes", masking.shown(difference, "1,234,567 bytes"));
  }

  @Test
  void reportsOnAFileWithASwallowedNameDoNotTellIt() {
    TransactionComparison swallowed =
        Renderings.compare(
            PilotCard.ascii().bytes(),
            PilotCard.ascii().header(12, SWALLOWED).bytes(),
            Depth.STRUCTURE);
    RenderOptions standard = RenderOptions.standard();
    for (String report :
        List.of(
            ComparisonText.render(MadeComparison.FIRST, MadeComparison.SECOND, swallowed, standard),
            ComparisonJson.render(
                MadeComparison.FIRST, MadeComparison.SECOND, swallowed, standard))) {
      assertTrue(report.contains("masked"), report);
      assertFalse(report.contains("SPECIMEN"), report);
    }
  }

  private static ValueDifference difference(String first, String second, int items) {
    return new ValueDifference(
        RESOLUTION,
        OptionalInt.of(1),
        items == 0 ? OptionalInt.empty() : OptionalInt.of(1),
        Optional.of(first),
        Optional.of(second),
        items,
        false);
  }

  private static ValueDifference only(Optional<String> first, Optional<String> second) {
    return new ValueDifference(
        RESOLUTION, OptionalInt.empty(), OptionalInt.empty(), first, second, 1, false);
  }
}
