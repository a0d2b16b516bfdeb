package ridgeproof.report.ticket;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RecommendedAction;
import ridgeproof.examination.facts.Depth;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.report.Reports;
import ridgeproof.report.ticket.Ticket.Line;
import ridgeproof.report.ticket.Ticket.Section;
import ridgeproof.spec.agency.RelaxedRule;
import ridgeproof.spec.rule.Severity;

/** What a ticket says in each of its sections. */
class TicketContentsTest {

  private static final String CHECKS = "What the vendor can check";
  private static final String STEPS = "What the operator was asked to do";
  private static final String FINDINGS = "Findings by rule";

  private static FindingsReport examined(String bytes) {
    return Reports.examine(bytes.getBytes(StandardCharsets.US_ASCII), Depth.STRUCTURE);
  }

  private static List<Line> message(String text, Finding... findings) {
    return MadeTicket.section(
        "Bureau message", MadeTicket.report(findings), TicketRequest.standard().withMessage(text));
  }

  private static Line.Fact fact(String name, String value) {
    return new Line.Fact(name, value);
  }

  private static List<Line> facts(String name, List<Line> lines) {
    return lines.stream()
        .filter(line -> line instanceof Line.Fact fact && fact.name().equals(name))
        .toList();
  }

  @Test
  void aTicketWithoutMessageAndCopyHasTheTenOtherSections() {
    assertEquals(
        List.of(
            "Verdict",
            CHECKS,
            STEPS,
            "File",
            "Station",
            "Encoder",
            FINDINGS,
            "Environment",
            "Answer",
            "Notes"),
        MadeTicket.sections(MadeTicket.report(), TicketRequest.standard()).stream()
            .map(Section::title)
            .toList());
  }

  @Test
  void aFileWithoutFindingsAsksForNothing() {
    FindingsReport report = MadeTicket.report();
    assertEquals(
        List.of(new Line.Prose("Nothing: no finding points to the station.")),
        MadeTicket.section(CHECKS, report));
    assertEquals(
        List.of(new Line.Prose("No action is needed.")), MadeTicket.section(STEPS, report));
    assertEquals(List.of(new Line.Prose("None.")), MadeTicket.section(FINDINGS, report));
  }

  @Test
  void rulesWithTheSameCheckShareItAndTheWorstFindingComesFirst() {
    List<Line> checks =
        MadeTicket.section(
            CHECKS,
            MadeTicket.report(
                MadeTicket.finding("RP-TXN-061", Severity.ADVICE),
                MadeTicket.finding("RP-STR-004", Severity.LIKELY),
                MadeTicket.finding("RP-TXN-060", Severity.BLOCKING),
                MadeTicket.finding("RP-STR-005", Severity.ADVICE),
                MadeTicket.finding("RP-STR-004", Severity.LIKELY)));
    assertEquals(
        List.of(
            new Line.Step(
                1,
                "Check the counter that makes control numbers (1.009): it repeats after a restore,"
                    + " a reinstallation or on a second station.",
                "RP-TXN-060"),
            new Line.Step(
                2,
                "Compare LEN (field x.001) as the export writes it with the bytes of the record,"
                    + " from its first digit to FS.",
                "RP-STR-004, RP-STR-005"),
            new Line.Step(
                3,
                "Check clock, time zone and time synchronization of the station.",
                "RP-TXN-061")),
        checks);
  }

  @Test
  void aNoteAsksTheVendorForNothing() {
    assertEquals(
        List.of(new Line.Prose("Nothing: no finding points to the station.")),
        MadeTicket.section(
            CHECKS, MadeTicket.report(MadeTicket.finding("RP-TXN-060", Severity.NOTE))));
  }

  @Test
  void stepsAreNumberedAndNameWhatTheyAnswer() {
    Finding one = MadeTicket.finding("RP-TXN-990", Severity.BLOCKING);
    Finding other = MadeTicket.finding("RP-TXN-991", Severity.ADVICE);
    FindingsReport report =
        MadeTicket.with(
            MadeTicket.report(),
            List.of(one, other),
            List.of(
                new RecommendedAction("Recapture.", Severity.BLOCKING, List.of(one, other)),
                new RecommendedAction("Check\u202e.", Severity.ADVICE, List.of(other))));
    assertEquals(
        List.of(
            new Line.Step(1, "Recapture.", "BLOCKING, RP-TXN-990, RP-TXN-991, 2 places"),
            new Line.Step(2, "Check\\u202E.", "ADVICE, RP-TXN-991")),
        MadeTicket.section(STEPS, report));
  }

