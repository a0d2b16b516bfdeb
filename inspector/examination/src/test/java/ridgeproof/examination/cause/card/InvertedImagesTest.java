package ridgeproof.examination.cause.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.MeasuredCard.at;
import static ridgeproof.examination.cause.MeasuredCard.inRecord;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.MeasuredCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.limit.MeasuredImage;
import ridgeproof.finding.Finding;

/** Images with light ridges on a dark ground: one of them, or a setting of the station. */
class InvertedImagesTest {

  private static final String ONE =
      "RP-IMG-037 record 3 finger 1: ground at gray level 20, print at 150;"
          + " dark ridges on a light ground; ground 20 gray levels (limit 80)";

  /** Its ground is dark, and its print fades into it. */
  private static MeasuredImage inverted(int ground) {
    return dark(ground).fading(ground, 3000);
  }

  /** Its ground is dark, but nothing fades. */
  private static MeasuredImage dark(int ground) {
    return MeasuredImage.sound().bare(ground, 10_000);
  }

  private static MeasuredImage light() {
    return dark(250);
  }

  private static MeasuredCard card(MeasuredImage... images) {
    MeasuredCard card = MeasuredCard.ofRolls();
    for (int i = 0; i < images.length; i++) {
      card = card.pixels(3 + i, images[i]);
    }
    return card;
  }

  private static List<String> told(MeasuredCard card, Finding... found) {
    return card.told(new InvertedImages(), found);
  }

  @Test
  void oneImageExplainsWhatIsMeasuredOfIt() {
    Finding[] found =
        MeasuredCard.all(
            inRecord(3, 1, "RP-RDG-002", "RP-SEQ-001", "RP-IMG-035", "RP-IMG-036", "RP-IMG-016"),
            inRecord(4, 2, "RP-RDG-002"));
    assertEquals(
        List.of(
            ONE
                + " -> RP-RDG-002 record 3 finger 1, RP-SEQ-001 record 3 finger 1,"
                + " RP-IMG-035 record 3 finger 1, RP-IMG-036 record 3 finger 1"),
        told(card(inverted(20), light(), light()), found));
    assertEquals(Set.of("RP-IMG-037", "RP-IMG-051"), new InvertedImages().ids());
  }

  @Test
  void aSingleImageIsNoSetting() {
    assertEquals(List.of(ONE), told(card(inverted(20))));
  }

  @Test
  void twoOfTwoAndFourOfFiveAreASetting() {
    assertEquals(
        List.of(
            "RP-IMG-051: 2 of 2 images; dark ridges on a light ground;"
                + " ground 30 gray levels (limit 80)"),
        told(card(inverted(20), dark(40))));
    assertEquals(
        List.of(
            "RP-IMG-051: 4 of 5 images; dark ridges on a light ground;"
                + " ground 50 gray levels (limit 80)"),
        told(card(inverted(50), dark(50), dark(50), dark(50), light())));
  }

  @Test
  void threeOfFourAreEachByThemselves() {
    assertEquals(List.of(ONE), told(card(inverted(20), dark(20), dark(20), light())));
  }

  @Test
  void darkGroundsWithoutOneThatIsCertainlyInvertedAreNone() {
    assertEquals(List.of(), told(card(dark(20), dark(20), dark(20))));
  }

  /** A print that fills its image may be inverted too; one on a light ground is not. */
  @Test
  void aSettingExplainsFindingsOfPrintsThatShowNoGroundAndOfNoneOnALightOne() {
    Finding[] found = {
      at("RP-RDG-002", 3, 1),
      at("RP-RDG-002", 8, 6),
      at("RP-RDG-002", 9, 7),
      at("RP-RDG-002", 10, 8),
      at("RP-RDG-002", 11, 9)
    };
    MeasuredImage hardlyAny = MeasuredImage.sound().bare(250, 1000);
    assertEquals(
        List.of(
            "RP-IMG-051: 8 of 9 images; dark ridges on a light ground;"
                + " ground 20 gray levels (limit 80)"
                + " -> RP-RDG-002 record 3 finger 1, RP-RDG-002 record 8 finger 6,"
                + " RP-RDG-002 record 9 finger 7, RP-RDG-002 record 10 finger 8"),
        told(
            card(
                inverted(20),
                dark(20),
                dark(20),
                dark(20),
                dark(20),
                dark(20),
                dark(20),
                dark(20),
                light()),
            found));
    assertEquals(
        List.of(
            "RP-IMG-051: 8 of 10 images; dark ridges on a light ground;"
                + " ground 20 gray levels (limit 80)"
                + " -> RP-RDG-002 record 3 finger 1, RP-RDG-002 record 8 finger 6,"
                + " RP-RDG-002 record 9 finger 7, RP-RDG-002 record 10 finger 8,"
                + " RP-RDG-002 record 11 finger 9"),
        told(
            card(
                inverted(20),
                dark(20),
                dark(20),
                dark(20),
                dark(20),
                dark(20),
                dark(20),
                dark(20),
                MeasuredImage.sound(),
                hardlyAny),
            found));
  }

  @Test
  void aTraceAndAnImageThatWasNotLookedAtAreNotAccused() {
    assertEquals(List.of(), told(card(inverted(20)).depth(Depth.STRUCTURE)));
    SampleCard trace = SampleCard.rolledTagged().with(3, draft -> draft.with(3, "4"));
    assertEquals(List.of(), told(MeasuredCard.of(trace).pixels(3, inverted(20))));
  }
}
