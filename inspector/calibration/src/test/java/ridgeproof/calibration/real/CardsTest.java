package ridgeproof.calibration.real;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.calibration.real.CardTrial.Outcome;
import ridgeproof.calibration.real.CardTrial.Story;
import ridgeproof.examination.rules.ridges.MatchLimits;
import ridgeproof.ridges.matching.SequenceLimits;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.limit.MatchLikelihood;

/** Cards put together of prints of which only the similarities are known. */
class CardsTest {

  private static final SequenceLimits LIMITS = MatchLimits.usual(SpecTables.open());
  private static final int CARDS = 60;

  /** Ten fingers, four prints each. */
  private static PrintPool pool(double genuine, double spread, double other, long seed) {
    Random random = new Random(seed);
    int[] fingers = new int[40];
    int[] minutiae = new int[40];
    double[][] first = new double[40][40];
    for (int i = 0; i < 40; i++) {
      fingers[i] = i / 4;
      minutiae[i] = 40;
    }
    for (int i = 0; i < 40; i++) {
      for (int j = 0; j < 40; j++) {
        first[i][j] =
            fingers[i] == fingers[j]
                ? Math.max(0, genuine + spread * random.nextGaussian())
                : -other * Math.log(1 - random.nextDouble());
      }
    }
    return new PrintPool(fingers, minutiae, first, new double[40][40], new double[40][40]);
  }

  private static Outcome run(PrintPool pool, Story story) {
    return new CardTrial(List.of(pool), 1_000_001).run(story, CARDS, LIMITS);
  }

  @Test
  void clearPrintsAreConfirmedAndEveryDisorderNamed() {
    PrintPool pool = pool(120, 20, 2, 1);
    Outcome right = run(pool, Story.RIGHT);
    assertEquals(10 * CARDS, right.confirmed());
    assertEquals(0, right.falsely());
    for (Story story : List.of(Story.EXCHANGE, Story.ROTATION, Story.SHIFT, Story.HANDS)) {
      Outcome said = run(pool, story);
      assertEquals(CARDS, said.named(), story::name);
      assertEquals(CARDS, said.seen(), story::name);
      assertEquals(CARDS, said.spoken(), story::name);
      assertEquals(0, said.passed() + said.falsely(), story::name);
    }
    assertEquals(0, run(pool, Story.STRANGER).falsely());
  }

  @Test
  void ofPrintsThatSayNothingNothingIsSaid() {
    PrintPool pool = pool(2, 1, 2, 2);
    Outcome right = run(pool, Story.RIGHT);
    assertEquals(0, right.falsely());
    assertTrue(right.inconclusive() > 9 * CARDS, right.toString());
    assertEquals(0, run(pool, Story.EXCHANGE).named());
  }

  @Test
  void theSameSeedDrawsTheSameCards() {
    PrintPool pool = pool(25, 15, 4, 3);
    assertEquals(run(pool, Story.EXCHANGE), run(pool, Story.EXCHANGE));
  }

  @Test
  void fewerThanTenFingersMakeNoCard() {
    PrintPool pool = pool(100, 1, 2, 4);
    Arrays.fill(pool.fingers(), 0, 8, 0);
    assertThrows(IllegalArgumentException.class, () -> new CardTrial(List.of(pool), 1));
  }

  @Test
  void whatIsFittedRisesAndTellsOneFingerFromTwo() {
    List<MatchLikelihood> rows = LikelihoodFit.on(List.of(pool(60, 20, 4, 5)));
    for (int i = 1; i < rows.size(); i++) {
      assertTrue(rows.get(i).weight() >= rows.get(i - 1).weight(), rows.toString());
    }
    SequenceLimits fitted = MatchLimits.of(SpecTables.open(), rows);
    assertTrue(fitted.evidence().weight(3) < -0.5, rows.toString());
    assertTrue(fitted.evidence().weight(50) > 1, rows.toString());
    assertTrue(LikelihoodFit.csv(rows, "x").startsWith("similarity,weight,source,known\n0,-"));
  }

  @Test
  void theSectionLeadsAndReplacesAnOlderOne() {
    String document = "# Head\n\nwords\n\n## A\n\na\n";
    String once = LeadingSection.with(document, "## Real", "## Real\n\n1\n");
    assertEquals("# Head\n\nwords\n\n## Real\n\n1\n\n## A\n\na\n", once);
    assertEquals(
        "# Head\n\nwords\n\n## Real\n\n2\n\n## A\n\na\n",
        LeadingSection.with(once, "## Real", "## Real\n\n2\n"));
  }

  @Test
  void aReportWrittenAnewKeepsItsLeadingSection(@TempDir Path folder) throws IOException {
    Path report = folder.resolve("report.md");
    String made = "# Head\n\nnew\n\n## A\n\nb\n";
    assertEquals(made, LeadingSection.kept(report, "## Real", made));
    Files.writeString(report, "# Head\n\nold\n\n## Real\n\n1\n\n## A\n\na\n");
    assertEquals(
        "# Head\n\nnew\n\n## Real\n\n1\n\n## A\n\nb\n",
        LeadingSection.kept(report, "## Real", made));
  }
}
