package ridgeproof.examination.cause.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.MeasuredCard.at;
import static ridgeproof.examination.cause.MeasuredCard.inRecord;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.Established;
import ridgeproof.examination.cause.MeasuredCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.limit.MeasuredImage;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.measure.RidgePeriod;

/** Ridges at a distance that fingers do not have: of one image, or of the file. */
class RidgePeriodCauseTest {

  private static final String[] OF_SCALE = {
    "RP-RDG-002",
    "RP-SEQ-001",
    "RP-IMG-004",
    "RP-IMG-008",
    "RP-IMG-009",
    "RP-IMG-010",
    "RP-IMG-012",
    "RP-IMG-019",
    "RP-IMG-024",
    "RP-IMG-054"
  };

  private static MeasuredCard with(MeasuredCard card, int record, double pixels, int windows) {
    return card.pixels(
        record, MeasuredImage.sound().ridges(new RidgePeriod(pixels, 0.1, windows, 0.9)));
  }

  private static MeasuredCard card(double... pixels) {
    MeasuredCard card = MeasuredCard.ofRolls();
    for (int i = 0; i < pixels.length; i++) {
      card = with(card, 3 + i, pixels[i], 20);
    }
    return card;
  }

  private static List<String> told(MeasuredCard card, Finding... found) {
    return card.told(new RidgePeriodCause(), found);
  }

  private static String one(int record, String pixels, String mm, String exact, String bound) {
    return "RP-IMG-039 record %d 14.009 finger %d: ridges %s pixels apart, %s mm at 500 ppi; about 0.46 mm, at %s; ridge distance %s mm (limit %s); ridge distance %s pixels; windows with clear ridges 20"
        .formatted(
            record,
            record - 2,
            pixels,
            mm,
            bound,
            exact,
            bound.contains("least") ? "0.3" : "0.75",
            pixels.replaceFirst("\\.0$", ""));
  }

  @Test
  void oneImageIsToldByItself() {
    assertEquals(
        List.of(
            one(3, "4.6", "0.23", "0.23", "least 0.30 mm"),
            one(4, "18.4", "0.93", "0.93", "most 0.75 mm")),
        told(card(4.6, 18.4, 9.2, 9.2)));
  }

  @Test
  void oneImageExplainsWhatGoesByItsScaleAlone() {
    Finding[] found =
        MeasuredCard.all(
            inRecord(3, 1, OF_SCALE),
            inRecord(3, 1, "RP-IMG-016", "RP-TXN-016"),
            inRecord(4, 2, OF_SCALE));
    assertEquals(
        List.of(
            one(3, "4.6", "0.23", "0.23", "least 0.30 mm")
                + " -> RP-RDG-002 record 3 finger 1, RP-SEQ-001 record 3 finger 1,"
                + " RP-IMG-004 record 3 finger 1, RP-IMG-008 record 3 finger 1,"
                + " RP-IMG-009 record 3 finger 1, RP-IMG-010 record 3 finger 1,"
                + " RP-IMG-012 record 3 finger 1, RP-IMG-019 record 3 finger 1,"
                + " RP-IMG-024 record 3 finger 1, RP-IMG-054 record 3 finger 1"),
        told(card(4.6, 9.2, 9.2), found));
  }

  /** But nothing of the image that is at the right scale, beyond how it matches the others. */
  @Test
  void imagesThatAgreeAreOneFindingOfTheFileWithTheirMedian() {
    Finding[] found = {
      at("RP-RDG-002", 3, 1),
      at("RP-IMG-008", 16, 14),
      at("RP-IMG-016", 3, 1),
      at("RP-RDG-002", 7, 5),
      at("RP-SEQ-001", 7, 5),
      Established.finding("RP-TXN-016"),
      Established.finding("RP-TXN-017"),
      Established.finding("RP-TXN-018"),
      Established.finding("RP-TXN-019")
    };
    assertEquals(
        List.of(
            "RP-IMG-040: ridges 4.7 pixels apart, 0.24 mm at 500 ppi, as in 4 of 5 images;"
                + " about 0.46 mm, at least 0.30 mm; ridge distance 0.24 mm (limit 0.3);"
                + " ridge distance 4.7 pixels; windows with clear ridges 20"
                + " -> RP-RDG-002 record 3 finger 1, RP-IMG-008 record 16 finger 14,"
                + " RP-SEQ-001 record 7 finger 5, RP-TXN-016, RP-TXN-017, RP-TXN-018"),
        told(card(4.9, 4.5, 4.7, 4.6, 9.2), found));
    assertEquals(
        List.of(
            "RP-IMG-040: ridges 18.0 pixels apart, 0.91 mm at 500 ppi, as in 3 of 3 images;"
                + " about 0.46 mm, at most 0.75 mm; ridge distance 0.91 mm (limit 0.75);"
                + " ridge distance 18 pixels; windows with clear ridges 20"),
        told(card(19, 17, 18)));
  }

  @Test
  void twoImagesOrThreeOfFourAreNotTheFile() {
    assertEquals(
        List.of(
            one(3, "4.6", "0.23", "0.23", "least 0.30 mm"),
            one(4, "4.6", "0.23", "0.23", "least 0.30 mm")),
        told(card(4.6, 4.6)));
    assertEquals(
        List.of(
            one(3, "18.0", "0.91", "0.91", "most 0.75 mm"),
            one(4, "18.0", "0.91", "0.91", "most 0.75 mm"),
            one(5, "18.0", "0.91", "0.91", "most 0.75 mm")),
        told(card(18, 18, 18, 9.2)));
  }

  @Test
  void fewWindowsTellOfTheFileAndNotOfOneImage() {
    MeasuredCard two = with(with(MeasuredCard.ofRolls(), 3, 4.6, 9), 4, 4.6, 10);
    assertEquals(1, told(two).size());
    assertEquals(
        List.of(
            "RP-IMG-040: ridges 4.6 pixels apart, 0.23 mm at 500 ppi, as in 3 of 3 images;"
                + " about 0.46 mm, at least 0.30 mm; ridge distance 0.23 mm (limit 0.3);"
                + " ridge distance 4.6 pixels; windows with clear ridges 4"),
        told(with(with(with(MeasuredCard.ofRolls(), 3, 4.6, 4), 4, 4.6, 4), 5, 4.6, 4)));
    assertEquals(
        List.of(), told(with(with(with(MeasuredCard.ofRolls(), 3, 4.6, 3), 4, 4.6, 4), 5, 4.6, 4)));
  }

  @Test
  void ridgesThatAreNotClearTellNothing() {
    for (RidgePeriod unclear :
        List.of(new RidgePeriod(4.6, 0.1, 20, 0.19), new RidgePeriod(4.6, 1.7, 20, 0.9))) {
      assertEquals(
          List.of(), told(MeasuredCard.ofRolls().pixels(3, MeasuredImage.sound().ridges(unclear))));
    }
    assertEquals(
        1,
        told(MeasuredCard.ofRolls()
                .pixels(3, MeasuredImage.sound().ridges(new RidgePeriod(4.6, 1.6, 20, 0.2))))
            .size());
  }

  @Test
  void whereThePixelsWereNotLookedAtOrNoScaleIsStatedNothingIsTold() {
    assertEquals(List.of(), told(card(4.6).depth(Depth.STRUCTURE)));
    SampleCard none = SampleCard.rolledTagged().with(3, draft -> draft.with(8, "0"));
    assertEquals(List.of(), told(with(MeasuredCard.of(none), 3, 4.6, 20)));
    assertEquals(Set.of("RP-IMG-039", "RP-IMG-040"), new RidgePeriodCause().ids());
  }
}
