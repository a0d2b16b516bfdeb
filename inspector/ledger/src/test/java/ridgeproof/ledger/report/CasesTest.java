package ridgeproof.ledger.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.Verdict;
import ridgeproof.ledger.ResponseOutcome;

class CasesTest {

  private static Attempt sent(long id, long day, String file, String control) {
    return new Attempt(
        id, day, file, control, 1, "", Verdict.READY, Optional.empty(), Optional.empty());
  }

  private static Attempt answer(long id, long day, String refers, ResponseOutcome outcome) {
    return new Attempt(
        id,
        day,
        "r" + id,
        "bureau " + id,
        0,
        "",
        Verdict.READY,
        Optional.of(refers),
        Optional.of(outcome));
  }

  private static Cases cases(Attempt... attempts) {
    return Cases.of(Map.of(), List.of(attempts));
  }

  @Test
  void aResponseIsTiedByItsReference() {
    Cases cases =
        cases(
            sent(1, 10, "a", "A"),
            sent(2, 10, "b", "B"),
            answer(3, 12, "B", ResponseOutcome.REJECTED),
            answer(4, 13, "A", ResponseOutcome.ACCEPTED));
    assertEquals(2, cases.sendings().size());
    assertEquals(1, cases.sendings().get(0).submission().id());
    assertTrue(cases.sendings().get(0).accepted());
    assertEquals(2, cases.sendings().get(1).submission().id());
    assertFalse(cases.sendings().get(1).accepted());
  }

  @Test
  void aResponseThatWasRecordedBeforeItsSubmissionIsTiedToo() {
    Cases cases = cases(answer(1, 12, "A", ResponseOutcome.ACCEPTED), sent(2, 12, "a", "A"));
    assertEquals(2, cases.sendings().get(0).submission().id());
  }

  @Test
  void eachResponseAnswersTheLastSubmissionBeforeIt() {
    Cases cases =
        cases(
            sent(1, 10, "a", "A"),
            answer(2, 12, "A", ResponseOutcome.REJECTED),
            sent(3, 14, "b", "A"),
            answer(4, 16, "A", ResponseOutcome.ACCEPTED));
    assertEquals(List.of(1L, 3L), cases.sendings().stream().map(s -> s.submission().id()).toList());
    assertEquals(List.of(true, false), cases.sendings().stream().map(Sending::first).toList());
    Acceptance acceptance = Acceptance.of(cases);
    assertEquals(new Share(0, 1), acceptance.all());
    assertEquals(Map.of(6, 1L), acceptance.days());
  }

  @Test
  void aFileThatIsExaminedTwiceCountsOnce() {
    Cases cases =
        cases(
            sent(1, 10, "a", "A"),
            sent(2, 10, "a", "A"),
            answer(3, 12, "A", ResponseOutcome.ACCEPTED));
    assertEquals(2, cases.sendings().get(0).submission().id());
    assertEquals(1, cases.submissions().get("A").size());
  }

  @Test
  void aSecondAnswerToTheSameSubmissionIsNotCounted() {
    Cases cases =
        cases(
            sent(1, 10, "a", "A"),
            answer(2, 12, "A", ResponseOutcome.ACCEPTED),
            answer(3, 13, "A", ResponseOutcome.ACCEPTED));
    assertEquals(1, cases.sendings().size());
  }

  @Test
  void whatCannotBeTiedIsCounted() {
    Cases cases = cases(sent(1, 10, "a", ""), answer(2, 12, "X", ResponseOutcome.ACCEPTED));
    assertEquals(1, cases.unmatched());
    assertEquals(1, cases.silent());
    assertEquals(List.of(), cases.sendings());
  }
}
