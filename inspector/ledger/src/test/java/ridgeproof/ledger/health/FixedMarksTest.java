package ridgeproof.ledger.health;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FixedMarksTest {

  private static final int PLACES = 1000;
  private static final double RATE = 0.001;

  @Test
  void aMarkThatStaysIsFoundWithTheFirstPersonWhoHadIt() {
    FixedMarks marks = new FixedMarks(200);
    for (int person = 0; person < 200; person++) {
      marks.add(person, person >= 90 ? List.of(17) : List.of(), place -> true);
    }
    FixedMarks.Run run = marks.find(PLACES, RATE).get(0);
    assertEquals(17, run.place());
    assertEquals(90, run.first());
    assertEquals(199, run.last());
    assertEquals(110, run.seen());
    assertEquals(110, run.looked());
    assertTrue(run.probability() < 1e-20);
  }

  @Test
  void aMarkThatWasWipedOffEnds() {
    FixedMarks marks = new FixedMarks(200);
    for (int person = 0; person < 200; person++) {
      marks.add(person, person >= 40 && person < 120 ? List.of(17) : List.of(), place -> true);
    }
    FixedMarks.Run run = marks.find(PLACES, RATE).get(0);
    assertEquals(40, run.first());
    assertEquals(119, run.last());
  }

  @Test
  void peopleWhoCoverThePlaceTellNothingOfIt() {
    FixedMarks marks = new FixedMarks(200);
    for (int person = 0; person < 200; person++) {
      boolean covered = person % 2 == 0;
      marks.add(person, covered || person < 50 ? List.of() : List.of(17), place -> !covered);
    }
    FixedMarks.Run run = marks.find(PLACES, RATE).get(0);
    assertEquals(51, run.first());
    assertEquals(75, run.seen());
    assertEquals(75, run.looked());
  }

  /** Far more stains than a platen has, and every other one of them at a place by chance. */
  @Test
  void marksThatComeAndGoAreNeverFound() {
    Random random = new Random(3);
    int found = 0;
    for (int year = 0; year < 40; year++) {
      FixedMarks marks = new FixedMarks(300);
      for (int person = 0; person < 300; person++) {
        List<Integer> stained = new ArrayList<>();
        for (int place = 0; place < PLACES; place++) {
          if (random.nextInt(2) == 0) {
            stained.add(place);
          }
        }
        marks.add(person, stained, place -> true);
      }
      found += marks.find(PLACES, RATE).size();
    }
    assertEquals(0, found);
  }
}
