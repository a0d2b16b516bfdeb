package ridgeproof.corpus.impression;

import java.util.List;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.spec.layout.FingerPosition;

/** Both thumbs laid down together, the left one on the left. */
public final class TwoThumbs {

  private TwoThumbs() {}

  /**
   * Lays two thumbs side by side, usually in an image of 1000 x 1000 pixels at 500 ppi.
   *
   * @throws IllegalArgumentException when a finger is not the thumb asked for
   */
  public static Impression of(MasterFinger left, MasterFinger right, ImpressionSettings settings) {
    if (left.digit() != FingerPosition.LEFT_THUMB || right.digit() != FingerPosition.RIGHT_THUMB) {
      throw new IllegalArgumentException(left.digit() + " and " + right.digit());
    }
    SeededRandom dice = new SeededRandom(settings.seed(), 14);
    double apart = dice.between(40, 75);
    double half = SkinContact.Manner.PLAIN.halfWidth;
    return Impression.take(
        SkinContact.Manner.PLAIN,
        List.of(left, right),
        List.of(
            new Placement.Anchor(
                -half * left.anatomy().widthPx() - apart / 2,
                dice.around(0, 18),
                dice.between(0, 9)),
            new Placement.Anchor(
                half * right.anatomy().widthPx() + apart / 2,
                dice.around(0, 18),
                -dice.between(0, 9))),
        settings,
        FrameSize.TWO_THUMBS);
  }
}
