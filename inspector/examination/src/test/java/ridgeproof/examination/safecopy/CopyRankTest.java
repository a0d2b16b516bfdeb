package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.safecopy.FindingChange.Reason;
import ridgeproof.finding.Location;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.record.ByteSource;

class CopyRankTest {

  private static final List<FindingChange> NONE = List.of();

  private static FindingChange change(Severity severity, int record) {
    Location place = record == 0 ? Location.file() : Location.inRecord(record, 14);
    return new FindingChange(MadeReport.severe(severity, place), Reason.IMAGE_REPLACED);
  }

  private static SafeCopy copy(
      List<FindingChange> lost, List<FindingChange> gained, boolean sameFirst) {
    return new SafeCopy(ByteSource.of(new byte[1]), lost, gained, sameFirst);
  }

  private static List<FindingChange> times(int count, Severity severity) {
    return IntStream.range(0, count).mapToObj(i -> change(severity, 3)).toList();
  }

  private static void assertBetter(SafeCopy better, SafeCopy worse) {
    assertTrue(better.compareTo(worse) < 0);
    assertTrue(worse.compareTo(better) > 0);
  }

  @Test
  void aFaithfulCopyLosesAndGainsNoMoreThanNotes() {
    List<FindingChange> note = times(1, Severity.NOTE);
    assertTrue(copy(NONE, NONE, true).isFaithful());
    assertTrue(copy(note, note, true).isFaithful());
    assertFalse(copy(NONE, NONE, false).isFaithful());
    assertFalse(copy(times(1, Severity.ADVICE), NONE, true).isFaithful());
    assertFalse(copy(NONE, times(1, Severity.ADVICE), true).isFaithful());
  }

  @Test
  void aRecordIsAsFarOffAsItsChangesWeigh() {
    SafeCopy copy =
        copy(
            List.of(
                change(Severity.BLOCKING, 3),
                change(Severity.LIKELY, 4),
                change(Severity.ADVICE, 3),
                change(Severity.NOTE, 5),
                change(Severity.LIKELY, 0)),
            List.of(change(Severity.LIKELY, 4), change(Severity.BLOCKING, 6)),
            true);
    assertEquals(Map.of(3, 5, 4, 6, 6, 4000), copy.changesByRecord());
  }

  @Test
  void theCopyThatAddsLessToRejectIsBetterWhateverItLoses() {
    assertBetter(
        copy(times(2000, Severity.BLOCKING), NONE, false),
        copy(NONE, times(1, Severity.BLOCKING), true));
    assertBetter(
        copy(NONE, times(1, Severity.BLOCKING), true),
        copy(NONE, times(2, Severity.BLOCKING), true));
    assertBetter(
        copy(NONE, times(2, Severity.LIKELY), true), copy(NONE, times(1, Severity.BLOCKING), true));
  }

  @Test
  void thenTheOneWithTheSameFirstThingToDo() {
    assertBetter(copy(times(9, Severity.LIKELY), NONE, true), copy(NONE, NONE, false));
  }

  @Test
  void thenTheOneMostLikeTheOriginal() {
    assertBetter(
        copy(times(1, Severity.LIKELY), NONE, true), copy(times(1, Severity.BLOCKING), NONE, true));
    assertBetter(
        copy(times(2, Severity.ADVICE), NONE, true), copy(NONE, times(1, Severity.LIKELY), true));
    assertEquals(
        0,
        copy(times(3, Severity.ADVICE), NONE, true)
            .compareTo(copy(NONE, times(1, Severity.LIKELY), true)));
  }
}
