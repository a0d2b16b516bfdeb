package ridgeproof.examination.submission;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.spec.SubmissionProfile;

class InferredProfileTest {

  @Test
  void sixRolledFingersAreACardAndFewerASample() {
    assertEquals(Optional.of("rolled-card"), implied(1, 2, 3, 4, 5, 6));
    assertEquals(Optional.empty(), implied(1, 2, 3, 4, 5));
  }

  @Test
  void bothFlatHandsWithAThumbAreIdentificationFlats() {
    assertEquals(Optional.of("identification-flats"), implied(13, 14, 15));
    assertEquals(Optional.of("identification-flats"), implied(11, 13, 14));
    assertEquals(Optional.empty(), implied(13, 14));
    assertEquals(Optional.empty(), implied(13, 15));
  }

  @Test
  void nothingIsImpliedByNothing() {
    assertEquals(Optional.empty(), implied());
  }

  private static Optional<String> implied(int... positions) {
    // A type in no list: only what the file holds can tell what it is.
    SampleCard card = SampleCard.ofType("QQQ", positions);
    assertEquals(positions.length, IntStream.of(positions).distinct().count());
    return card.examine().profile().map(SubmissionProfile::name);
  }
}
