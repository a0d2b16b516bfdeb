package ridgeproof.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ridgeproof.report.PilotCard;
import ridgeproof.report.page.HandDiagram.Part;
import ridgeproof.report.page.ReportModel.PositionRow;

/** The two hands: which prints they show, in words, and where each part is drawn. */
class HandDiagramTest {

  private static List<PositionRow> rows(PilotCard card) {
    return new PositionStates(MadeCardReport.of(card)).rows();
  }

  private static List<HandDiagram> hands(PilotCard card) {
    return HandDiagram.of(rows(card));
  }

  private static HandDiagram left() {
    return hands(PilotCard.ascii()).get(0);
  }

  private static HandDiagram right() {
    return hands(PilotCard.ascii()).get(1);
  }

  /** Nothing there, but for one position. */
  private static List<PositionRow> only(int code, PositionState state) {
    List<PositionRow> rows = new ArrayList<>();
    for (PositionRow row : rows(PilotCard.ascii())) {
      rows.add(as(row, row.code() == code ? state : PositionState.NOT_ASKED));
    }
    return rows;
  }

  private static PositionRow as(PositionRow row, PositionState state) {
    List<PositionRow> fingers =
        row.fingers().stream().map(finger -> as(finger, PositionState.NOT_ASKED)).toList();
    return new PositionRow(row.code(), row.name(), state, "", Optional.empty(), fingers);
  }

  @Test
  void aCardIsToldFingerByFingerForWhoDoesNotSeeTheDrawing() {
    List<HandDiagram> hands = hands(PilotCard.ascii().without(9).without(13));
    assertEquals(
        List.of("left-hand left hand", "right-hand right hand"),
        hands.stream().map(hand -> hand.id() + " " + hand.name()).toList());
    assertEquals(
        "left thumb: present; left index finger: present; left middle finger: present; "
            + "left ring finger: missing; left little finger: present; "
            + "left index finger (slap): present; left middle finger (slap): present; "
            + "left ring finger (slap): present; left little finger (slap): present; "
            + "plain left thumb: present.",
        hands.get(0).inWords());
    assertEquals(
        "right thumb: present; right index finger: present; right middle finger: present; "
            + "right ring finger: present; right little finger: present; "
            + "right index finger (slap): missing; right middle finger (slap): missing; "
            + "right ring finger (slap): missing; right little finger (slap): missing; "
            + "plain right thumb: present.",
        hands.get(1).inWords());
    assertTrue(hands.get(0).rolls());
    assertTrue(hands.get(1).rolls());
  }

  @Test
  void theFingersShowTheFlatsWhereNoRollIsThereOrAskedFor() {
    List<HandDiagram> hands = hands(PilotCard.ascii().inOrder(List.of(13, 14, 15)));
    assertEquals(
        "plain left thumb: present; left index finger (slap): present; "
            + "left middle finger (slap): present; left ring finger (slap): present; "
            + "left little finger (slap): present.",
        hands.get(0).inWords());
    assertEquals(
        "plain right thumb: present; right index finger (slap): present; "
            + "right middle finger (slap): present; right ring finger (slap): present; "
            + "right little finger (slap): present.",
        hands.get(1).inWords());
    assertFalse(hands.get(0).rolls());
    assertFalse(hands.get(1).rolls());
  }

  @Test
  void anAnnotatedFingerOfFlatsDoesNotMakeThemACardOfRolls() {
    HandDiagram right =
        hands(PilotCard.ascii().inOrder(List.of(13, 14, 15)).particular(84, "3\u001fXX")).get(1);
    assertEquals(
        "plain right thumb: present; right index finger (slap): present; "
            + "right middle finger (slap): annotated as missing; "
            + "right ring finger (slap): present; right little finger (slap): present.",
        right.inWords());
  }

  @Test
  void oneRollIsEnoughForTheFingersToShowRolls() {
    assertTrue(HandDiagram.of(only(10, PositionState.MISSING)).get(0).rolls());
    assertFalse(HandDiagram.of(only(11, PositionState.MISSING)).get(0).rolls());
    assertFalse(HandDiagram.of(only(14, PositionState.PRESENT)).get(0).rolls());
  }

  @Test
  void theLastPositionOfTheCardIsReasonEnoughToDrawHands() {
    assertEquals(2, HandDiagram.of(only(14, PositionState.DOUBTFUL)).size());
    assertEquals(List.of(), HandDiagram.of(only(0, PositionState.NOT_ASKED)));
  }

