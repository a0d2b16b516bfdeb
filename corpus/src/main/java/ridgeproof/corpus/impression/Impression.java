package ridgeproof.corpus.impression;

import java.util.ArrayList;
import java.util.List;
import ridgeproof.corpus.finger.GroundTruth;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.corpus.finger.TrueMinutia;
import ridgeproof.corpus.finger.TrueRidgeMask;
import ridgeproof.corpus.finger.TrueSingularPoint;
import ridgeproof.corpus.paper.PaperMarks;
import ridgeproof.imagery.GrayImage;
import ridgeproof.spec.layout.FingerPosition;

/**
 * An image of one or more fingers with what is known of it.
 *
 * @param image ridges dark on a light platen
 * @param ppi the resolution that the image is labelled with, pixels per inch
 * @param boxes one for each finger that the image shows, from left to right as the hand lies
 * @param truth minutiae, singular points and mask in image pixels
 */
public record Impression(GrayImage image, int ppi, List<FingerBox> boxes, GroundTruth truth) {

  public Impression {
    boxes = List.copyOf(boxes);
  }

  /** The finger rolled from nail edge to nail edge, usually 800 x 750 pixels at 500 ppi. */
  public static Impression rolled(MasterFinger finger, ImpressionSettings settings) {
    return take(
        SkinContact.Manner.ROLLED,
        List.of(finger),
        List.of(new Placement.Anchor(0, 0, 0)),
        settings,
        FrameSize.ROLLED);
  }

  /** The finger laid down flat, in a frame for a thumb or for another single finger. */
  public static Impression plain(MasterFinger finger, ImpressionSettings settings) {
    boolean thumb = finger.digit().isThumb();
    return take(
        SkinContact.Manner.PLAIN,
        List.of(finger),
        List.of(new Placement.Anchor(0, 0, 0)),
        settings,
        thumb ? FrameSize.PLAIN_THUMB : FrameSize.PLAIN_FINGER);
  }

  static Impression take(
      SkinContact.Manner manner,
      List<MasterFinger> fingers,
      List<Placement.Anchor> anchors,
      ImpressionSettings settings,
      FrameSize usual) {
    FrameSize frame = settings.pixels(usual);
    SeededRandom dice = new SeededRandom(settings.seed(), 11);
    CaptureParameters conditions = CaptureParameters.of(settings, dice);
    Platen platen = new Platen(frame, conditions, dice);
    Placement.Pose pose = Placement.Pose.of(conditions, settings, frame);
    PaperMarks marks =
        new PaperMarks(
            platen.pixels(),
            frame.width(),
            frame.height(),
            settings.ppi(),
            new SeededRandom(settings.seed(), 34));
    marks.print(settings.paper());
    if (conditions.ghost > 0) {
      leaveGhost(platen, manner, fingers, anchors, settings, conditions);
    }
    List<FingerBox> boxes = new ArrayList<>();
    List<InkTransfer> stamps = new ArrayList<>();
    TrueRidgeMask.Builder maskBuilder = new TrueRidgeMask.Builder(frame.width(), frame.height());
    for (int i = 0; i < fingers.size(); i++) {
      MasterFinger finger = fingers.get(i);
      SeededRandom touch = new SeededRandom(settings.seed(), 20 + finger.digit().code());
      SkinContact contact = new SkinContact(manner, finger, conditions, touch);
      Placement placement = new Placement(pose, anchors.get(i), contact, conditions, touch);
      InkTransfer stamp =
          new InkTransfer(platen, finger, contact, placement, conditions, settings.ppi());
      stamp.press(conditions.depth, conditions.depth > 0.05 ? maskBuilder : null, touch);
      stamp.box().filter(box -> conditions.depth > 0.05).ifPresent(boxes::add);
      stamps.add(stamp);
    }
    marks.punch(settings.paper());
    TrueRidgeMask mask = maskBuilder.build();
    List<TrueMinutia> minutiae = new ArrayList<>();
    List<TrueSingularPoint> singularPoints = new ArrayList<>();
    for (InkTransfer stamp : stamps) {
      stamp.tell(mask, minutiae, singularPoints);
    }
    return new Impression(
        platen.finish(conditions, settings.ppi(), dice),
        settings.ppi(),
        boxes,
        new GroundTruth(minutiae, singularPoints, mask));
  }

  /** The fingers that lay there before, elsewhere and at another angle, and never spoilt. */
  private static void leaveGhost(
      Platen platen,
      SkinContact.Manner manner,
      List<MasterFinger> fingers,
      List<Placement.Anchor> anchors,
      ImpressionSettings settings,
      CaptureParameters conditions) {
    long stranger = settings.seed() * 31 + 17;
    ImpressionSettings earlier =
        ImpressionSettings.natural(stranger).withPpi(settings.ppi()).withSkin(0.45, 0.4);
    SeededRandom dice = new SeededRandom(stranger, 12);
    CaptureParameters before = CaptureParameters.of(earlier, dice);
    before.rotationDegrees = dice.around(0, 14);
    before.shiftX = (dice.chance(0.5) ? 1 : -1) * dice.between(50, 150);
    before.shiftY = dice.around(0, 70);
    before.blotches = 45;
    FrameSize frame = new FrameSize(platen.width(), platen.height());
    Placement.Pose pose = Placement.Pose.of(before, earlier, frame);
    for (int i = 0; i < fingers.size(); i++) {
      FingerPosition digit = fingers.get(i).digit();
      MasterFinger ghost = settings.previous().orElseGet(() -> MasterFinger.grow(stranger, digit));
      SkinContact contact = new SkinContact(manner, ghost, before, dice);
      Placement placement = new Placement(pose, anchors.get(i), contact, before, dice);
      new InkTransfer(platen, ghost, contact, placement, before, settings.ppi())
          .press(conditions.ghost, null, dice);
    }
  }
}
