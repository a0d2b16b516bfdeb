package ridgeproof.examination.cause.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.MeasuredCard.at;
import static ridgeproof.examination.cause.MeasuredCard.inRecord;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.Established;
import ridgeproof.examination.cause.MeasuredCard;
import ridgeproof.examination.limit.MeasuredImage;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.measure.RidgePeriod;
import ridgeproof.transaction.record.ByteRange;

/** A fault of scale is one cause of the image, or of the file where images share it. */
class ScaleCausesTest {

  private static final String[] OF_SCALE = {
    "RP-RDG-002",
    "RP-SEQ-001",
    "RP-IMG-004",
    "RP-IMG-008",
    "RP-IMG-009",
    "RP-IMG-010",
    "RP-IMG-012",
    "RP-IMG-024",
    "RP-IMG-039",
    "RP-IMG-019"
  };

  private static SampleCard stating(SampleCard card, int record, String unit, String scale) {
    return card.with(record, draft -> draft.with(8, unit).with(9, scale).with(10, scale));
  }

  private static MeasuredCard measured(SampleCard card, int record, double pixels) {
    return ridges(MeasuredCard.of(card), record, pixels);
  }

  private static MeasuredCard ridges(MeasuredCard card, int record, double pixels) {
    return card.pixels(record, MeasuredImage.sound().ridges(new RidgePeriod(pixels, 0.1, 20, 0.9)));
  }

  private static List<String> told(String unit, String scale, double pixels) {
    return measured(stating(SampleCard.rolledTagged(), 3, unit, scale), 3, pixels)
        .told(new ScaleCauses());
  }

  @Test
  void itsRulesAreThoseOfScale() {
    assertEquals(
        Set.of("RP-IMG-052", "RP-IMG-053", "RP-IMG-054", "RP-IMG-055"), new ScaleCauses().ids());
  }

  @Test
  void pixelsPerCentimeterStatedAsPerInchAreAWrongUnit() {
    assertEquals(
        List.of(
            "RP-IMG-052 record 3 14.008 finger 1: unit 1 (pixels per inch), 197 in 1 image;"
                + " unit 2 (pixels per centimeter); stated resolution 197 ppi"),
        told("1", "197", 9.2));
  }

  @Test
  void pixelsPerInchStatedAsPerCentimeterAreAWrongUnit() {
    assertEquals(
        List.of(
            "RP-IMG-052 record 3 14.008 finger 1: unit 2 (pixels per centimeter), 500 in 1 image;"
                + " unit 1 (pixels per inch); stated resolution 1270 ppi"),
        told("2", "500", 9.2));
  }

  @Test
  void aWrongUnitExplainsWhatGoesByTheResolutionOfItsImageAlone() {
    Finding[] found =
        MeasuredCard.all(
            inRecord(3, 1, OF_SCALE),
            inRecord(3, 1, "RP-IMG-016"),
            inRecord(4, 2, OF_SCALE),
            new Finding[] {Established.finding("RP-IMG-040")});
    assertEquals(
        List.of(
            "RP-IMG-052 record 3 14.008 finger 1: unit 1 (pixels per inch), 197 in 1 image;"
                + " unit 2 (pixels per centimeter); stated resolution 197 ppi"
                + " -> RP-RDG-002 record 3 finger 1, RP-SEQ-001 record 3 finger 1,"
                + " RP-IMG-004 record 3 finger 1, RP-IMG-008 record 3 finger 1,"
                + " RP-IMG-009 record 3 finger 1, RP-IMG-010 record 3 finger 1,"
                + " RP-IMG-012 record 3 finger 1, RP-IMG-024 record 3 finger 1,"
                + " RP-IMG-039 record 3 finger 1, RP-IMG-019 record 3 finger 1, RP-IMG-040"),
        measured(stating(SampleCard.rolledTagged(), 3, "1", "197"), 3, 9.2)
            .told(new ScaleCauses(), found));
  }

