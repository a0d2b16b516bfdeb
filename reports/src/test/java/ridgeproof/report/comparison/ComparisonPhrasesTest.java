package ridgeproof.report.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.comparison.IgnoredFields;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.comparison.ValueDifference;
import ridgeproof.examination.facts.Depth;
import ridgeproof.report.PilotCard;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.Renderings;
import ridgeproof.report.Reports;
import ridgeproof.spec.layout.FieldNumber;

/** How differences of long, masked and unknown values are told. */
class ComparisonPhrasesTest {

  private static ComparisonPhrases phrases(boolean showPersonal) {
    byte[] bytes = PilotCard.ascii().bytes();
    return new ComparisonPhrases(Renderings.compare(bytes, bytes, Depth.STRUCTURE), showPersonal);
  }

  private static ValueDifference name(String first, String second) {
    return difference(new FieldNumber(2, 18), first, second);
  }

  private static ValueDifference difference(FieldNumber field, String first, String second) {
    return new ValueDifference(
        field,
        OptionalInt.empty(),
        OptionalInt.empty(),
        Optional.of(first).filter(text -> !text.isEmpty()),
        Optional.of(second).filter(text -> !text.isEmpty()),
        1,
        false);
  }

  @Test
  void ofALongTextTheFortyCharactersBeforeTheFirstDifferenceAndTheRestAreShown() {
    String alike = "a".repeat(600);
    assertEquals(
        "\"from character 561 on: "
            + "a".repeat(40)
            + "b\" became \"from character 561 on: "
            + "a".repeat(40)
            + "c\"",
        phrases(true).change(name(alike + "b", alike + "c")));
  }

  @Test
  void aTextThatIsCutIsShownFromTheDifferenceOnWhicheverOfTheTwoIsLong() {
    String alike = "a".repeat(100);
    String tail = "b".repeat(500);
    String shown = "from character 61 on: " + "a".repeat(40);
    assertEquals(
        "\"" + shown + "\" became \"" + shown + "b" + tail + "\"",
        phrases(true).change(name(alike, alike + "b" + tail)));
    assertEquals(
        "\"" + shown + "b" + tail + "\" became \"" + shown + "\"",
        phrases(true).change(name(alike + "b" + tail, alike)));
  }

  @Test
  void textsThatFitAreShownFromTheirBeginning() {
    String alike = "a".repeat(599);
    assertEquals(
        "\"" + alike + "b\" became \"" + alike + "c\"",
        phrases(true).change(name(alike + "b", alike + "c")));
  }

  @Test
  void aLongTextThatOnlyOneFileHasIsShownFromItsBeginning() {
    String shown = "a".repeat(600) + " ... and 5 more characters";
    assertEquals("added \"" + shown + "\"", phrases(true).change(name("", "a".repeat(605))));
    assertEquals("removed \"" + shown + "\"", phrases(true).change(name("a".repeat(605), "")));
  }

  @Test
  void aPersonalValueIsMaskedUnlessAskedFor() {
    ValueDifference difference = name("SPECIMEN,ADA", "SPECIMEN,BEA");
    assertEquals("changed, values [masked]", phrases(false).change(difference));
    assertEquals("\"SPECIMEN,ADA\" became \"SPECIMEN,BEA\"", phrases(true).change(difference));
    assertEquals("added [masked]", phrases(false).change(name("", "SPECIMEN,BEA")));
    assertEquals("removed [masked]", phrases(false).change(name("SPECIMEN,ADA", "")));
  }

  @Test
  void aPublicValueThatIsLongerThanItsFieldAllowsIsMaskedOnEitherSide() {
    FieldNumber agency = new FieldNumber(1, 8);
    String tooLong = "T".repeat(400);
    assertEquals(
        "\"THP000001\" became \"THP000002\"",
        phrases(false).change(difference(agency, "THP000001", "THP000002")));
    FieldNumber version = new FieldNumber(1, 2);
    assertEquals(
        "changed, values [masked]", phrases(false).change(difference(version, tooLong, "0500")));
    assertEquals(
        "changed, values [masked]", phrases(false).change(difference(version, "0500", tooLong)));
  }

  /** The field is new in the version of the second file, or of the first. */
  @Test
  void aFieldIsNamedByTheVersionOfEitherFile() {
    byte[] old = PilotCard.ascii().header(2, "0201").bytes();
    byte[] current = PilotCard.ascii().header(2, "0502").bytes();
    FieldNumber geographic = new FieldNumber(1, 18);
    ValueDifference difference = difference(geographic, "a", "b");
    for (TransactionComparison comparison :
        List.of(
            Renderings.compare(old, current, Depth.STRUCTURE),
            Renderings.compare(current, old, Depth.STRUCTURE))) {
      ComparisonPhrases phrases = new ComparisonPhrases(comparison, false);
      assertEquals("1.018 GNS", phrases.place(difference));
      assertEquals("Geographic name set", phrases.fieldName(difference));
    }
  }

  private static String text(PilotCard first, PilotCard second, String ignored) {
    TransactionComparison comparison =
        TransactionComparison.of(
            Reports.examine(first.bytes(), Depth.STRUCTURE),
            Reports.examine(second.bytes(), Depth.STRUCTURE),
            Renderings.EXTRACTION,
            IgnoredFields.parse(ignored));
    return ComparisonText.render(
        MadeComparison.FIRST, MadeComparison.SECOND, comparison, RenderOptions.standard());
  }

  @Test
  void recordsOfOneFileOnlyAreListedWhicheverFileHasThem() {
    String removed = text(PilotCard.ascii(), PilotCard.ascii().without(4), "");
    assertEquals(
        """
        Records in one file only
          removed  Record 6: Type-14, IDC 04  Fingerprint image, right ring finger
        """,
        removed.substring(removed.indexOf("Records in one"), removed.indexOf("\n\nRecord ") + 1));
    String added = text(PilotCard.ascii().without(4), PilotCard.ascii(), "");
    assertEquals(
        """
        Records in one file only
          added    Record 6: Type-14, IDC 04  Fingerprint image, right ring finger
        """,
        added.substring(added.indexOf("Records in one"), added.indexOf("\n\nRecord ") + 1));
  }

  @Test
  void withoutIgnoredDifferencesThereIsNoListOfThem() {
    String text = text(PilotCard.ascii(), PilotCard.ascii(), IgnoredFields.STANDARD);
    assertEquals(-1, text.indexOf("Ignored differences"), text);
  }
}
