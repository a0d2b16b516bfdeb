package ridgeproof.examination.rules.image;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.RuleExamples;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleRecords;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.writer.FieldDraft;
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
        "808|750|RP-IMG-010 14.006 41.05 x 38.10 mm",
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

  private static List<String> found(SampleCard card, ExaminationOptions options) {
    return SampleCard.examine(card.bytes(), options).everyFinding().stream()
        .filter(finding -> finding.ruleId().startsWith("RP-IMG-"))
        .map(f -> line(f) + "; " + f.required() + " by " + f.source().document())
        .toList();
  }

  private static SampleCard of(String version, RecordDraft print) {
    return SampleCard.rolledTagged().with(1, header -> header.with(2, version)).plus(print);
  }

  private static RecordDraft sized(RecordDraft print, int width, int height) {
    return RuleExamples.data(
        print.with(6, Integer.toString(width)).with(7, Integer.toString(height)),
        new byte[width * height]);
  }

  @Test
  void aSlapMayBeTallerSinceTheEditionThatSaysSo() {
    RecordDraft slap = sized(SampleCard.taggedPrint(15, 13, 0), 100, 1500);
    assertEquals(List.of(), found(of("0500", slap), OpenedPrint.STRUCTURE));
    assertEquals(
        List.of("RP-IMG-009 14.006 5.08 x 76.20 mm; at most 81.28 x 50.80 mm by ITL2007"),
        found(of("0400", slap), OpenedPrint.STRUCTURE));
  }

  @Test
  void thePositionsOfAnotherRecordTypeHaveNoSizeInThisOne() {
    RecordDraft palm = sized(SampleCard.taggedPrint(15, 22, 0), 100, 2600);
    assertEquals(List.of(), found(of("0500", palm), OpenedPrint.STRUCTURE));
  }

  private static List<String> ofThumb(int ppi, String accepted) {
    String number = Integer.toString(ppi);
    return found(
            SampleRecords.tagged(3, print -> print.with(9, number).with(10, number)),
            OpenedPrint.agency("resolutions = [" + accepted + "]\n"))
        .stream()
        .filter(line -> line.startsWith("RP-IMG-008 14.009 " + ppi + ".0 ppi"))
        .toList();
  }

  @Test
  void anAgencyMayAcceptSomeOfTheResolutionsOfARecordType() {
    assertEquals(List.of(), ofThumb(1000, "500, 1000"));
    assertEquals(
        List.of("RP-IMG-008 14.009 2000.0 ppi; 500 ppi or 1000 ppi by PROFILE"),
        ofThumb(2000, "500, 1000"));
    assertEquals(
        List.of("RP-IMG-008 14.009 250.0 ppi; 500 ppi by PROFILE"), ofThumb(250, "250, 500"));
  }

  @Test
  void anAgencyThatAcceptsNoneOfARecordTypesResolutionsIsTakenAtItsWord() {
    assertEquals(List.of(), ofThumb(250, "250"));
    assertEquals(List.of("RP-IMG-008 14.009 1000.0 ppi; 250 ppi by PROFILE"), ofThumb(1000, "250"));
  }

  @Test
  void theResolutionOfATraceIsNoMatterOfTheAgency() {
    RecordDraft trace =
        RecordDraft.tagged(
            13,
            SampleCard.taggedPrint(15, 19, 4).fields().stream()
                .map(ImageLimitsRuleTest::ofTrace)
                .toList());
    assertEquals(
        List.of(),
        found(SampleCard.rolledTagged().plus(trace), OpenedPrint.agency("resolutions = [1000]\n"))
            .stream()
            .filter(line -> line.contains(" 13."))
            .toList());
  }

  @Test
  void moreThanEightBitsForAPixelAreNoGray() {
    assertEquals(
        List.of("RP-IMG-018 14.012 16 bits per pixel; 8 bits, gray by ITL2015"),
        found(
            SampleRecords.tagged(
                3, print -> RuleExamples.data(print.with(12, "16"), new byte[32 * 24 * 2])),
            OpenedPrint.STRUCTURE));
  }

  private static FieldDraft ofTrace(FieldDraft field) {
    FieldNumber number = new FieldNumber(13, field.number().field());
    return field
        .data()
        .map(data -> FieldDraft.data(number, data))
        .orElseGet(() -> FieldDraft.text(number, field.subfields()));
  }
}
