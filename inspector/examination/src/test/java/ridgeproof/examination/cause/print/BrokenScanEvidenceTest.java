package ridgeproof.examination.cause.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.MeasuredCard.inRecord;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.MeasuredCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.limit.MeasuredImage;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.measure.EmptyBand;
import ridgeproof.imagery.measure.Wraparound;

/** What a broken scan is told by, at its limits, and what it explains. */
class BrokenScanEvidenceTest {

  private static final String LINES =
      "RP-IMG-047 record 3 finger 1: gray level 7 in lines 21 to 31 of 100; every line of the scan;"
          + " lines of one dark gray level 11 (limit 10)";

  private static List<String> told(MeasuredImage measured, Finding... found) {
    return MeasuredCard.ofRolls().pixels(3, measured).told(new BrokenScanCause(), found);
  }

  @Test
  void linesThatWereLostAreNamedAndExplainWhatIsMeasuredOfTheImage() {
    Finding[] found =
        MeasuredCard.all(
            inRecord(
                3,
                1,
                "RP-RDG-002",
                "RP-SEQ-001",
                "RP-IMG-035",
                "RP-IMG-036",
                "RP-IMG-038",
                "RP-IMG-016"),
            inRecord(4, 2, "RP-RDG-002", "RP-IMG-035"));
    assertEquals(
        List.of(
            LINES
                + " -> RP-RDG-002 record 3 finger 1, RP-SEQ-001 record 3 finger 1,"
                + " RP-IMG-035 record 3 finger 1, RP-IMG-036 record 3 finger 1,"
                + " RP-IMG-038 record 3 finger 1"),
        told(MeasuredImage.sound().band(new EmptyBand(20, 11, 7)), found));
    assertEquals(List.of(), told(MeasuredImage.sound().band(new EmptyBand(20, 10, 7))));
  }

  @Test
  void anEdgeThatContinuesIsToldWithItsDirection() {
    assertEquals(
        List.of(
            "RP-IMG-048 record 3 finger 1: ridges at the left edge continue at the right edge;"
                + " the print in one piece; edge that continues at the opposite edge 60 %"
                + " (limit 60)"),
        told(MeasuredImage.sound().edges(new Wraparound(10, 6, true))));
    assertEquals(
        List.of(
            "RP-IMG-048 record 3 finger 1: ridges at the upper edge continue at the lower edge;"
                + " the print in one piece; edge that continues at the opposite edge 100 %"
                + " (limit 60)"),
        told(MeasuredImage.sound().edges(new Wraparound(4, 4, false))));
    assertEquals(List.of(), told(MeasuredImage.sound().edges(new Wraparound(3, 3, true))));
    assertEquals(List.of(), told(MeasuredImage.sound().edges(new Wraparound(10, 5, true))));
  }

  @Test
  void twoLevelsAreToldByTheShareBetweenThem() {
    assertEquals(
        List.of(
            "RP-IMG-044 record 3 finger 1: 8 % of the print is at middle gray levels; 8-bit gray;"
                + " print at middle gray levels 8 % (limit 9)"),
        told(MeasuredImage.sound().slopes(0.08)));
    assertEquals(List.of(), told(MeasuredImage.sound().slopes(0.09)));
  }

  @Test
  void asManyPixelsAsTellAnythingOfTheGrayLevelsAreEnough() {
    assertEquals(1, told(MeasuredImage.sound().levels(200, 20_000).slopes(0.01)).size());
    assertEquals(List.of(), told(MeasuredImage.sound().levels(200, 19_999).slopes(0.01)));
  }

  @Test
  void itsRulesAreThoseOfBrokenScans() {
    assertEquals(Set.of("RP-IMG-044", "RP-IMG-047", "RP-IMG-048"), new BrokenScanCause().ids());
  }

  @Test
  void aTraceAndAnImageThatWasNotLookedAtAreNotAccused() {
    MeasuredImage broken =
        MeasuredImage.sound()
            .slopes(0.01)
            .band(new EmptyBand(20, 11, 7))
            .edges(new Wraparound(10, 10, true));
    assertEquals(3, told(broken).size());
    assertEquals(
        List.of(),
        MeasuredCard.ofRolls()
            .pixels(3, broken)
            .depth(Depth.STRUCTURE)
            .told(new BrokenScanCause()));
    SampleCard trace = SampleCard.rolledTagged().with(3, draft -> draft.with(3, "4"));
    assertEquals(List.of(), MeasuredCard.of(trace).pixels(3, broken).told(new BrokenScanCause()));
  }
}
