package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.finding.Finding;
import ridgeproof.spec.layout.FieldNumber;

class VersionFindingsTest {

  private static final FieldNumber VERSION = new FieldNumber(1, 2);

  private static FindingsReport stating(String version) {
    return SampleCard.examine(SampleCard.rolled().with(1, draft -> draft.with(2, version)).bytes());
  }

  private static List<String> rules(FindingsReport report) {
    return report.findings().stream()
        .filter(finding -> finding.location().field().filter(VERSION::equals).isPresent())
        .map(Finding::ruleId)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "0777", "77777", "V5", "0500 "})
  void aVersionThatIsUnknownIsReportedOnce(String version) {
    assertEquals(List.of("RP-STR-023"), rules(stating(version)));
  }

  @Test
  void aVersionThatIsMissingIsReportedOnce() {
    FindingsReport report =
        SampleCard.examine(SampleCard.rolled().with(1, draft -> draft.without(2)).bytes());
    assertEquals(List.of("RP-FLD-001"), rules(report));
  }

  @Test
  void aKnownVersionOfTooFewDigitsIsReportedAsTooShort() {
    assertEquals(List.of("RP-FLD-003"), rules(stating("500")));
    assertEquals(List.of(), rules(stating("0500")));
  }

  @Test
  void whatElseIsWrongOfAFileDoesNotHideAVersionThatIsTooShort() {
    byte[] card = SampleCard.rolled().with(1, draft -> draft.with(2, "500")).bytes();
    FindingsReport report = SampleCard.examine(Arrays.copyOf(card, card.length + 5));
    assertEquals(List.of("RP-FLD-003"), rules(report));
    assertTrue(report.everyFinding().stream().anyMatch(f -> f.ruleId().equals("RP-STR-013")));
  }

  @Test
  void aFieldOfAnotherVersionIsSaidToBeHeldAgainstTheVersionAssumed() {
    byte[] card = SampleCard.rolled().with(1, d -> d.with(2, "0").with(19, "X")).bytes();
    assertTrue(new String(card, StandardCharsets.ISO_8859_1).contains("1.019:X"));
    FindingsReport report = SampleCard.examine(card);
    assertTrue(
        report.everyFinding().stream()
            .anyMatch(finding -> finding.required().equals("a field in version 0502 (assumed)")));
  }
}
