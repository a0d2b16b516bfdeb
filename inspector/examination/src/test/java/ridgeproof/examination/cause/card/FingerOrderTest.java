package ridgeproof.examination.cause.card;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.layout.FingerPosition;

class FingerOrderTest {

  private static List<Integer> rolls(FingerOrder order, List<Integer> places) {
    List<FingerPosition> named =
        places.stream().map(code -> FingerPosition.values()[code - 1]).toList();
    return order.rollsOf(named).stream().map(FingerPosition::code).toList();
  }

  @Test
  void theRightSlapInEachOrder() {
    List<Integer> right = List.of(2, 3, 4, 5);
    assertEquals(List.of(2, 3, 4, 5), rolls(FingerOrder.OWN, right));
    assertEquals(List.of(5, 4, 3, 2), rolls(FingerOrder.REVERSED, right));
    assertEquals(List.of(10, 9, 8, 7), rolls(FingerOrder.OTHER_HAND, right));
    assertEquals(List.of(7, 8, 9, 10), rolls(FingerOrder.SAME_FINGER_OF_OTHER_HAND, right));
    assertEquals(List.of(3, 4, 5, 6), rolls(FingerOrder.NEXT_BOX, right));
    assertEquals(List.of(1, 2, 3, 4), rolls(FingerOrder.PREVIOUS_BOX, right));
  }

  @Test
  void theLeftSlapInEachOrder() {
    List<Integer> left = List.of(10, 9, 8, 7);
    assertEquals(List.of(2, 3, 4, 5), rolls(FingerOrder.OTHER_HAND, left));
    assertEquals(List.of(5, 4, 3, 2), rolls(FingerOrder.SAME_FINGER_OF_OTHER_HAND, left));
    assertEquals(List.of(1, 10, 9, 8), rolls(FingerOrder.NEXT_BOX, left));
  }

  @Test
  void theThumbsInTheOrderOfTheOtherHand() {
    assertEquals(List.of(6, 1), rolls(FingerOrder.OTHER_HAND, List.of(1, 6)));
  }
}
