package ridgeproof.ridges;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ridgeproof.ridges.segmentation.Segment;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.layout.FingerPosition;

class PrintAnalyzerTest {

  private static final Segment INDEX = segment(FingerPosition.RIGHT_INDEX);
  private static final Segment MIDDLE = segment(FingerPosition.RIGHT_MIDDLE);

  private static Segment segment(FingerPosition finger) {
    return new Segment(finger, Optional.empty(), 0, 0, List.of());
  }

  private static PrintAnalyzer.Seen seen(Segment... segments) {
    Slap slap = new Slap(List.of(segments), 4, Optional.of(FingerPosition.Hand.RIGHT));
    return new PrintAnalyzer.Seen(Map.of(), Optional.of(slap));
  }

  @Test
  void withoutAFingerTheOthersStayAsTheyWereSeen() {
    assertEquals(seen(MIDDLE), seen(INDEX, MIDDLE).without(finger -> finger == INDEX.position()));
  }

  @Test
  void withoutAnyOfItsFingersThereIsNoSlap() {
    assertEquals(
        new PrintAnalyzer.Seen(Map.of(), Optional.empty()),
        seen(INDEX, MIDDLE).without(finger -> true));
  }
}