  @Test
  void aMessageIsExplainedByItsMeaningsAndTheFindingsOfItsRules() {
    assertEquals(
        List.of(
            fact("Message", "E0006"),
            new Line.Prose(
                "Two values contradict each other. Two values are valid by themselves but do not go"
                    + " together, such as a date of birth after the date printed. (published)"),
            new Line.Prose(
                "Findings in this file that can explain the message: RP-PTL-020, RP-TXN-001.")),
        message(
            "E0006",
            MadeTicket.finding("RP-PTL-020", Severity.LIKELY),
            MadeTicket.finding("RP-TXN-001", Severity.LIKELY),
            MadeTicket.finding("RP-IMG-001", Severity.LIKELY),
            MadeTicket.finding("RP-PTL-020", Severity.LIKELY)));
  }

  @Test
  void aMessageThatNoFindingExplainsIsSaidToBeSo() {
    List<Line> lines = message("E0006", MadeTicket.finding("RP-IMG-001", Severity.LIKELY));
    assertEquals(
        List.of(new Line.Prose("No finding in this file explains the message.")),
        lines.subList(2, lines.size()));
  }

  @Test
  void anUnknownMessageIsRepeatedAndSaidToBeUnknown() {
    assertEquals(
        List.of(
            fact("Message", "Come back later"),
            new Line.Prose("No explanation is known for this message.")),
        message("Come back later"));
  }

  @Test
  void threeMeaningsOfAMessageAreEnough() {
    List<Line> lines = message("A0001 A0004 A0008 A0009");
    assertEquals(
        List.of(
            "Deletion from the unsolved latent file is not authorized",
            "Type of transaction is not authorized",
            "Confirmation of an addition to the unsolved latent file is not authorized"),
        lines.subList(1, lines.size() - 1).stream()
            .map(line -> ((Line.Prose) line).text())
            .map(text -> text.substring(0, text.indexOf('.')))
            .toList());
  }

  @Test
  void aFileThatStatesNothingIsSaidToStateNothing() {
    List<Line> lines =
        MadeTicket.section("File", examined("1.001:29\u001d1.002:0500\u001d1.003:1\u001f0\u001c"));
    assertEquals(
        List.of(
            fact("Version", "0500"),
            fact("Type of transaction", "not stated"),
            fact("Control number", "not stated"),
            fact("Records", "1: 1 Type-1")),
        lines.subList(2, 6));
    assertEquals(
        List.of(fact("Completeness", "not checked: the file states no type of transaction")),
        facts("Completeness", lines));
  }

  @Test
  void aFileThatCannotBeReadIsNamedByItsSizeAndHash() {
    assertEquals(
        List.of(
            fact("SHA-256", "a".repeat(64)),
            fact("Size", "12,345 bytes"),
            fact("Depth", "structure; images were not opened"),
            fact("Dates checked as of", "2026-03-02")),
        MadeTicket.section("File", examined("?")));
  }

  @Test
  void aProfileThatRelaxesRulesAndTheFingerPositionCheckAreNamed() {
    FindingsReport report =
        MadeTicket.with(
            MadeTicket.report(),
            List.of(
                new RelaxedRule("RP-TXN-060", "BLOCKING", "NOTE"),
                new RelaxedRule("RP-TXN-060", "1", "2")));
    List<Line> lines = MadeTicket.section("File", report);
    assertEquals(
        List.of(
            fact(
                "Relaxed by the profile",
                "RP-TXN-060 Control number was used before: NOTE, published BLOCKING"),
            fact(
                "Relaxed by the profile",
                "RP-TXN-060 Control number was used before: 2, published 1")),
        facts("Relaxed by the profile", lines));
    assertEquals(
        List.of(
            fact(
                "Finger position check",
                "Positions could not be checked: no finger has both a rolled and a plain print.")),
        facts("Finger position check", lines));
  }

