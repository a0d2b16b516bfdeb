package ridgeproof.cli.option;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A day as 2026-03-02 or, as the files have it, 20260302. */
public final class DateConverter implements ITypeConverter<LocalDate> {

  private static final int DIGITS = 8;

  @Override
  public LocalDate convert(String text) {
    try {
      return text.length() == DIGITS
          ? LocalDate.parse(text, DateTimeFormatter.BASIC_ISO_DATE)
          : LocalDate.parse(text, DateTimeFormatter.ISO_LOCAL_DATE);
    } catch (DateTimeParseException e) {
      throw new TypeConversionException("'" + text + "' is not a date such as 2026-03-02");
    }
  }
}
