package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.SampleCard;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;

class SyntheticValuesTest {

  private static final int VERSION = 500;
  private static final int FILES = 200;
  private static final LocalDate SENT = LocalDate.of(2026, 3, 2);

  private static SyntheticValues values(int salt, String... known) {
    KeyedRandom secret =
        KeyedRandom.of(ByteSource.of(new byte[] {(byte) salt, (byte) (salt >> 8)}));
    OriginalWords words = new OriginalWords();
    for (String word : known) {
      words.learn(word);
    }
    return new SyntheticValues(
        SampleCard.TABLES,
        new RetainedValues(SampleCard.TABLES, VERSION),
        secret,
        new SyntheticDates(secret, SENT, Set.of(SENT)),
        words);
  }

  private static String made(SyntheticValues values, int field, String value) {
    return values.inPlaceOf(value, value.length(), new FieldNumber(2, field), 1, 0);
  }

  /** What ever takes the place of a value, over many files. */
  private static Set<String> everMade(int field, String value, String... known) {
    Set<String> seen = new TreeSet<>();
    for (int salt = 0; salt < FILES; salt++) {
      seen.add(made(values(salt, known), field, value));
    }
    return seen;
  }

  private static void assertAll(Set<String> made, Function<String, Boolean> holds) {
    made.forEach(value -> assertTrue(holds.apply(value), value));
  }

  @ParameterizedTest
  @CsvSource({"'   '", "''", "000", "00000000"})
  void whatSaysNothingStays(String value) {
    assertEquals(value, made(values(1), 18, value));
  }

  @Test
  void aSingleZeroBesideADigitDoesNotStay() {
    assertFalse(everMade(9, "1000", "1000").contains("1000"));
  }

  @Test
  void anEyeColorBecomesEachOther() {
    assertEquals(
        Set.of("BLK", "BLU", "GRN", "GRY", "HAZ", "MAR", "MUL", "PNK", "XXX"), everMade(31, "BRO"));
  }

  @Test
  void aCodeThatTheFileHasElsewhereIsNotAmongThem() {
    assertEquals(
        Set.of("BLU", "GRN", "GRY", "HAZ", "MAR", "MUL", "PNK", "XXX"),
        everMade(31, "BRO", "BRO", "BLK"));
  }

  /** With two or three codes the one that never comes would be the one that was there. */
  @Test
  void ofFewerThanFourCodesTheOriginalIsOneThatMayComeToo() {
    assertEquals(Set.of("N", "Y"), everMade(35, "Y"));
    String[] allButThree = {"BLU", "GRN", "GRY", "HAZ", "MAR", "MUL", "PNK", "XXX"};
    assertTrue(everMade(31, "BRO", allButThree).contains("BRO"));
  }

  @Test
  void ofFourCodesItIsNot() {
    assertEquals(
        Set.of("BLK", "BLU", "GRN"),
        everMade(31, "BRO", "BRO", "GRY", "HAZ", "MAR", "MUL", "PNK", "XXX"));
  }

  @Test
  void aWrongEyeColorStaysWrong() {
    assertAll(
        everMade(31, "QQQ", "QQQ"),
        made ->
            made.matches("[A-Z]{3}")
                && !made.equals("QQQ")
                && SampleCard.TABLES.codes("eye-colours").find(made, VERSION).isEmpty());
  }

  @Test
  void aBirthplaceBecomesAnotherOfTheTable() {
    Set<String> made = everMade(20, "MD", "MD");
    assertFalse(made.contains("MD"));
    assertAll(made, code -> SampleCard.TABLES.codes("birthplaces").find(code, VERSION).isPresent());
  }

  @Test
  void aHeightStaysOneAndAnImpossibleHeightImpossible() {
    String height = "[4-7](0[0-9]|1[01])";
    assertAll(everMade(27, "511", "511"), made -> made.matches(height) && !made.equals("511"));
    assertAll(
        everMade(27, "599", "599"), made -> made.matches("[0-9]{3}") && !made.matches(height));
    assertAll(everMade(27, "N65", "N65"), made -> made.matches("N[0-9]{2}"));
  }

  @Test
  void aNumberOfTheOfficeStaysOneThatIsIssued() {
    Set<String> made = everMade(16, "507218344", "507218344");
    assertAll(
        made,
        number ->
            number.matches("[0-9]{9}")
                && !number.matches("(000|666|9..).*|...00....|.....0000|([0-9])\\1{8}|123456789"));
  }

  @Test
  void aNumberThatIsNeverIssuedStaysSuchANumber() {
    assertAll(everMade(16, "900121234", "900121234"), made -> made.matches("9[0-9]{8}"));
  }

  @Test
  void aDateIsReplacedByOneOfTheSameOrder() {
    assertAll(
        everMade(22, "19900214", "19900214"),
        made -> made.matches("19[78][0-9]{5}") && !made.equals("19900214"));
  }

  @Test
  void eightDigitsOfAFieldOfNoDateAreANumber() {
    Set<String> made = everMade(9, "19900214", "19900214");
    assertTrue(made.stream().anyMatch(number -> number.compareTo("2") > 0), made.toString());
    assertFalse(made.contains("19900214"));
  }

