package ridgeproof.corpus.impression;

import java.util.ArrayList;
import java.util.List;
import ridgeproof.corpus.finger.Digit;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.spec.layout.FingerPosition.Hand;

/** The four fingers of a hand, without the thumb, laid down together. */
public final class SlapComposer {

  private SlapComposer() {}

  /**
   * Lays the fingers side by side with the lengths and the spread of a natural hand, usually in an
   * image of 1600 x 1500 pixels at 500 ppi. A finger that is not in the list is missing from the
   * hand: its place stays empty.
   *
   * @throws IllegalArgumentException when the list holds none of the hand's four fingers, or
   *     another
   */
  public static Impression fourFingers(
      List<MasterFinger> fingers, Hand hand, ImpressionSettings settings) {
    List<FingerPosition> order = hand.slapOrder();
    for (MasterFinger finger : fingers) {
      if (!order.contains(finger.digit())) {
        throw new IllegalArgumentException(finger.digit() + " has no place in a slap of " + hand);
      }
    }
    if (fingers.isEmpty()) {
      throw new IllegalArgumentException("a slap without fingers");
    }
    SeededRandom dice = new SeededRandom(settings.seed(), 13);
    double build = fingers.get(0).anatomy().widthPx() / (double) widthOf(fingers.get(0).digit());
    double spread = dice.between(0.4, 1.3);
    double gap = dice.between(14, 34);
    double middle = (order.size() - 1) / 2.0;
    double cursor = 0;
    List<MasterFinger> present = new ArrayList<>();
    List<Placement.Anchor> loose = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      FingerPosition digit = order.get(i);
      double half = SkinContact.Manner.PLAIN.halfWidth * widthOf(digit) * build;
      double length = Digit.of(digit).lengthPx * build;
      double down = Digit.of(digit).tipDropPx * build * dice.around(1, 0.08) + length / 2;
      double degrees = (i - middle) * 2.2 * spread + dice.around(0, 0.8);
      cursor += half;
      for (MasterFinger finger : fingers) {
        if (finger.digit() == digit) {
          present.add(finger);
          loose.add(new Placement.Anchor(cursor, down, degrees));
        }
      }
      cursor += half + gap * dice.between(0.7, 1.3) + 9 * spread;
    }
    return Impression.take(
        SkinContact.Manner.PLAIN,
        present,
        centered(loose, cursor / 2, 430 * build),
        settings,
        FrameSize.FOUR_FINGERS);
  }

  private static int widthOf(FingerPosition digit) {
    return Digit.of(digit).widthPx;
  }

  private static List<Placement.Anchor> centered(
      List<Placement.Anchor> loose, double middleX, double middleY) {
    return loose.stream()
        .map(a -> new Placement.Anchor(a.x() - middleX, a.y() - middleY, a.degrees()))
        .toList();
  }
}
