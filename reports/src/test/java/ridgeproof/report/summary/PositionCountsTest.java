package ridgeproof.report.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.Depth;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.report.PilotCard;
import ridgeproof.report.Reports;
import ridgeproof.report.summary.PositionCounts.PositionCount;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.SubmissionProfile.NeededPrint;
import ridgeproof.spec.rule.Severity;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Source.Knowledge;

/** In how many files each position is doubtful or missing. */
class PositionCountsTest {

  /** A finding on the image of a position of a card without gaps, whose record is two behind. */
  private static Finding doubt(int position, Severity severity) {
    return MadeReport.finding(
        "RP-IMG-990",
        severity,
        Location.inRecord(position + 2, 14).withPosition(OptionalInt.of(position)),
        "");
  }

  /** A report on prints that are asked for, of which some may be missing. */
  private static FindingsReport report(List<Integer> asked, PilotCard card, Finding... findings) {
    SubmissionProfile profile =
        new SubmissionProfile(
            "made",
            "Made",
            "",
            asked.stream().map(code -> new NeededPrint(code, "rolled", List.of())).toList(),
            new Source("TRADE", "", Knowledge.COMMON_PRACTICE));
    return MadeReport.with(
        Reports.examine(card.bytes(), Depth.STRUCTURE),
        Optional.of(profile),
        Verdict.HOLD,
        findings);
  }

  private static List<PositionCount> counts(FindingsReport... reports) {
    PositionCounts counts = new PositionCounts(Reports.TABLES);
    for (FindingsReport report : reports) {
      counts.add(report);
    }
    return counts.commonest();
  }

  @Test
  void thePositionThatIsAtFaultInMostFilesComesFirst() {
    PilotCard card = PilotCard.ascii();
    assertEquals(
        List.of(
            new PositionCount(4, "right ring finger", 1, 2),
            new PositionCount(2, "right index finger", 2, 0),
            new PositionCount(1, "right thumb", 1, 0),
            new PositionCount(7, "left index finger", 0, 1)),
        counts(
            report(
                List.of(4),
                card,
                doubt(4, Severity.BLOCKING),
                doubt(2, Severity.LIKELY),
                doubt(1, Severity.LIKELY)),
            report(List.of(4), PilotCard.ascii().without(4), doubt(2, Severity.LIKELY)),
            report(List.of(4, 7), PilotCard.ascii().without(4).without(7))));
  }

  @Test
  void whatIsOnlyAdvisedOrNotAskedForIsNoFault() {
    assertEquals(
        List.of(),
        counts(
            report(List.of(1), PilotCard.ascii().without(4), doubt(2, Severity.ADVICE)),
            report(List.of(1), PilotCard.ascii(), doubt(3, Severity.NOTE))));
  }

  @Test
  void aPositionThatTheStandardDoesNotHaveIsNotCounted() {
    PilotCard card = PilotCard.ascii().inOrder(List.of(1)).print(13, "99");
    assertEquals(
        List.of(),
        counts(
            report(
                List.of(),
                card,
                MadeReport.finding(
                    "RP-IMG-990",
                    Severity.BLOCKING,
                    Location.inRecord(3, 14).withPosition(OptionalInt.of(99)),
                    ""))));
  }
}
