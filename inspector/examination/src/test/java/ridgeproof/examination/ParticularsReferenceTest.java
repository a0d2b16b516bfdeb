package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.spec.rule.Severity;
import ridgeproof.testing.ReferenceFiles;

class ParticularsReferenceTest {

  /** The reference transactions hold a placeholder where the particulars go. */
  @TestFactory
  Stream<DynamicTest> aPlaceholderForParticularsIsOneFindingAndDoesNotBlock() {
    return ReferenceFiles.all().stream()
        .map(path -> path.getFileName().toString())
        .map(name -> DynamicTest.dynamicTest(name, () -> check(name)));
  }

  private static void check(String name) {
    FindingsReport report =
        SampleCard.examine(
            ReferenceFiles.read(name),
            ExaminationOptions.standard().withToday(SampleCard.TODAY).withDepth(Depth.STRUCTURE));
    List<Finding> particulars =
        report.findings().stream().filter(f -> f.rule().area().equals("PTL")).toList();
    assertEquals(List.of("RP-PTL-003"), particulars.stream().map(Finding::ruleId).toList(), name);
    assertEquals(
        List.of(),
        report.findings().stream()
            .filter(f -> f.severity() == Severity.BLOCKING)
            .filter(f -> List.of("STR", "COD", "TXN", "PTL").contains(f.rule().area()))
            .map(f -> f.ruleId() + " " + f.location().field() + " " + f.observed())
            .toList(),
        name);
  }
}
