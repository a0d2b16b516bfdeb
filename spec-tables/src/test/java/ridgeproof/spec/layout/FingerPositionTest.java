package ridgeproof.spec.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FingerPositionTest {

  @Test
  void codesOneToTenNameTheFingersFromRightThumbToLeftLittle() {
    for (FingerPosition position : FingerPosition.values()) {
      assertEquals(Optional.of(position), FingerPosition.ofCode(position.code()));
      assertEquals(List.of(position), FingerPosition.shownBy(position.code()));
    }
    assertEquals(FingerPosition.Hand.RIGHT, FingerPosition.RIGHT_LITTLE.hand());
    assertEquals(FingerPosition.Hand.LEFT, FingerPosition.LEFT_THUMB.hand());
  }

  @Test
  void plainThumbsAreThumbs() {
    assertEquals(Optional.of(FingerPosition.RIGHT_THUMB), FingerPosition.ofCode(11));
    assertEquals(Optional.of(FingerPosition.LEFT_THUMB), FingerPosition.ofCode(12));
  }

  @Test
  void slapsShowSeveralFingersAndNameNone() {
    assertEquals(Optional.empty(), FingerPosition.ofCode(13));
    assertEquals(
        List.of(
            FingerPosition.LEFT_LITTLE,
            FingerPosition.LEFT_RING,
            FingerPosition.LEFT_MIDDLE,
            FingerPosition.LEFT_INDEX),
        FingerPosition.shownBy(14));
    assertEquals(List.of(), FingerPosition.shownBy(0));
    assertEquals(List.of(), FingerPosition.shownBy(99));
  }
}
