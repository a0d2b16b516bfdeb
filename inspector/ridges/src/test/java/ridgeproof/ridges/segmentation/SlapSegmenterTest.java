package ridgeproof.ridges.segmentation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.map.Drawn;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.quality.BlockMap;
import ridgeproof.ridges.quality.FingerAnalyzer;
import ridgeproof.spec.layout.FingerPosition;

class SlapSegmenterTest {

  private static final int HEIGHT = 960;
  private static final List<FingerPosition> RIGHT_FOUR = FingerPosition.shownBy(13);

  /** Of the four fingers of a right hand; the middle finger is the highest. */
  private static final int[] TOPS = {130, 40, 80, 300};

  private static GrayImage finger(int width) {
    return Drawn.stripes(width, 400, 9, 20, 0.5);
  }

  private static GrayImage rightHand() {
    return Drawn.sideBySide(HEIGHT, TOPS, finger(300), finger(310), finger(300), finger(240));
  }

  private static void assertCentre(Segment segment, double x, double y) {
    RotatedBox box = segment.box().orElseThrow();
    assertEquals(x, box.centreX(), 20, segment.toString());
    assertEquals(y, box.centreY(), 20, segment.toString());
  }

  @Test
  void fourFingersAreFoundFromLeftToRight() {
    Slap slap = SlapSegmenter.segment(rightHand(), 500, RIGHT_FOUR);
    assertEquals(RIGHT_FOUR, slap.segments().stream().map(Segment::position).toList());
    assertCentre(slap.segments().get(0), 150, 330);
    assertCentre(slap.segments().get(1), 455, 240);
    assertCentre(slap.segments().get(2), 760, 280);
    assertCentre(slap.segments().get(3), 1030, 500);
    for (Segment segment : slap.segments()) {
      assertEquals(List.of(), segment.doubts());
      assertTrue(segment.confidence() > 0.8, segment.toString());
    }
    assertEquals(Optional.of(FingerPosition.Hand.RIGHT), slap.apparentHand());
  }

  @Test
  void theMirrorImageLooksLikeALeftHand() {
    Slap slap = SlapSegmenter.segment(Drawn.mirrored(rightHand()), 500, FingerPosition.shownBy(14));
    assertEquals(FingerPosition.LEFT_LITTLE, slap.segments().get(0).position());
    assertCentre(slap.segments().get(0), 1150 - 1030, 500);
    assertEquals(Optional.of(FingerPosition.Hand.LEFT), slap.apparentHand());
  }

  @ParameterizedTest
  @ValueSource(doubles = {-45, -30, -10, 15, 30, 45})
  void aTurnedHandIsFoundAndItsLeanTold(double degrees) {
    GrayImage image = Drawn.turned(rightHand(), degrees);
    Slap slap = SlapSegmenter.segment(image, 500, RIGHT_FOUR);
    assertEquals(degrees, slap.degrees(), 8);
    double[][] centres = {{150, 330}, {455, 240}, {760, 280}, {1030, 500}};
    double angle = Math.toRadians(degrees);
    for (int i = 0; i < centres.length; i++) {
      double dx = centres[i][0] - 1150 / 2.0;
      double dy = centres[i][1] - HEIGHT / 2.0;
      assertCentre(
          slap.segments().get(i),
          image.width() / 2.0 + dx * Math.cos(angle) - dy * Math.sin(angle),
          image.height() / 2.0 + dx * Math.sin(angle) + dy * Math.cos(angle));
    }
  }

