package ridgeproof.calibration.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.calibration.print.MeasuredPrint;
import ridgeproof.calibration.print.Prints;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.ridges.quality.RidgeMeasure;

class LimitFitTest {

  private static LimitTable fitted(List<MeasuredPrint> prints) {
    return new LimitFit(prints).fit(Prints.dryPlan(), "test");
  }

  @Test
  void theSamePrintsGiveTheSameLimits() throws IOException {
    StringBuilder first = new StringBuilder();
    StringBuilder second = new StringBuilder();
    fitted(Prints.dryAndClean(5)).write(first);
    fitted(Prints.dryAndClean(5)).write(second);
    assertEquals(first.toString(), second.toString());
  }

  @Test
  void aLimitLiesBetweenWhatIsCaughtAndWhatIsClean() {
    List<MeasuredPrint> prints = Prints.dryAndClean(6);
    LimitTable table = fitted(prints);
    double least = table.rows().get(0).least().orElseThrow();
    assertTrue(least > 0.5 && least < 0.7, "least " + least);
    assertEquals(0, new LimitFit(prints).falseAlarms(table));
  }

  @Test
  void whereDefectsLookCleanFalseAlarmsStayWithinTheBudget() {
    List<MeasuredPrint> prints = new ArrayList<>(Prints.dryAndClean(7));
    for (int card = 401; card < 800; card++) {
      prints.add(
          Prints.spoilt(
              card, CaptureDefect.TOO_DRY, 1, Map.of(RidgeMeasure.CLARITY, 0.7 + card / 9000.0)));
    }
    assertTrue(new LimitFit(prints).falseAlarms(fitted(prints)) <= LimitFit.BUDGET);
  }

  @Test
  void aLimitThatIsCrossedIsToldAndOneThatIsMetIsNot() {
    LimitTable table = fitted(Prints.dryAndClean(8));
    double least = table.rows().get(0).least().orElseThrow();
    assertEquals(
        Set.of("RP-RDG-004"),
        table.rulesAgainst(Prints.clean(1, Map.of(RidgeMeasure.CLARITY, least - 0.001))));
    assertEquals(
        Set.of(), table.rulesAgainst(Prints.clean(1, Map.of(RidgeMeasure.CLARITY, least))));
  }

  @Test
  void whatCannotBeMeasuredBreaksNothing() {
    LimitTable table = fitted(Prints.dryAndClean(9));
    assertEquals(Set.of(), table.rulesAgainst(Prints.clean(1, Map.of(RidgeMeasure.WIDTH, 20.0))));
  }

  @Test
  void aFingerWithoutPrintIsToldAsSuch() {
    assertEquals(
        Set.of(LimitTable.NO_RIDGES),
        fitted(Prints.dryAndClean(9)).rulesAgainst(Prints.clean(1, Map.of())));
  }

  @Test
  void aLimitIsWidenedUntilASoundRealPrintLiesInside() {
    LimitTable table = fitted(Prints.dryAndClean(10));
    MeasuredPrint real = Prints.clean(0, Map.of(RidgeMeasure.CLARITY, 0.51));
    LimitTable wide = RealEnvelope.widened(table, List.of(new RealEnvelope.Sound(real, Set.of())));
    assertEquals(Set.of(), wide.rulesAgainst(real));
    assertTrue(wide.rows().get(0).source().contains("widened"));
    LimitTable same =
        RealEnvelope.widened(table, List.of(new RealEnvelope.Sound(real, Set.of("RP-RDG-004"))));
    assertEquals(table, same);
  }
}
