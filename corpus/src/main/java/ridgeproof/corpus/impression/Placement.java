package ridgeproof.corpus.impression;

import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.corpus.finger.TrigTables;

/**
 * Where each image pixel lies on the skin of one finger.
 *
 * <p>The hand is turned and shifted as a whole, each finger stands at its own place in the hand,
 * and the skin is drawn along: held where it is pressed firmly, following the motion of the finger
 * around that region, after Cappelli, Maio and Maltoni, "Modelling plastic distortion in
 * fingerprint images", ICAPR 2001 (from memory).
 */
final class Placement {

  private final double scale;
  private final double originX;
  private final double originY;
  private final double cos;
  private final double sin;
  private final SkinContact contact;
  private final double holdX;
  private final double holdY;
  private final double twist;
  private final double pullX;
  private final double pullY;
  private final double stretch;
  private final double shear;
  private final double jumpX;
  private final double jumpY;
  private final boolean lifted;

  /** Turn and shift of the whole hand: frame pixels at 500 ppi around the middle of the frame. */
  record Pose(double scale, double middleX, double middleY, double degrees, double x, double y) {

    static Pose of(CaptureParameters c, ImpressionSettings settings, FrameSize frame) {
      return new Pose(
          settings.ppi() / 500.0 * c.scaleError,
          frame.width() / 2.0,
          frame.height() / 2.0,
          c.rotationDegrees,
          c.shiftX + c.frameShiftX * frame.width() * 500 / settings.ppi(),
          c.shiftY + c.frameShiftY * frame.height() * 500 / settings.ppi());
    }
  }

  /**
   * The place of a finger in the hand, before the hand is turned.
   *
   * @param x of the middle of its contact area, pixels at 500 ppi from the middle of the hand
   * @param degrees clockwise
   */
  record Anchor(double x, double y, double degrees) {}

  Placement(Pose pose, Anchor anchor, SkinContact contact, CaptureParameters c, SeededRandom dice) {
    this.contact = contact;
    this.scale = pose.scale();
    double hand = StrictMath.toRadians(pose.degrees());
    double handCos = StrictMath.cos(hand);
    double handSin = StrictMath.sin(hand);
    this.originX =
        pose.middleX() + scale * (pose.x() + handCos * anchor.x() - handSin * anchor.y());
    this.originY =
        pose.middleY() + scale * (pose.y() + handSin * anchor.x() + handCos * anchor.y());
    double turn = StrictMath.toRadians(pose.degrees() + anchor.degrees());
    this.cos = StrictMath.cos(turn);
    this.sin = StrictMath.sin(turn);
    this.holdX = contact.centerX + dice.around(0, 0.12) * contact.halfWidth;
    this.holdY = contact.centerY + dice.around(0, 0.12) * contact.halfHeight;
    this.twist = c.distortion * dice.around(0, 0.09);
    this.pullX = c.distortion * dice.around(0, 13);
    this.pullY = c.distortion * dice.around(0, 13);
    this.stretch = 1 + c.distortion * dice.around(0, 0.02);
    this.shear = c.shear;
    this.jumpX = c.liftJumpXPx;
    this.jumpY = c.liftJumpYPx;
    this.lifted = c.liftGapPx > 0;
  }

  double degrees() {
    return StrictMath.toDegrees(StrictMath.atan2(sin, cos));
  }

  /** Writes the place on the skin that an image pixel shows. */
  void toSkin(double imageX, double imageY, double[] skin) {
    double dx = (imageX - originX) / scale;
    double dy = (imageY - originY) / scale;
    double x = contact.centerX + stretch * (cos * dx + sin * dy);
    double y = contact.centerY + (cos * dy - sin * dx) / stretch;
    double offX = x - holdX;
    double offY = y - holdY;
    double spreadX = offX / contact.halfWidth;
    double spreadY = offY / contact.halfHeight;
    double reach = (Math.sqrt(spreadX * spreadX + spreadY * spreadY) - 0.3) / 0.9;
    double follow =
        reach <= 0 ? 0 : reach >= 1 ? 1 : 0.5 - 0.5 * TrigTables.cos((float) (Math.PI * reach));
    skin[0] = x + follow * (pullX - twist * offY) + shear * offY;
    skin[1] = y + follow * (pullY + twist * offX);
    if (lifted && skin[0] > contact.liftX()) {
      skin[0] += jumpX;
      skin[1] += jumpY;
    }
  }

  /**
   * Writes the image pixel that shows a place on the skin.
   *
   * @return false when no pixel does, as where the finger was lifted
   */
  boolean toImage(double skinX, double skinY, double[] image) {
    double[] skin = new double[2];
    image[0] = originX;
    image[1] = originY;
    for (int step = 0; step < 12; step++) {
      toSkin(image[0], image[1], skin);
      double missX = skinX - skin[0];
      double missY = skinY - skin[1];
      if (missX * missX + missY * missY < 0.01) {
        return true;
      }
      image[0] += scale * (cos * missX - sin * missY);
      image[1] += scale * (sin * missX + cos * missY);
    }
    return false;
  }
}
