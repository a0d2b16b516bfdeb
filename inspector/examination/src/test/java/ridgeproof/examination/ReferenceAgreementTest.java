package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.finding.Finding;
import ridgeproof.spec.Severity;
import ridgeproof.testing.ReferenceFiles;

/** The reference transactions are published as conforming. */
class ReferenceAgreementTest {

  private static final List<Rule> WHOLE_TRANSACTION =
      List.of(
          new RecordLinkRule(),
          new CrossReferenceRule(),
          new HeaderResolutionRule(),
          new SegmentShapeRule(),
          new SegmentFingersRule(),
          new DeclaredFingerRule(),
          new QualityFieldsRule(),
          new FeatureCountRule(),
          new FeaturePlaceRule(),
          new FeatureFrameRule(),
          new FeatureFingerRule(),
          new PositionDescriptorRule(),
          new CaptureDateRule(),
          new PrintCompressionRule());

  @TestFactory
  Stream<DynamicTest> recordsOfReferenceTransactionsAgree() {
    return ReferenceFiles.all().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(file.getFileName().toString(), () -> recordsAgree(file)));
  }

  private static void recordsAgree(Path file) throws IOException {
    Set<String> ids = new TreeSet<>();
    WHOLE_TRANSACTION.forEach(rule -> ids.addAll(rule.ids()));
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
}