  @Test
  void fingersThatTouchAreParted() {
    GrayImage apart =
        Drawn.sideBySide(HEIGHT, TOPS, finger(300), finger(310), finger(300), finger(240));
    int overlap = 44;
    byte[] pixels = Drawn.blank(apart.width(), HEIGHT, 255).toArray();
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < apart.width(); x++) {
        int to = x >= 610 ? x - overlap : x;
        int at = y * apart.width() + to;
        pixels[at] = (byte) Math.min(pixels[at] & 0xFF, apart.grayAt(x, y));
      }
    }
    Slap slap =
        SlapSegmenter.segment(GrayImage.owning(apart.width(), HEIGHT, pixels), 500, RIGHT_FOUR);
    assertCentre(slap.segments().get(1), 455, 240);
    assertCentre(slap.segments().get(2), 760 - overlap, 280);
    assertCentre(slap.segments().get(3), 1030 - overlap, 500);
  }

  @Test
  void aFingerDeclaredMissingIsNotLookedFor() {
    GrayImage image =
        Drawn.sideBySide(
            HEIGHT,
            new int[] {130, 0, 80, 300},
            finger(300),
            Drawn.blank(310, 400, Drawn.PAPER),
            finger(300),
            finger(240));
    List<FingerPosition> declared =
        List.of(FingerPosition.RIGHT_LITTLE, FingerPosition.RIGHT_INDEX, FingerPosition.RIGHT_RING);
    List<Segment> segments = SlapSegmenter.segment(image, 500, declared).segments();
    assertEquals(
        List.of(FingerPosition.RIGHT_INDEX, FingerPosition.RIGHT_RING, FingerPosition.RIGHT_LITTLE),
        segments.stream().map(Segment::position).toList());
    assertCentre(segments.get(0), 150, 330);
    assertCentre(segments.get(1), 760, 280);
    assertCentre(segments.get(2), 1030, 500);
  }

  @Test
  void aGapWhereAFingerWasExpectedIsThatFinger() {
    GrayImage image =
        Drawn.sideBySide(
            HEIGHT,
            new int[] {130, 0, 80, 300},
            finger(300),
            Drawn.blank(310, 400, Drawn.PAPER),
            finger(300),
            finger(240));
    List<Segment> segments = SlapSegmenter.segment(image, 500, RIGHT_FOUR).segments();
    assertTrue(segments.get(1).box().isEmpty(), segments.toString());
    assertEquals(List.of(Segment.Doubt.FEWER_PRINTS_THAN_FINGERS), segments.get(1).doubts());
    assertCentre(segments.get(0), 150, 330);
    assertCentre(segments.get(2), 760, 280);
    assertTrue(segments.get(0).confidence() < 0.8);
  }

  @Test
  void theNextJointsBelowAreNotTaken() {
    GrayImage joints =
        Drawn.sideBySide(
            HEIGHT, TOPS, withJoint(300), withJoint(310), withJoint(300), withJoint(240));
    List<Segment> segments = SlapSegmenter.segment(joints, 500, RIGHT_FOUR).segments();
    assertCentre(segments.get(0), 150, 330);
    assertCentre(segments.get(1), 455, 240);
    assertCentre(segments.get(2), 760, 280);
    assertCentre(segments.get(3), 1030, 500);
  }

  private static GrayImage withJoint(int width) {
    byte[] pixels = Drawn.blank(width, 640, Drawn.PAPER).toArray();
    GrayImage distal = finger(width);
    GrayImage joint = Drawn.stripes(width - 20, 240, 9, 175, 0.5);
    System.arraycopy(distal.toArray(), 0, pixels, 0, width * 400);
    for (int y = 0; y < 240; y++) {
      for (int x = 0; x < width - 20; x++) {
        pixels[(400 + y) * width + 10 + x] = (byte) joint.grayAt(x, y);
      }
    }
    return GrayImage.owning(width, 640, pixels);
  }

  @Test
  void aWholeFingerIsCutWhereItsRidgesAreWeakest() {
    byte[] pixels = Drawn.stripes(300, 1000, 9, 10, 0.5).toArray();
    for (int y = 430; y < 460; y++) {
      for (int x = 0; x < 300; x++) {
        // A crease with a bridge of ridges, as a joint prints when pressed hard.
        if (x < 90 || x > 210) {
          pixels[y * 300 + x] = (byte) Drawn.PAPER;
        }
      }
    }
    GrayImage whole =
        Drawn.sideBySide(
            1000,
            new int[] {0, 0, 0},
            Drawn.blank(60, 1000, Drawn.PAPER),
            GrayImage.owning(300, 1000, pixels),
            Drawn.blank(60, 1000, Drawn.PAPER));
    Segment segment =
        SlapSegmenter.segment(whole, 500, List.of(FingerPosition.LEFT_INDEX)).segments().get(0);
    RotatedBox box = segment.box().orElseThrow();
    assertEquals(445, box.centreY() + box.height() / 2, 40, segment.toString());
  }

  @Test
  void printedTextAndRuledLinesAreNotTakenForPrints() {
    GrayImage hand = rightHand();
    byte[] pixels = hand.toArray();
    GrayImage text = Drawn.text(hand.width(), 200);
    for (int y = 0; y < 200; y++) {
      for (int x = 0; x < hand.width(); x++) {
        int at = (y + 720) * hand.width() + x;
        pixels[at] = (byte) Math.min(pixels[at] & 0xFF, text.grayAt(x, y));
      }
    }
    for (int line = 0; line < 4; line++) {
      Arrays.fill(pixels, (line + 3) * hand.width(), (line + 4) * hand.width(), (byte) 60);
    }
    List<Segment> segments =
        SlapSegmenter.segment(
                GrayImage.owning(hand.width(), hand.height(), pixels), 500, RIGHT_FOUR)
            .segments();
    assertCentre(segments.get(0), 150, 330);
    assertCentre(segments.get(3), 1030, 500);
  }

  @Test
  void twoThumbsAreFoundLeftThumbFirst() {
    GrayImage image = Drawn.sideBySide(600, new int[] {60, 90}, finger(340), finger(340));
    List<Segment> segments =
        SlapSegmenter.segment(image, 500, FingerPosition.shownBy(15)).segments();
    assertEquals(FingerPosition.LEFT_THUMB, segments.get(0).position());
    assertCentre(segments.get(0), 170, 260);
    assertCentre(segments.get(1), 510, 290);
  }

  @Test
  void aPrintAtTheTopEdgeIsSaidToBeCut() {
    GrayImage hand = rightHand();
    GrayImage cut = new RotatedBox(575, 555, 1150, 810, 0).cut(hand);
    List<Segment> segments = SlapSegmenter.segment(cut, 500, RIGHT_FOUR).segments();
    assertTrue(segments.get(1).doubts().contains(Segment.Doubt.CUT_AT_TOP));
    assertFalse(segments.get(3).doubts().contains(Segment.Doubt.CUT_AT_TOP));
  }

  @Test
  void nothingExpectedGivesNothing() {
    assertEquals(List.of(), SlapSegmenter.segment(rightHand(), 500, List.of()).segments());
  }

  @Test
  void aBoxCutOutStandsUpright() {
    GrayImage image = Drawn.turned(finger(300), 25);
    Segment segment =
        SlapSegmenter.segment(image, 500, List.of(FingerPosition.RIGHT_INDEX)).segments().get(0);
    RotatedBox box = segment.box().orElseThrow();
    assertEquals(25, box.degrees(), 6);
    GrayImage upright = box.cut(image);
    BlockMap maps = FingerAnalyzer.analyse(upright, 500).measures().orElseThrow().maps();
    assertEquals(20, maps.orientation(maps.columns() / 2, maps.rows() / 2), 7);
  }
}
