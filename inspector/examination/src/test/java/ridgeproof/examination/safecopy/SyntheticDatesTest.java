package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.spec.layout.Calendar;
import ridgeproof.transaction.record.ByteSource;

class SyntheticDatesTest {

  private static final LocalDate SENT = LocalDate.of(2026, 3, 2);

  private static SyntheticDates dates(int salt) {
    KeyedRandom secret = KeyedRandom.of(ByteSource.of(new byte[] {(byte) salt}));
    return new SyntheticDates(secret, SENT, Set.of(SENT));
  }

  @Test
  void theOrderOfDatesStays() {
    List<String> order =
        List.of("19121231", "19880417", "20140102", "20260101", "20260302", "20260303", "20310101");
    for (int salt = 0; salt < 100; salt++) {
      SyntheticDates dates = dates(salt);
      List<String> made = order.stream().map(dates::inPlaceOf).toList();
      assertEquals(made.stream().sorted().distinct().toList(), made);
      for (int i = 0; i < made.size(); i++) {
        assertTrue(Calendar.date(made.get(i)).isPresent(), made.get(i));
        assertNotEquals(order.get(i), made.get(i));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"20261399", "19880230", "17041988", "19881704", "99999999", "04171988"})
  void whatIsNoDateStaysNone(String text) {
    for (int salt = 0; salt < 100; salt++) {
      String made = dates(salt).inPlaceOf(text);
      assertNotEquals(text, made);
      assertEquals(8, made.length());
      assertFalse(Calendar.date(made).isPresent(), made);
    }
  }

  @Test
  void theMonthThatDoesNotExistStays() {
    assertEquals("13", dates(1).inPlaceOf("20261305").substring(4, 6));
  }

  @Test
  void aDayThatIsNotKnownStaysUnknown() {
    String made = dates(1).inPlaceOf("19880400");
    assertTrue(made.endsWith("00") && !made.equals("19880400"), made);
    assertEquals("00000000", dates(1).inPlaceOf("00000000"));
  }

  @Test
  void aTimeOfDayThatExistsStaysOne() {
    String made = dates(1).clockInPlaceOf("101561");
    assertTrue(made.matches("([01][0-9]|2[0-3])[0-5][0-9]61"), made);
  }

  private static Set<String> everMade(String text) {
    Set<String> made = new TreeSet<>();
    for (int salt = 0; salt < 100; salt++) {
      made.add(dates(salt).inPlaceOf(text));
    }
    return made;
  }

  private static Set<String> parts(String text, int from, int to) {
    return everMade(text).stream()
        .map(made -> made.substring(from, to))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void noDateOfTheFileComesOutForAnother() {
    for (int salt = 0; salt < 100; salt++) {
      KeyedRandom secret = KeyedRandom.of(ByteSource.of(new byte[] {(byte) salt}));
      LocalDate moved = Calendar.date(dates(salt).inPlaceOf("20260302")).orElseThrow();
      Set<LocalDate> both = Set.of(SENT, moved);
      String again = new SyntheticDates(secret, SENT, both).inPlaceOf("20260302");
      assertFalse(both.contains(Calendar.date(again).orElseThrow()), again);
    }
  }

  private static long movedBack(int salt, LocalDate date) {
    String made = dates(salt).inPlaceOf(date.format(DateTimeFormatter.BASIC_ISO_DATE));
    return ChronoUnit.DAYS.between(Calendar.date(made).orElseThrow(), date);
  }

  @Test
  void datesOfMoreThanFiveYearsAgoAreMovedFurther() {
    Set<Long> further = new TreeSet<>();
    for (int salt = 0; salt < 100; salt++) {
      long back = movedBack(salt, SENT);
      assertTrue(back >= 400 && back < 2000, () -> "" + back);
      assertEquals(back, movedBack(salt, SENT.minusDays(5 * 365)));
      further.add(movedBack(salt, SENT.minusDays(5 * 365 + 1)) - back);
      assertEquals(
          movedBack(salt, SENT.minusDays(5 * 365 + 1)), movedBack(salt, SENT.minusYears(40)));
    }
    assertTrue(further.stream().allMatch(days -> days >= 0 && days < 2000), further.toString());
    assertTrue(further.size() > 80, further.toString());
  }

  @Test
  void aMonthWhoseDayIsNotKnownIsMovedAsItsFirstDayIs() {
    for (int salt = 0; salt < 100; salt++) {
      String first = dates(salt).inPlaceOf("19880401");
      assertEquals(first.substring(0, 6) + "00", dates(salt).inPlaceOf("19880400"));
    }
    assertEquals(Set.of("1300"), parts("19881300", 4, 8));
  }

  @ParameterizedTest
  @ValueSource(strings = {"17041850", "17042199"})
  void aDateTurnedRoundOfTheseCenturiesStaysTurnedRound(String text) {
    for (String made : everMade(text)) {
      String date = made.substring(4) + made.substring(2, 4) + made.substring(0, 2);
      assertTrue(Calendar.date(date).isPresent(), made);
    }
  }

  @Test
  void aDateWithTheMonthFirstStaysSo() {
    for (String made : everMade("04171988")) {
      String date = made.substring(4) + made.substring(0, 4);
      assertTrue(Calendar.date(date).isPresent() && date.compareTo("1988") < 0, made);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"19880132", "19881232"})
  void aDayThatDoesNotExistStaysInItsCenturyInAnyMonth(String text) {
    assertEquals(Set.of("19"), parts(text, 0, 2));
    assertTrue(parts(text, 2, 4).size() > 50, parts(text, 2, 4).toString());
    assertEquals(12, parts(text, 4, 6).size());
    assertTrue(
        parts(text, 6, 8).stream().allMatch(day -> day.compareTo("32") >= 0 && day.length() == 2));
    assertTrue(parts(text, 6, 8).size() > 40);
  }

  @ParameterizedTest
  @ValueSource(strings = {"19880005", "19881305"})
  void aMonthThatDoesNotExistStays(String text) {
    assertEquals(Set.of(text.substring(4, 6)), parts(text, 4, 6));
  }

  @ParameterizedTest
  @ValueSource(strings = {"19881301", "19881328"})
  void beforeADayThatEveryMonthHasThereIsAnyOther(String text) {
    Set<String> days = parts(text, 6, 8);
    assertTrue(days.size() > 20, days.toString());
    assertTrue(
        days.stream().allMatch(day -> day.compareTo("01") >= 0 && day.compareTo("28") <= 0),
        days.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"19881329", "19881331"})
  void aDayThatSomeMonthsHaveStaysOneOfThem(String text) {
    assertEquals(Set.of("29", "30", "31"), parts(text, 6, 8));
  }

  @Test
  void ofATimeEachPartThatDoesNotExistStays() {
    for (int salt = 0; salt < 100; salt++) {
      assertEquals("246060", dates(salt).clockInPlaceOf("246060"));
    }
    assertFalse(dates(1).clockInPlaceOf("235959").equals("235959"));
  }

  @Test
  void datesAreFoundWhicheverWayRoundTheyAre() {
    assertEquals(
        Set.of(
            LocalDate.of(1988, 4, 17), LocalDate.of(1990, 2, 14), LocalDate.of(1991, 12, 31), SENT),
        SyntheticDates.datesIn(
            List.of(
                "19880417",
                "14021990",
                "12311991",
                "20260302101500Z",
                "1988041",
                "1988O417",
                "198804/7",
                "1988041:",
                "",
                "99999999")));
  }

  @Test
  void datesUpToThatOfTheTransactionAreThePast() {
    Set<LocalDate> dates = Set.of(LocalDate.of(1988, 4, 17), LocalDate.of(2031, 1, 1));
    assertEquals(SENT, SyntheticDates.pivot(Optional.of("20260302"), dates));
    assertEquals(LocalDate.of(2031, 1, 1), SyntheticDates.pivot(Optional.of("2026"), dates));
    assertEquals(LocalDate.of(2031, 1, 1), SyntheticDates.pivot(Optional.empty(), dates));
    assertEquals(LocalDate.EPOCH, SyntheticDates.pivot(Optional.empty(), Set.of()));
  }
}
