package ridgeproof.calibration.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.calibration.print.MadeUpPrints;
import ridgeproof.calibration.print.MeasuredPrint;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.ridges.quality.QualityMetric;

class LimitFitTest {

  private static LimitTable fitted(List<MeasuredPrint> prints) {
    return new LimitFit(prints).fit(MadeUpPrints.dryPlan(), "test");
  }

  @Test
  void theSamePrintsGiveTheSameLimits() throws IOException {
    StringBuilder first = new StringBuilder();
    StringBuilder second = new StringBuilder();
    fitted(MadeUpPrints.dryAndClean(5)).write(first);
    fitted(MadeUpPrints.dryAndClean(5)).write(second);
    assertEquals(first.toString(), second.toString());
  }

  @Test
  void aLimitLiesBetweenWhatIsCaughtAndWhatIsClean() {
    List<MeasuredPrint> prints = MadeUpPrints.dryAndClean(6);
    LimitTable table = fitted(prints);
    double least = table.rows().get(0).least().orElseThrow();
    assertTrue(least > 0.5 && least < 0.7, "least " + least);
    assertEquals(0, new LimitFit(prints).falseAlarms(table));
  }

  @Test
  void whereDefectsLookCleanFalseAlarmsStayWithinTheBudget() {
    List<MeasuredPrint> prints = new ArrayList<>(MadeUpPrints.dryAndClean(7));
    for (int card = 401; card < 800; card++) {
      prints.add(
          MadeUpPrints.spoilt(
              card, CaptureDefect.TOO_DRY, 1, Map.of(QualityMetric.CLARITY, 0.7 + card / 9000.0)));
    }
    assertTrue(new LimitFit(prints).falseAlarms(fitted(prints)) <= LimitFit.BUDGET);
  }

  @Test
  void aLimitThatIsCrossedIsToldAndOneThatIsMetIsNot() {
    LimitTable table = fitted(MadeUpPrints.dryAndClean(8));
    double least = table.rows().get(0).least().orElseThrow();
    assertEquals(
        Set.of("RP-RDG-004"),
        table.rulesAgainst(MadeUpPrints.clean(1, Map.of(QualityMetric.CLARITY, least - 0.001))));
    assertEquals(
        Set.of(), table.rulesAgainst(MadeUpPrints.clean(1, Map.of(QualityMetric.CLARITY, least))));
  }

  @Test
  void whatCannotBeMeasuredBreaksNothing() {
    LimitTable table = fitted(MadeUpPrints.dryAndClean(9));
    assertEquals(
        Set.of(), table.rulesAgainst(MadeUpPrints.clean(1, Map.of(QualityMetric.WIDTH, 20.0))));
  }

  @Test
  void aFingerWithoutPrintIsToldAsSuch() {
    assertEquals(
        Set.of(LimitTable.NO_RIDGES),
        fitted(MadeUpPrints.dryAndClean(9)).rulesAgainst(MadeUpPrints.clean(1, Map.of())));
  }

  @Test
  void aLimitIsWidenedUntilASoundRealPrintLiesInside() {
    LimitTable table = fitted(MadeUpPrints.dryAndClean(10));
    MeasuredPrint real = MadeUpPrints.clean(0, Map.of(QualityMetric.CLARITY, 0.51));
    LimitTable wide =
        ReferenceTolerance.widened(table, List.of(new ReferenceTolerance.Sound(real, Set.of())));
    assertEquals(Set.of(), wide.rulesAgainst(real));
    assertTrue(wide.rows().get(0).source().contains("widened"));
    LimitTable same =
        ReferenceTolerance.widened(
            table, List.of(new ReferenceTolerance.Sound(real, Set.of("RP-RDG-004"))));
    assertEquals(table, same);
  }
}
