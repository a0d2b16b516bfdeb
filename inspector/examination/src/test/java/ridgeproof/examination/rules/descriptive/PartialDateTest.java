package ridgeproof.examination.rules.descriptive;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PartialDateTest {

  @ParameterizedTest
  @CsvSource({
    "19900200, 1990-02-01, 1990-02-28",
    "20240200, 2024-02-01, 2024-02-29",
    "19901200, 1990-12-01, 1990-12-31",
    "19900214, 1990-02-14, 1990-02-14"
  })
  void aDateWithoutADayMayBeAnyDayOfItsMonth(String text, LocalDate first, LocalDate last) {
    assertEquals(Optional.of(first), PartialDate.earliest(text));
    assertEquals(Optional.of(last), PartialDate.latest(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"00000000", "19900000", "19901300", "19900231", "199000", "1990020000"})
  void whatIsNoMonthOfTheCalendarIsNoDate(String text) {
    assertEquals(Optional.empty(), PartialDate.earliest(text));
    assertEquals(Optional.empty(), PartialDate.latest(text));
  }
}
