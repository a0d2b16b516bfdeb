package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
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
}
