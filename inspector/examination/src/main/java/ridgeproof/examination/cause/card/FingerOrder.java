package ridgeproof.examination.cause.card;

import java.util.ArrayList;
import java.util.List;
import ridgeproof.spec.layout.FingerPosition;

/** How the rolls stand in their boxes, seen from the plain prints of one image. */
enum FingerOrder {
  /** Each print is that of the roll of its own name. */
  OWN,
  /** The prints of the image stand in the opposite order. */
  REVERSED,
  /** The prints are those of the other hand, in the order in which that hand lies. */
  OTHER_HAND,
  /** Each print is that of the same finger of the other hand. */
  SAME_FINGER_OF_OTHER_HAND,
  /** Each print is in the box after its own. */
  NEXT_BOX,
  /** Each print is in the box before its own. */
  PREVIOUS_BOX;

  private static final int FINGERS = FingerPosition.values().length;
  private static final int HAND = FINGERS / 2;

  /** The rolls that prints with these names, from left to right, would match. */
  List<FingerPosition> rollsOf(List<FingerPosition> places) {
    List<FingerPosition> rolls = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      FingerPosition own = places.get(i);
      rolls.add(
          switch (this) {
            case OWN -> own;
            case REVERSED -> places.get(places.size() - 1 - i);
            case OTHER_HAND -> inSlapOrder(own);
            case SAME_FINGER_OF_OTHER_HAND -> shifted(own, HAND);
            case NEXT_BOX -> shifted(own, 1);
            case PREVIOUS_BOX -> shifted(own, FINGERS - 1);
          });
    }
    return rolls;
  }

  private static FingerPosition shifted(FingerPosition finger, int by) {
    return FingerPosition.values()[(finger.ordinal() + by) % FINGERS];
  }

  /** The finger of the other hand at the same place from the left. */
  private static FingerPosition inSlapOrder(FingerPosition finger) {
    int index = finger.isThumb() ? 0 : HAND - finger.indexOnHand();
    return FingerPosition.values()[(finger.hand() == FingerPosition.Hand.RIGHT ? HAND : 0) + index];
  }
}
