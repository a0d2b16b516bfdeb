package ridgeproof.examination.cause.transport;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.finding.Finding;

/**
 * A file that was cut off, or holds another: what follows from it, and what would be there anyhow.
 */
class CutOffConsequencesTest {

  private static String text(SampleCard card) {
    return new String(card.bytes(), ISO_8859_1);
  }

  private static final String TAGGED = text(SampleCard.rolledTagged());

  /** With the sex, and the impression type of the left slap, not as coded. */
  private static final String FAULTY =
      text(
          SampleCard.rolledTagged()
              .with(2, draft -> draft.with(24, "Q"))
              .with(16, draft -> draft.with(3, "99")));

  private static List<String> explained(String file) {
    return findings(file, finding -> finding.causedBy().isPresent());
  }

  /** What no cause explains, the causes too. */
  private static List<String> left(String file) {
    return findings(file, finding -> finding.causedBy().isEmpty());
  }

  private static List<String> findings(String file, Predicate<Finding> which) {
    return SampleCard.examine(file.getBytes(ISO_8859_1)).everyFinding().stream()
        .filter(which)
        .map(CutOffConsequencesTest::name)
        .toList();
  }

  private static String name(Finding finding) {
    StringBuilder name = new StringBuilder(finding.ruleId());
    finding.location().record().ifPresent(record -> name.append(" record ").append(record));
    finding.location().field().ifPresent(field -> name.append(" ").append(field));
    finding.location().position().ifPresent(code -> name.append(" finger ").append(code));
    return name.toString();
  }

  private static String without(String file, int bytes) {
    return file.substring(0, file.length() - bytes);
  }

  @Test
  void withinTheImageOfTheLastRecordItsEndIsLost() {
    assertEquals(List.of("RP-STR-012 record 16"), explained(without(TAGGED, 1)));
    String binary = text(SampleCard.rolled());
    assertEquals(
        List.of(
            "RP-STR-012 record 16",
            "RP-IMG-011 record 16 finger 14",
            "RP-IMG-006 record 16 finger 14"),
        explained(without(binary, 1)));
    assertEquals(List.of("RP-STR-039"), left(without(binary, 1)));
  }

  @Test
  void aFieldThatIsCompleteSpeaksForItself() {
    assertEquals(
        List.of("RP-STR-039", "RP-COD-001 record 2 2.024", "RP-COD-001 record 16 14.003"),
        left(without(FAULTY, 780)).stream().filter(line -> !line.startsWith("RP-TXN")).toList());
  }

  @Test
  void withinTheFieldsOfTheLastRecordThoseBehindAreLostAndItsFingerIsNotMissing() {
    assertEquals(
        List.of(
            "RP-TXN-042 finger 14",
            "RP-STR-012 record 16",
            "RP-FLD-001 record 16 14.013",
            "RP-STR-009 record 16",
            "RP-IMG-013 record 16",
            "RP-FLD-001 record 16 14.999"),
        explained(without(TAGGED, 780)));
    assertEquals(List.of("RP-STR-039"), left(without(TAGGED, 780)));
  }

  @Test
  void withinTheBiographicDataNoImageIsMissing() {
    String binary = text(SampleCard.rolled());
    List<String> fields =
        List.of("022", "024", "025", "027", "029", "031", "032", "037", "038", "073");
    String expected =
        "RP-TXN-041, RP-STR-014 record 1 1.003, RP-TXN-001 record 1 1.011,"
            + " RP-TXN-002 record 1 1.012, RP-STR-012 record 2, RP-STR-009 record 2, "
            + fields.stream()
                .map(field -> "RP-PTL-001 record 2 2." + field)
                .collect(Collectors.joining(", "));
    assertEquals(expected, String.join(", ", explained(binary.substring(0, 300))));
    assertEquals(List.of("RP-STR-039"), left(binary.substring(0, 300)));
  }

  @Test
  void withinTheHeaderItsOwnFieldsAreLostToo() {
    assertEquals(
        List.of(
            "RP-TXN-007",
            "RP-STR-012 record 1",
            "RP-FLD-001 record 1 1.011",
            "RP-FLD-001 record 1 1.012",
            "RP-STR-014 record 1 1.003",
            "RP-FLD-001 record 1 1.004",
            "RP-FLD-001 record 1 1.005",
            "RP-FLD-001 record 1 1.007",
            "RP-FLD-001 record 1 1.008",
            "RP-FLD-001 record 1 1.009"),
        explained(text(SampleCard.rolled()).substring(0, 100)));
  }

  @Test
  void betweenTwoRecordsNothingShowsThatTheFileWasCut() {
    assertEquals(
        List.of("RP-TXN-042 finger 14", "RP-STR-014 record 1 1.003"),
        left(text(SampleCard.rolled()).substring(0, 10636)));
  }

  @Test
  void ofTwoTransactionsTheFaultsOfTheFirstStayAndThoseOfTheSecondDoNot() {
    assertEquals(
        List.of("RP-STR-040", "RP-COD-001 record 2 2.024", "RP-COD-001 record 16 14.003"),
        left(FAULTY + TAGGED).stream().filter(line -> !line.startsWith("RP-TXN")).toList());
    assertEquals(List.of("RP-STR-040"), left(TAGGED + FAULTY));
  }

  @Test
  void aSecondHeaderWithoutAListOfRecordsIsNoTransaction() {
    String bare = "1.001:21\u001D1.002:0500\u001C";
    assertEquals(List.of(), left(TAGGED + bare).stream().filter("RP-STR-040"::equals).toList());
  }
}
