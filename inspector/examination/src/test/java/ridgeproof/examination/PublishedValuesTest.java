package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.finding.Finding;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.writer.RecordDraft;

/**
 * Values that published lists have and the tables once refused, and values that no list has and the
 * tables once let pass.
 */
class PublishedValuesTest {

  private static final int HEADER = 1;
  private static final int PARTICULARS = 2;

  /** Items are divided by a bar, repetitions by a semicolon. */
  private static List<List<String>> subfields(String value) {
    return Stream.of(value.split(";")).map(part -> Arrays.asList(part.split("\\|", -1))).toList();
  }

  /** The findings at a field of the given value; its record may lack all else. */
  private static List<Finding> at(String version, String field, String value) {
    FieldNumber number = FieldNumber.parse(field);
    SampleCard card = SampleCard.rolledTagged().with(HEADER, header -> header.with(2, version));
    if (number.recordType() == PARTICULARS) {
      card = card.with(PARTICULARS, draft -> draft.with(number.field(), subfields(value)));
    } else {
      card =
          card.plus(
              RecordDraft.tagged(
                      number.recordType(),
                      List.of(
                          SampleCard.text(number.recordType(), 1, ""),
                          SampleCard.text(number.recordType(), 2, "77")))
                  .with(number.field(), subfields(value)));
    }
    return card.examine().unexplained().stream()
        .filter(finding -> finding.location().field().filter(number::equals).isPresent())
        .filter(finding -> number.recordType() == PARTICULARS || isIdc77(finding))
        .filter(finding -> finding.ruleId().matches("RP-(FLD|COD)-.*|RP-PTL-0[1-4].*"))
        .filter(finding -> finding.severity().compareTo(Severity.NOTE) < 0)
        .toList();
  }

  private static boolean isIdc77(Finding finding) {
    return finding.location().idc().orElse(-1) == 77;
  }

  @ParameterizedTest(name = "{0}: {1} {2}")
  @CsvSource({
    "0500, 17.030, ASSISTED",
    "0500, 17.031, 20",
    "0500, 17.032, 7",
    "0500, 17.046, D|1|3",
    "0500, 10.046, D|1|3",
    "0500, 14.046, D|2|1",
    "0500, 10.042, PIERCING",
    "0502, 10.042, BIRTHMARK",
    "0502, 10.042, IMPLANT",
    "0502, 10.042, ZABIBA",
    "0500, 10.042, TATTOO|HUMAN|MBPART",
    "0500, 10.042, TATTOO|HUMAN|FBPART",
    "0500, 10.042, TATTOO|HUMAN|ABBPART",
    "0500, 10.042, TATTOO|SYMBOL|NATION",
    "0500, 10.042, TATTOO|SYMBOL|POLITIC",
    "0500, 10.042, TATTOO|SYMBOL|PROFESS",
    "0500, 10.042, TATTOO|HUMAN|SKULL",
    "0501, 20.019, 00:00:01.000|00:00:02.000",
    "0501, 21.019, 00:00:01.000|00:00:02.000",
    "0500, 9.311, 20|B64",
    "0500, 9.313, 20|UNC",
    "0500, 9.342, 1|2|3|4|PDC00",
    "0500, 9.342, 1|2|3|4|WC",
    "0502, 14.013, 51",
    "0502, 14.013, 54",
    "0500, 2.084, 1|XX;2|XX;3|XX;4|XX;5|XX;6|XX;7|XX;8|XX;9|XX;10|XX;16|XX",
    "0500, 10.028, STR",
    "0502, 10.003, HEAD",
    "0500, 14.998, ||||||||HELM",
    "0502, 20.014, MS",
    "0500, 10.023, ANALOG VIDEO",
    "0500, 10.023, OTHER",
    "0500, 10.023, TYPE20",
    "0500, 2.021, PU;NU",
    "0500, 2.021, RF;UK;BL;UN;LX;RH;RV",
    "0500, 2.010, A1|B2",
    "0500, 2.017, AN-12345;SS-12345;FN-12345;IO-12345",
    "0500, 2.026, TAT L ARM;SC FHD",
    "0502, 14.901, 22",
    "0501, 15.003, 28",
    "0500, 17.011, PNG",
    "0500, 2.2065, F",
    "0500, 2.2040, 12",
  })
  void whatAListHasIsLetPass(String version, String field, String value) {
    assertEquals(List.of(), at(version, field, value));
  }