  @Test
  void aUnitThatSeveralImagesShareIsOneFindingOfTheFile() {
    SampleCard card = stating(stating(SampleCard.rolledTagged(), 3, "1", "197"), 5, "1", "197");
    Finding[] found = {at("RP-RDG-002", 3, 1), at("RP-RDG-002", 4, 2), at("RP-RDG-002", 5, 3)};
    assertEquals(
        List.of(
            "RP-IMG-052: unit 1 (pixels per inch), 197 in 2 images;"
                + " unit 2 (pixels per centimeter); stated resolution 197 ppi"
                + " -> RP-RDG-002 record 3 finger 1, RP-RDG-002 record 5 finger 3"),
        ridges(measured(card, 3, 9.2), 5, 9.2).told(new ScaleCauses(), found));
  }

  @Test
  void aUnitIsNotAccusedOnOneSignAlone() {
    // The resolution is one that scanners have.
    assertEquals(List.of(), told("1", "500", 23.4));
    assertEquals(List.of(), told("2", "197", 3.6));
    // In the other unit it would be none either.
    assertEquals(List.of(), told("1", "250", 11.7));
    assertEquals(List.of(), told("2", "560", 9.2));
    // The ridges are those of people as it is: 0.387 mm.
    assertEquals(List.of(), told("1", "197", 3));
    // They are those of people in neither unit: 2.06 mm, or 0.81 mm.
    assertEquals(List.of(), told("1", "197", 16));
    // Neither: 0.77 mm, or 0.30 mm.
    assertEquals(List.of(), told("1", "197", 6));
    // No unit is stated.
    assertEquals(List.of(), told("0", "1", 9.2));
    // Nothing was measured of the ridges.
    assertEquals(
        List.of(),
        MeasuredCard.of(stating(SampleCard.rolledTagged(), 3, "1", "197")).told(new ScaleCauses()));
  }

  private static ImageHeader header(int width, int height) {
    return new ImageHeader(
        ImageFormat.WSQ,
        width,
        height,
        8,
        1,
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        new ByteRange(0, 0),
        Map.of(),
        Map.of(),
        List.of());
  }

  private static List<String> sides(int width, int height, Finding... found) {
    return MeasuredCard.ofRolls().header(3, header(width, height)).told(new ScaleCauses(), found);
  }

  @Test
  void widthAndHeightOfEachOtherAreExchanged() {
    String[] ofSize = {"RP-IMG-001", "RP-IMG-002", "RP-IMG-009", "RP-IMG-010", "RP-IMG-019"};
    assertEquals(
        List.of(
            "RP-IMG-055 record 3 14.006 finger 1: record 32 x 24 pixels;"
                + " 24 x 32 pixels, as the image has"
                + " -> RP-IMG-001 record 3 finger 1, RP-IMG-002 record 3 finger 1,"
                + " RP-IMG-009 record 3 finger 1, RP-IMG-010 record 3 finger 1,"
                + " RP-IMG-019 record 3 finger 1"),
        sides(
            24,
            32,
            MeasuredCard.all(
                inRecord(3, 1, ofSize), inRecord(3, 1, "RP-IMG-016"), inRecord(4, 2, ofSize))));
  }

  @Test
  void anotherSizeIsNotExchanged() {
    assertEquals(List.of(), sides(32, 24));
    assertEquals(List.of(), sides(24, 33));
    assertEquals(List.of(), sides(25, 32));
    assertEquals(List.of(), sides(32, 32));
    assertEquals(List.of(), MeasuredCard.ofRolls().told(new ScaleCauses()));
  }

  @Test
  void aSquareAndASizeOfNothingAreNotExchanged() {
    SampleCard square = SampleCard.rolledTagged().with(3, draft -> draft.with(7, "32"));
    assertEquals(
        List.of(), MeasuredCard.of(square).header(3, header(32, 32)).told(new ScaleCauses()));
    SampleCard flat = SampleCard.rolledTagged().with(3, draft -> draft.with(7, "0"));
    assertEquals(List.of(), MeasuredCard.of(flat).header(3, header(0, 32)).told(new ScaleCauses()));
  }

  private static String enlarged(String place, String which, String evenness, String fine) {
    return "RP-IMG-053"
        + place
        + ": "
        + which
        + " enlarged from half the stated resolution; images at the resolution at which they were"
        + " scanned; evenness of neighboring pixels "
        + evenness
        + " (limit 0.75); fine detail "
        + fine;
  }

