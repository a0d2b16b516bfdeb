package ridgeproof.spec.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CalendarTest {

  private static final DateTimeFormatter STRICT =
      DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

  private static Optional<LocalDate> asTheJdkReads(String text) {
    try {
      return Optional.of(LocalDate.parse(text, STRICT));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  @Test
  void everyMonthAndDayIsReadAsTheJdkReadsIt() {
    for (String year : List.of("0000", "0001", "1582", "1900", "2000", "2023", "2024", "9999")) {
      for (int month = 0; month <= 13; month++) {
        for (int day = 0; day <= 32; day++) {
          String text = year + String.format(Locale.ROOT, "%02d%02d", month, day);
          assertEquals(asTheJdkReads(text), Calendar.date(text), text);
        }
      }
    }
  }

  @Test
  void whatIsNotEightDigitsIsNoDate() {
    for (String text :
        List.of(
            "",
            "2024011",
            "202401011",
            "2024-1-1",
            "+2024101",
            "-2024101",
            " 2024101",
            "2024O101",
            "２０２４０１０１")) {
      assertEquals(Optional.empty(), Calendar.date(text), text);
    }
  }
}
