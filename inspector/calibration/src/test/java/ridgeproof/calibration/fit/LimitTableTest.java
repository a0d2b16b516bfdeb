package ridgeproof.calibration.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ridgeproof.calibration.evaluation.DefectRules;
import ridgeproof.calibration.print.MadeUpPrints;
import ridgeproof.calibration.print.MeasureTable;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.ridges.quality.QualityMetric;
import ridgeproof.spec.limit.RidgeLimit;

class LimitTableTest {

  @Test
  void everyRowNamesAMeasureInItsOwnUnit() {
    assertFalse(LimitTable.inUse().rows().isEmpty());
  }

  @Test
  void everyRowHasOneLimit() {
    for (LimitRow row : LimitTable.inUse().rows()) {
      assertTrue(row.least().isPresent() != row.most().isPresent(), row.toString());
    }
  }

  @Test
  void aRowInAnotherUnitOrOfNoMeasureIsRefused() {
    RidgeLimit row = RidgeLimit.load().get(0);
    assertEquals(row.measure(), LimitRow.of(row).limit().measure());
    assertThrows(IllegalArgumentException.class, () -> LimitRow.of(of(row.measure(), "furlong")));
    assertThrows(IllegalArgumentException.class, () -> LimitRow.of(of("no-such", row.unit())));
  }

  private static RidgeLimit of(String measure, String unit) {
    OptionalDouble least = OptionalDouble.of(1);
    return new RidgeLimit(
        "RP-RDG-004",
        "dry",
        "rolled",
        measure,
        least,
        OptionalDouble.empty(),
        unit,
        RidgeLimit.load().get(0).source());
  }

  @Test
  void theTableInUseHasTheCasesOfThePlan() {
    Set<String> planned =
        LimitCriterion.plan().stream()
            .map(c -> c.rule() + "/" + c.name() + "/" + c.kind().key())
            .collect(Collectors.toSet());
    assertEquals(
        planned,
        LimitTable.inUse().rows().stream().map(LimitRow::group).collect(Collectors.toSet()));
  }

  @Test
  void everyDefectHasARuleThatNamesIt() {
    DefectRules rules = new DefectRules();
    for (CaptureDefect defect : CaptureDefect.values()) {
      for (Impression kind : Impression.values()) {
        boolean happens = defect.befalls(kind == Impression.ROLLED);
        assertEquals(happens, !rules.of(defect, kind).isEmpty(), defect + " " + kind);
      }
    }
  }

  @Test
  void everyMeasureIsFoundByItsKey() {
    for (QualityMetric measure : QualityMetric.values()) {
      assertEquals(measure, QualityMetric.ofKey(measure.key()).orElseThrow());
    }
  }

  @Test
  void measuresAreReadBackAsWritten() throws IOException {
    StringBuilder written = new StringBuilder();
    MeasureTable.write(MadeUpPrints.dryAndClean(3), written);
    StringBuilder again = new StringBuilder();
    MeasureTable.write(MeasureTable.read(new StringReader(written.toString())), again);
    assertEquals(written.toString(), again.toString());
  }
}