  @Test
  void oneFingerOfASlapIsReasonEnoughToDrawHands() {
    List<PositionRow> rows = only(0, PositionState.NOT_ASKED);
    PositionRow slap = rows.get(13);
    List<PositionRow> fingers = new ArrayList<>(slap.fingers());
    fingers.set(3, as(fingers.get(3), PositionState.ACCOUNTED));
    rows.set(
        13,
        new PositionRow(14, slap.name(), PositionState.NOT_ASKED, "", Optional.empty(), fingers));
    assertEquals(2, HandDiagram.of(rows).size());
  }

  @Test
  void eachPartOfTheRightHandHasItsPlace() {
    assertEquals(
        List.of(
            "1 at 32 129, 40 x 86, turned -36; number 44 167, mark 62 186",
            "2 at 89 28, 39 x 112, turned -9; number 106 77, mark 111 101",
            "3 at 138 8, 39 x 124, turned 0; number 157 63, mark 157 87",
            "4 at 186 25, 39 x 114, turned 7; number 207 75, mark 203 99",
            "5 at 233 66, 35 x 92, turned 15; number 253 105, mark 246 128",
            "2 at 111 159, 34 x 54, turned 0; number 128 179, mark 128 198",
            "3 at 147 159, 34 x 54, turned 0; number 164 179, mark 164 198",
            "4 at 183 159, 34 x 54, turned 0; number 200 179, mark 200 198",
            "5 at 219 159, 34 x 54, turned 0; number 236 179, mark 236 198",
            "11 at 114 223, 74 x 34, turned 0; number 138 246, mark 166 240"),
        right().parts().stream().map(HandDiagramTest::place).toList());
    assertEquals("M86 206 Q104 262 140 272 L220 272 Q252 250 258 166", right().outline());
  }

  private static String place(Part part) {
    return part.row().code()
        + (" at " + part.left() + " " + part.top())
        + (", " + part.width() + " x " + part.height() + ", turned " + part.slope())
        + ("; number " + part.numberX() + " " + part.numberY())
        + (", mark " + part.markX() + " " + part.markY());
  }

  @Test
  void theLeftHandMirrorsTheRight() {
    List<Part> mirrored = left().parts();
    List<Part> parts = right().parts();
    assertEquals(10, parts.size());
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      Part other = mirrored.get(i);
      assertEquals(300, part.x() + other.x());
      assertEquals(-part.slope(), other.slope());
      assertEquals(part.top(), other.top());
      assertEquals(part.numberY(), other.numberY());
      assertEquals(part.markY(), other.markY());
      if (part.upright()) {
        assertEquals(300, part.numberX() + other.numberX());
        assertEquals(300, part.markX() + other.markX());
      } else {
        // The mark of a lying print is right of its number on both hands.
        assertEquals(part.numberX() - part.left(), other.numberX() - other.left());
        assertEquals(part.markX() - part.left(), other.markX() - other.left());
      }
    }
    assertEquals("M214 206 Q196 262 160 272 L80 272 Q48 250 42 166", left().outline());
  }

  @Test
  void fingersAreRoundAtTheTipAndTheLyingThumbAtItsSides() {
    List<Part> parts = right().parts();
    assertEquals(
        List.of(17, 17, 17, 17, 17, 17, 17, 17, 17, 17), parts.stream().map(Part::radius).toList());
    assertEquals(10, new Part(parts.get(0).row(), 0, 0, 20, 90, 0).radius());
    assertEquals(9, new Part(parts.get(0).row(), 0, 0, 90, 18, 0).radius());
    assertTrue(parts.stream().limit(9).allMatch(Part::upright));
    assertFalse(parts.get(9).upright());
  }

  @Test
  void aTurnedPartTakesItsNumberAndItsMarkAlong() {
    PositionRow row = right().parts().get(0).row();
    Part quarter = new Part(row, 100, 100, 40, 90, 90);
    assertEquals("1 at 80 55, 40 x 90, turned 90; number 113 106, mark 83 100", place(quarter));
    Part half = new Part(row, 100, 100, 40, 90, 180);
    assertEquals("1 at 80 55, 40 x 90, turned 180; number 100 119, mark 100 83", place(half));
  }

  @Test
  void aShortPartHasItsMarkNearer() {
    PositionRow row = right().parts().get(0).row();
    assertEquals(112, new Part(row, 100, 100, 30, 59, 0).markY());
    assertEquals(117, new Part(row, 100, 100, 30, 60, 0).markY());
  }
}