  @Test
  void anImageWithUnevenNeighborsIsEnlarged() {
    Finding[] found = {at("RP-RDG-002", 3, 1), at("RP-SEQ-001", 3, 1), at("RP-RDG-002", 4, 2)};
    assertEquals(
        List.of(
            enlarged(" record 3 finger 1", "the image", "0.74", "0.5")
                + " -> RP-RDG-002 record 3 finger 1"),
        MeasuredCard.ofRolls()
            .enlarged(3, 0.74, 0.5)
            .enlarged(4, 0.75, 0.5)
            .enlarged(5, 0.8, 0.01)
            .told(new ScaleCauses(), found));
  }

  @Test
  void nearlyAllImagesBearEachOtherOut() {
    Finding[] found = {at("RP-RDG-002", 3, 1), at("RP-RDG-002", 6, 4), at("RP-RDG-002", 7, 5)};
    assertEquals(
        List.of(
            enlarged("", "4 of 5 images", "0.89", "0.01")
                + " -> RP-RDG-002 record 3 finger 1, RP-RDG-002 record 6 finger 4"),
        MeasuredCard.ofRolls()
            .enlarged(3, 0.89, 0.014)
            .enlarged(4, 0.5, 0.5)
            .enlarged(5, 0.89, 0.014)
            .enlarged(6, 0.89, 0.014)
            .enlarged(7, 1, 0.01)
            .told(new ScaleCauses(), found));
    assertEquals(
        List.of(enlarged("", "3 of 3 images", "0.89", "0.01")),
        MeasuredCard.ofRolls()
            .enlarged(3, 0.89, 0.014)
            .enlarged(4, 0.89, 0.014)
            .enlarged(5, 0.89, 0.014)
            .told(new ScaleCauses()));
  }

  @Test
  void twoImagesOrThreeOfFourAreEachByThemselves() {
    assertEquals(
        List.of(),
        MeasuredCard.ofRolls()
            .enlarged(3, 0.89, 0.014)
            .enlarged(4, 0.89, 0.014)
            .told(new ScaleCauses()));
    assertEquals(
        List.of(enlarged(" record 3 finger 1", "the image", "0.5", "0.01")),
        MeasuredCard.ofRolls()
            .enlarged(3, 0.5, 0.014)
            .enlarged(4, 0.89, 0.014)
            .enlarged(5, 0.89, 0.014)
            .enlarged(6, 1, 0.01)
            .told(new ScaleCauses()));
  }

  @Test
  void asEvenOrAsFineAsSoundImagesIsNoSign() {
    assertEquals(
        List.of(),
        MeasuredCard.ofRolls()
            .enlarged(3, 0.9, 0.014)
            .enlarged(4, 0.9, 0.014)
            .enlarged(5, 0.9, 0.014)
            .told(new ScaleCauses()));
    assertEquals(
        List.of(),
        MeasuredCard.ofRolls()
            .enlarged(3, 0.89, 0.015)
            .enlarged(4, 0.89, 0.015)
            .enlarged(5, 0.89, 0.015)
            .told(new ScaleCauses()));
  }

  private static Finding note(int record, String observed) {
    FindingLog log = new FindingLog(SampleCard.TABLES, 1);
    log.add("RP-IMG-004", Location.inRecord(record, 14), Observed.of(observed), "500 ppi");
    return log.findings().get(0);
  }

  @Test
  void theSameNoteInThreeImagesIsOneSetting() {
    assertEquals(
        List.of(
            "RP-IMG-054: 250 ppi, in 3 images; 500 ppi"
                + " -> RP-IMG-004 record 3, RP-IMG-004 record 4, RP-IMG-004 record 5"),
        MeasuredCard.ofRolls()
            .told(
                new ScaleCauses(),
                note(3, "250 ppi"),
                note(4, "250 ppi"),
                note(5, "250 ppi"),
                Established.inImage("RP-IMG-009", 3)));
  }

  @Test
  void twoNotesOrNotesThatDifferStayByThemselves() {
    assertEquals(
        List.of(),
        MeasuredCard.ofRolls().told(new ScaleCauses(), note(3, "250 ppi"), note(4, "250 ppi")));
    assertEquals(
        List.of(),
        MeasuredCard.ofRolls()
            .told(new ScaleCauses(), note(3, "250 ppi"), note(4, "250 ppi"), note(5, "300 ppi")));
  }
}
