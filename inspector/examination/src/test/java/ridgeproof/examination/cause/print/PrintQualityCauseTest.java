package ridgeproof.examination.cause.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.MeasuredCard.at;
import static ridgeproof.examination.cause.MeasuredCard.inRecord;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.Established;
import ridgeproof.examination.cause.MeasuredCard;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.spec.rule.Severity;

/** What a hand did to a print explains what is then seen of it, and of no other print. */
class PrintQualityCauseTest {

  private static final String[] ALL = {
    "RP-RDG-001", "RP-RDG-002", "RP-RDG-003", "RP-RDG-004", "RP-RDG-005", "RP-RDG-006",
    "RP-RDG-007", "RP-RDG-008", "RP-RDG-009", "RP-RDG-010", "RP-RDG-011", "RP-RDG-012",
    "RP-RDG-013", "RP-RDG-014", "RP-RDG-015", "RP-RDG-017", "RP-RDG-020", "RP-RDG-021",
    "RP-IMG-035", "RP-SEQ-001"
  };

  /** By the last digits of a rule, those that it explains where each is found by itself with it. */
  private static Map<String, Set<String>> pairs() {
    Map<String, Set<String>> explained = new TreeMap<>();
    for (String cause : ALL) {
      Set<String> others = new TreeSet<>();
      for (String other : ALL) {
        Finding first = at(cause, 15, 2).withSeverity(Severity.LIKELY);
        Finding second = at(other, 15, 2).withSeverity(Severity.LIKELY);
        CauseLog log = new CauseLog(SampleCard.TABLES);
        new PrintQualityCause()
            .establish(MeasuredCard.ofRolls().examinee(), List.of(first, second), log);
        log.causes().stream()
            .filter(c -> c.finding() == first && c.consequences().include(second))
            .forEach(c -> others.add(other.substring(7)));
      }
      if (!others.isEmpty()) {
        explained.put(cause.substring(7), others);
      }
    }
    return explained;
  }

  private static Set<String> rules(String digits) {
    return new TreeSet<>(Arrays.asList(digits.split(" ")));
  }

  @Test
  void eachFaultExplainsWhatCannotBeSeenOfItsPrint() {
    Map<String, Set<String>> expected = new TreeMap<>();
    expected.put("002", rules("003 008 014 017"));
    expected.put("003", rules("002 008 014 017"));
    expected.put("004", rules("002 003 008 011 012 013 014 017"));
    expected.put("005", rules("002 003 006 008 011 012 013 014 015 017"));
    expected.put("006", rules("002 003 008 011 012 013 014 017"));
    expected.put("007", rules("002 003 008 013 014 017"));
    expected.put("008", rules("014 017"));
    expected.put("010", rules("003 008 014 017"));
    expected.put("011", rules("002 003 008 012 013 014 017"));
    expected.put("012", rules("002 003 008 013 014 017"));
    expected.put("014", rules("017"));
    expected.put("015", rules("008 014 017"));
    assertEquals(expected, pairs());
  }

  @Test
  void anotherPrintAnotherRecordAndAWorseFindingStay() {
    Finding worse = at("RP-RDG-014", 15, 2).withSeverity(Severity.BLOCKING);
    assertEquals(
        List.of("RP-RDG-006 record 15 finger 2: RP-RDG-017 record 15 finger 2"),
        Established.by(
                new PrintQualityCause(),
                at("RP-RDG-006", 15, 2),
                at("RP-RDG-017", 15, 2),
                worse,
                at("RP-RDG-009", 15, 3),
                at("RP-RDG-013", 15, 3),
                at("RP-RDG-013", 16, 2))
            .stream()
            .filter(line -> line.startsWith("RP-RDG-006"))
            .toList());
  }

  private static Finding measured(String rule, int finger, double value, double limit) {
    return measured(rule, finger, Measure.against("measure", value, "mm", limit));
  }

  private static Finding measured(String rule, int finger, Measure... evidence) {
    FindingLog log = new FindingLog(SampleCard.TABLES, 1);
    log.add(
        rule,
        Location.inRecord(3, 14).withPosition(OptionalInt.of(finger)),
        Observed.of("observed"),
        "required",
        List.of(evidence));
    return log.findings().get(0);
  }

  private static List<String> by(Finding... found) {
    return Established.by(new PrintQualityCause(), found);
  }

  @Test
  void ofLittleAreaAndLittleWidthTheOneThatFallsShorterExplainsTheOther() {
    assertEquals(
        List.of("RP-RDG-002 record 3 finger 1: RP-RDG-003 record 3 finger 1"),
        by(measured("RP-RDG-002", 1, 50, 100), measured("RP-RDG-003", 1, 6, 10)));
    assertEquals(
        List.of("RP-RDG-003 record 3 finger 1: RP-RDG-002 record 3 finger 1"),
        by(measured("RP-RDG-002", 1, 70, 100), measured("RP-RDG-003", 1, 6, 10)));
    assertEquals(
        List.of(
            "RP-RDG-003 record 3 finger 1: RP-RDG-002 record 3 finger 1",
            "RP-RDG-002 record 3 finger 1: RP-RDG-003 record 3 finger 1"),
        by(measured("RP-RDG-002", 1, 60, 100), measured("RP-RDG-003", 1, 6, 10)));
  }

