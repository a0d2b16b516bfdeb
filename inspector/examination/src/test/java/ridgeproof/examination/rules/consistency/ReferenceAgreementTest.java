package ridgeproof.examination.rules.consistency;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.SampleCard;
import ridgeproof.finding.Finding;
import ridgeproof.spec.rule.Severity;
import ridgeproof.testing.ReferenceFiles;

/** The reference transactions are published as conforming. */
class ReferenceAgreementTest {

  private static final Set<String> IN_OTHER_PACKAGES =
      Set.of("RP-TXN-016", "RP-TXN-017", "RP-TXN-018", "RP-IMG-012", "RP-IMG-023", "RP-IMG-024");

  @TestFactory
  Stream<DynamicTest> recordsOfReferenceTransactionsAgree() {
    return ReferenceFiles.all().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(file.getFileName().toString(), () -> recordsAgree(file)));
  }

  private static void recordsAgree(Path file) throws IOException {
    Set<String> ids = new TreeSet<>(IN_OTHER_PACKAGES);
    ConsistencyRules.all().forEach(rule -> ids.addAll(rule.ids()));
    List<Finding> findings = SampleCard.examine(Files.readAllBytes(file)).findings();
    assertEquals(
        List.of(), findings.stream().filter(finding -> ids.contains(finding.ruleId())).toList());
    assertEquals(
        List.of(),
        findings.stream()
            .filter(finding -> finding.severity() == Severity.BLOCKING)
            .filter(finding -> finding.rule().area().equals("TXN"))
            .toList());
  }

  @ParameterizedTest
  @CsvSource({
    "type-9-13-std.an2, 24992578095, 99992578095, RP-TXN-028",
    "type-9-13-std.an2, 9.010:48, 9.010:47, RP-TXN-027",
    "type-9-4-iafis.an2, 21951869281, 21954869281, RP-TXN-028",
    "type-9-4-iafis.an2, 9.014:08, 9.014:03, RP-TXN-030",
    "type-9-14-m1.an2, 9.136:48, 9.136:50, RP-TXN-027",
    "type-9-14-m1.an2, 9.131:197, 9.131:500, RP-TXN-031",
    "type-9-14-m1.an2, 9.140:432, 9.140:932, RP-TXN-028",
    "type-13-tip-eji-wsq.an2, 13.013:19, 13.013:08, RP-TXN-032",
    "type-13-tip-eji-wsq.an2, 13.006:344, 13.006:244, RP-IMG-001",
    "type-9-14-m1.an2, 14.005:1999, 14.005:2019, RP-TXN-033"
  })
  void oneChangedValueOfAReferenceTransactionIsReported(
      String file, String value, String changed, String rule) {
    String text = new String(ReferenceFiles.read(file), StandardCharsets.ISO_8859_1);
    byte[] bytes = text.replaceFirst(value, changed).getBytes(StandardCharsets.ISO_8859_1);
    assertTrue(
        SampleCard.examine(bytes).everyFinding().stream()
            .anyMatch(finding -> finding.ruleId().equals(rule)));
  }
}