  @Test
  void moreThanEightDigitsOfADateAreADateNoLonger() {
    assertAll(everMade(22, "199002141", "199002141"), made -> made.matches("[0-9]{9}"));
  }

  @Test
  void ofATimeBothDayAndClockAreReplaced() {
    FieldNumber gmt = new FieldNumber(1, 14);
    Set<String> days = new TreeSet<>();
    Set<String> clocks = new TreeSet<>();
    for (int salt = 0; salt < FILES; salt++) {
      String made = values(salt).inPlaceOf("20260302101562Z", 15, gmt, 1, 0);
      assertTrue(made.matches("202[0-5][0-9]{4}([01][0-9]|2[0-3])[0-5][0-9]62Z"), made);
      days.add(made.substring(0, 8));
      clocks.add(made.substring(8, 14));
    }
    assertTrue(days.size() > FILES / 2 && clocks.size() > FILES / 2, days + " " + clocks);
    assertFalse(days.contains("20260302"));
  }

  @Test
  void noWordOfTheOriginalOccursInWhatIsMadeUp() {
    String[] known = {"ADA", "507", "BOB"};
    assertAll(
        everMade(9, "ADA507", known),
        made -> made.matches("[A-Z]{3}[0-9]{3}") && !made.matches(".*(ADA|507|BOB).*"));
  }

  /** Words that are all that chance could make: none of them is kept for want of another. */
  @Test
  void whereEveryValueIsAKnownWordFillerTakesItsPlace() {
    String[] all = new String[1000];
    for (int i = 0; i < all.length; i++) {
      all[i] = String.valueOf(1000 + i).substring(1);
    }
    assertEquals("000", made(values(1, all), 9, "507"));
    assertEquals("A-0000".replace('A', 'X'), made(values(1, all), 9, "Q-5071"));
  }

  @Test
  void whereNoneIsAsRightAnotherIsTakenAllTheSame() {
    // The one value that counts in order: no other is filler in this way.
    assertAll(
        everMade(16, "123456789", "123456789"),
        made -> made.matches("[0-9]{9}") && !made.equals("123456789") && !made.equals("000000000"));
  }

  /** A form that few values of its kind have is found among the characters of the value. */
  @Test
  void anIdentificationNumberKeepsItsHyphen() {
    assertAll(
        everMade(17, "AR-1234567", "AR-1234567", "1234567"),
        made -> made.matches("[A-Z]{2}-[0-9]{7}") && !made.contains("1234567"));
  }

  @Test
  void theSameValueOfAFileBecomesTheSameAndAnotherAttemptAnother() {
    SyntheticValues values = values(1);
    String name = made(values, 18, "SPECIMEN,ADA");
    assertEquals(name, made(values(1), 18, "SPECIMEN,ADA"));
    assertTrue(name.matches("[A-Z]{8},[A-Z]{3}"), name);
    assertNotEquals(name, values.inPlaceOf("SPECIMEN,ADA", 12, new FieldNumber(2, 18), 1, 1));
    assertNotEquals(name, made(values(2), 18, "SPECIMEN,ADA"));
  }

  @Test
  void aValueOfAFieldThatNoLayoutKnowsIsReplacedToo() {
    SyntheticValues values = values(1, "ADA");
    String made = values.inPlaceOf("ADA 12", 6, new FieldNumber(77, 5), 1, 0);
    assertTrue(made.matches("[A-Z]{3} [0-9]{2}") && !made.startsWith("ADA"), made);
  }

  @Test
  void eightDigitsOfAFieldOfOtherRulesAreNoDate() {
    assertTrue(everMade(27, "19900214").stream().anyMatch(made -> !made.startsWith("19")));
  }

  @Test
  void noCodeOfALaterVersionTakesThePlaceOfOne() {
    Set<String> made = everMade(91, "12");
    assertEquals(20, made.size());
    assertTrue(made.contains("50") && !made.contains("51"), made.toString());
  }

  @Test
  void aDeviceKeepsTheLetterThatItsNumberMustBeginWith() {
    FieldNumber device = new FieldNumber(14, 903);
    for (int salt = 0; salt < FILES; salt++) {
      String right = values(salt).inPlaceOf("P12345678901Q", 13, device, 1, 0);
      assertTrue(right.matches("[MP][0-9]{11}[A-Z]"), right);
      String wrong = values(salt).inPlaceOf("Q12345678901Q", 13, device, 1, 0);
      assertTrue(wrong.matches("[A-LNOQ-Z][0-9]{11}[A-Z]"), wrong);
    }
  }

  /** Chance alone makes one such number of a thousand. */
  @Test
  void aRareFormIsFoundAmongTheCharactersOfTheValue() {
    assertAll(
        everMade(16, "666161661", "666161661"),
        made -> made.matches("666[0-9]{6}") && !made.equals("666161661"));
  }

  @Test
  void charactersThatTheValueDoesNotHaveComeFirst() {
    assertTrue(
        everMade(18, "SPECIMEN,ADA").stream().allMatch(made -> !made.matches("[SPECIMNAD,]*")));
  }
}