  @Test
  void theFirstMeasureThatHasALimitTellsHowShortItFalls() {
    assertEquals(
        List.of("RP-RDG-002 record 3 finger 1: RP-RDG-003 record 3 finger 1"),
        by(
            measured(
                "RP-RDG-002",
                1,
                Measure.of("first", 1, "mm"),
                Measure.against("second", 1, "mm", 0),
                Measure.against("third", 80, "mm", 100)),
            measured("RP-RDG-003", 1, 9, 10)));
    // Without a measure it falls no shorter than its limit.
    assertEquals(
        List.of("RP-RDG-003 record 3 finger 1: RP-RDG-002 record 3 finger 1"),
        by(at("RP-RDG-002", 3, 1), measured("RP-RDG-003", 1, 9, 10)));
  }

  @Test
  void theAreaOfAnotherFingerDoesNotMatter() {
    assertEquals(
        List.of(
            "RP-RDG-003 record 3 finger 1: RP-RDG-008 record 3 finger 1",
            "RP-RDG-002 record 3 finger 2: nothing",
            "RP-RDG-008 record 3 finger 1: nothing"),
        by(
            measured("RP-RDG-002", 2, 10, 100),
            measured("RP-RDG-003", 1, 9, 10),
            at("RP-RDG-008", 3, 1)));
  }

  /**
   * A print that the image cuts at a side is narrow for that, be the finding as grave as it may.
   */
  @Test
  void aPrintCutAtASideIsNarrowForThat() {
    for (String side : List.of("print cut at the left edge", "print cut at the right edge")) {
      assertEquals(
          "RP-RDG-010 record 3 finger 1: RP-RDG-003 record 3 finger 1",
          by(
                  measured("RP-RDG-010", 1, Measure.of(side, 5, "mm")),
                  measured("RP-RDG-003", 1, 9, 10),
                  at("RP-RDG-003", 3, 2),
                  at("RP-RDG-003", 4, 1),
                  at("RP-RDG-002", 3, 1))
              .get(0));
    }
    assertEquals(
        "RP-RDG-010 record 3 finger 1: nothing",
        by(
                measured("RP-RDG-003", 1, 9, 10),
                measured("RP-RDG-010", 1, Measure.of("print cut at the top edge", 5, "mm")))
            .stream()
            .filter(line -> line.startsWith("RP-RDG-010"))
            .findFirst()
            .orElseThrow());
  }

  private static Finding[] slap(String rule, int... fingers) {
    List<Finding> found = new ArrayList<>();
    for (int finger : fingers) {
      found.add(at(rule, 15, finger));
    }
    return found.toArray(Finding[]::new);
  }

  /** Even what explains it of one finger alone: several dry fingers are a dry hand. */
  @Test
  void whatBefellMostFingersOfACaptureExplainsTheRestOfThem() {
    Finding[] found =
        MeasuredCard.all(
            slap("RP-RDG-004", 2, 3, 4),
            slap("RP-RDG-005", 2, 3),
            slap("RP-RDG-011", 5),
            inRecord(15, 3, "RP-RDG-014", "RP-RDG-015"),
            new Finding[] {
              Established.inImage("RP-RDG-020", 15),
              at("RP-RDG-021", 15, 5),
              Established.inImage("RP-RDG-020", 16)
            });
    List<String> told = by(found);
    assertEquals(
        List.of(
            "RP-RDG-004 record 15 finger 2: RP-RDG-005 record 15 finger 2, RP-RDG-020 record 15,"
                + " RP-RDG-021 record 15 finger 5",
            "RP-RDG-004 record 15 finger 3: RP-RDG-005 record 15 finger 3,"
                + " RP-RDG-014 record 15 finger 3",
            "RP-RDG-004 record 15 finger 4: nothing"),
        told.subList(0, 3));
    assertEquals("RP-RDG-005 record 15 finger 2: nothing", told.get(3));
  }

  @Test
  void oneDryFingerIsNoDryHand() {
    assertEquals(
        List.of("RP-RDG-005 record 15 finger 2: nothing", "RP-RDG-004 record 15 finger 2: nothing"),
        by(
            at("RP-RDG-004", 15, 2),
            at("RP-RDG-005", 15, 2),
            Established.inImage("RP-RDG-020", 15)));
  }

  @Test
  void fingersOfDifferentImagesShareNothing() {
    assertEquals(
        List.of("RP-RDG-004 record 3 finger 1: nothing", "RP-RDG-004 record 4 finger 2: nothing"),
        by(at("RP-RDG-004", 3, 1), at("RP-RDG-004", 4, 2), Established.inImage("RP-RDG-020", 3)));
  }

  @Test
  void aFingerThatWasNotFoundAtAllIsWorseThanAHandThatIsALittleDark() {
    Finding[] found = {
      at("RP-RDG-005", 15, 2).withSeverity(Severity.ADVICE),
      at("RP-RDG-005", 15, 3).withSeverity(Severity.ADVICE),
      Established.inImage("RP-RDG-020", 15)
    };
    assertEquals(
        List.of("RP-RDG-005 record 15 finger 2: nothing", "RP-RDG-005 record 15 finger 3: nothing"),
        by(found));
  }
}