  @ParameterizedTest(name = "{0}: {1} {2}")
  @CsvSource({
    "0500, 17.031, ASSISTED",
    "0500, 17.032, 20",
    "0500, 17.030, 20",
    "0500, 17.046, D|3|1",
    "0500, 10.046, D|3|1",
    "0500, 14.046, D|3|1",
    "0500, 10.042, TATTOO|HUMAN|MBPARTS",
    "0500, 10.042, TATTOO|SYMBOL|NATIONAL",
    "0500, 10.042, TATTOO|SYMBOL|POLITICAL",
    "0500, 10.042, TATTOO|SYMBOL|PROFESSION",
    "0501, 20.019, 1|00:00:01.000|00:00:02.000",
    "0500, 9.311, 20|RLE",
    "0500, 9.313, 20|RLE",
    "0500, 9.314, Q",
    "0500, 9.315, Q",
    "0500, 9.342, 1|2|3|4|PDC99",
    "0500, 9.352, QQQ",
    "0500, 9.354, QQQ",
    "0500, 9.355, 9Z",
    "0500, 9.356, 99",
    "0500, 9.357, QQQ",
    "0500, 9.361, 1|Q",
    "0500, 10.018, Q|E|Mild",
    "0500, 10.019, Q",
    "0500, 10.026, QQQ",
    "0500, 10.033, nose|3|1|1|2|2|3|3",
    "0500, 10.040, ZZZ QQQ",
    "0500, 10.044, QQQ",
    "0500, 17.028, QQ",
    "0502, 14.901, 99",
    "0502, 15.003, 0",
    "0502, 15.003, 12",
    "0502, 15.003, 30",
    "0500, 17.011, WSQ20",
    "0500, 14.998, ||||||||HEL",
    "0500, 2.026, TAT ZZZ",
    "0500, 2.026, ZZZ QQQ",
    "0500, 2.043, Q",
    "0500, 2.053, 9",
    "0500, 2.059, Q",
    "0500, 2.063, Q",
    "0500, 2.2065, QQQ",
    "0500, 2.2040, 99",
  })
  void whatNoListHasIsReported(String version, String field, String value) {
    List<Finding> findings = at(version, field, value);
    assertFalse(findings.isEmpty(), "nothing is said of " + field + " " + value);
    assertTrue(
        findings.stream().anyMatch(f -> f.severity().compareTo(Severity.ADVICE) < 0),
        findings.toString());
  }

  @ParameterizedTest(name = "{0}: {1} {2}")
  @CsvSource({
    "0500, 14.018, 1|SR",
    "0500, 14.013, 51",
    "0500, 10.042, BIRTHMARK",
  })
  void aCodeOfALaterEditionIsAdvice(String version, String field, String value) {
    List<Finding> findings = at(version, field, value);
    assertEquals(
        List.of("RP-COD-002 ADVICE"),
        findings.stream().map(f -> f.ruleId() + " " + f.severity()).toList());
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({"2.025, H", "2.025, P", "2.024, U", "2.032, BLD"})
  void aCodeThatOnlySomeListsHaveIsNotBlocking(String field, String value) {
    List<Finding> findings = at("0500", field, value);
    assertEquals(
        List.of("RP-COD-003 LIKELY"),
        findings.stream().map(f -> f.ruleId() + " " + f.severity()).toList());
  }

  @ParameterizedTest(name = "{0} without {1}")
  @CsvSource({"CAR, 38", "TPIS, 73", "LFS, 73", "LFIS, 73", "LFFS, 73", "LPNQ, 73"})
  void aFieldThatTheSampleLeavesOutIsNotAskedFor(String type, int field) {
    assertEquals(List.of(), missing(type, field));
  }

  @ParameterizedTest(name = "{0} without {1}")
  @CsvSource({"AMN, 18", "DEK, 18", "DEU, 18", "MPR, 18", "MPR, 22", "MAP, 37"})
  void aFieldThatTheSampleHasIsAskedFor(String type, int field) {
    assertEquals(List.of("RP-PTL-001"), missing(type, field));
  }

  private static List<String> missing(String type, int field) {
    return SampleCard.rolled()
        .with(HEADER, header -> header.with(4, type))
        .with(PARTICULARS, draft -> draft.without(field))
        .examine()
        .findings()
        .stream()
        .filter(f -> f.location().field().filter(n -> n.field() == field).isPresent())
        .filter(f -> f.location().recordType().orElse(0) == PARTICULARS)
        .map(Finding::ruleId)
        .toList();
  }

  @Test
  void anAmnesiaSubmissionWithoutParticularsIsNotReady() {
    SampleCard card =
        SampleCard.rolled()
            .with(HEADER, header -> header.with(4, "AMN"))
            .with(PARTICULARS, draft -> draft.without(5).without(18).without(22).without(24))
            .with(PARTICULARS, draft -> draft.without(25).without(27).without(29).without(31));
    assertNotEquals(Verdict.READY, card.examine().verdict());
  }

  @Test
  void theFiveItemsOfACourtSegmentAreKnown() {
    List<Finding> findings = at("0500", "2.051", "20200101|SMUGGLING|FINE|CONVICTED|1");
    assertEquals(
        List.of(), findings.stream().filter(f -> f.ruleId().equals("RP-FLD-012")).toList());
  }
}