  @ParameterizedTest
  @CsvSource({
    "STRUCTURE, structure; images were not opened",
    "IMAGES, structure and images; ridges were not examined",
    "RIDGES, 'structure, images and ridges'"
  })
  void theDepthOfTheExaminationIsNamed(Depth depth, String words) {
    FindingsReport report = MadeTicket.with(MadeTicket.report(), depth, List.of());
    assertEquals(List.of(fact("Depth", words)), facts("Depth", MadeTicket.section("File", report)));
  }

  @Test
  void findingsStandUnderTheirRuleTheWorstRuleFirst() {
    List<Line> lines =
        MadeTicket.section(
            FINDINGS,
            MadeTicket.report(
                MadeTicket.finding("RP-TXN-992", Severity.ADVICE),
                MadeTicket.finding("RP-TXN-993", Severity.BLOCKING),
                MadeTicket.finding("RP-TXN-991", Severity.ADVICE),
                MadeTicket.finding("RP-TXN-992", Severity.ADVICE)));
    assertEquals(
        List.of(
            "BLOCKING RP-TXN-993",
            "place",
            "ADVICE RP-TXN-991",
            "place",
            "ADVICE RP-TXN-992",
            "place",
            "place"),
        lines.stream()
            .filter(line -> !(line instanceof Line.Prose))
            .map(
                line ->
                    line instanceof Line.Rule rule ? rule.severity() + " " + rule.id() : "place")
            .toList());
  }

  private static List<Line> places(int number) {
    Finding[] findings =
        IntStream.rangeClosed(1, number)
            .mapToObj(
                i ->
                    MadeTicket.finding(
                        "RP-TXN-990",
                        Severity.ADVICE,
                        MadeTicket.record(i + 2),
                        Observed.of("value " + i)))
            .toArray(Finding[]::new);
    return MadeTicket.section(FINDINGS, MadeTicket.report(findings));
  }

  @Test
  void aRuleIsFollowedByTwelvePlacesHowManyMoreThereAreAndItsSource() {
    Line source =
        new Line.Prose(
            "Source: ANSI/NIST-ITL 1-2011 Update 2015 (NIST Special Publication 500-290e3), Field"
                + " 1.009 (published).");
    List<Line> twelve =
        Stream.concat(
                Stream.of(new Line.Rule("ADVICE", "RP-TXN-990", "Title of RP-TXN-990")),
                IntStream.rangeClosed(1, 12)
                    .mapToObj(
                        i ->
                            new Line.Place(
                                "record " + (i + 2) + ", Type-14, IDC " + (i < 10 ? "0" : "") + i,
                                "value " + i,
                                "what RP-TXN-990 requires")))
            .map(Line.class::cast)
            .toList();
    assertEquals(Stream.concat(twelve.stream(), Stream.of(source)).toList(), places(12));
    assertEquals(
        Stream.concat(twelve.stream(), Stream.of(new Line.Prose("and 1 more place."), source))
            .toList(),
        places(13));
    assertEquals(new Line.Prose("and 2 more places."), places(14).get(13));
  }

  @Test
  void aRepeatedFindingNamesItsFurtherPlaces() {
    Finding finding =
        MadeTicket.finding(
            "RP-TXN-990", Severity.ADVICE, MadeTicket.record(3), Observed.of("value"));
    List<Line> lines =
        MadeTicket.section(
            FINDINGS,
            MadeTicket.report(finding.repeatedAt(List.of(finding.at(MadeTicket.record(5))))));
    assertEquals(
        new Line.Place(
            "record 3, Type-14, IDC 01 (places: 2: record 3; record 5)",
            "value",
            "what RP-TXN-990 requires"),
        lines.get(1));
  }

  @Test
  void aLongValueIsCutAndAHarmfulOneEscaped() {
    Finding finding =
        new Finding(
            MadeTicket.finding("RP-TXN-990", Severity.ADVICE).rule(),
            Severity.ADVICE,
            Location.file(),
            Observed.of("a\u001bb"),
            "c\u001b" + "d".repeat(600),
            "",
            "",
            MadeTicket.finding("RP-TXN-990", Severity.ADVICE).source(),
            List.of());
    assertEquals(
        new Line.Place(
            "the file as a whole",
            "a\\x1Bb",
            "c\\x1B" + "d".repeat(595) + " ... and 5 more characters"),
        MadeTicket.section(FINDINGS, MadeTicket.report(finding)).get(1));
  }
}
