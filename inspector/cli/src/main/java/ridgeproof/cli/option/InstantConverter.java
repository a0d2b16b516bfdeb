package ridgeproof.cli.option;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a time with its offset from UTC, as ISO 8601 writes it. */
public final class InstantConverter implements ITypeConverter<Instant> {

  @Override
  public Instant convert(String value) {
    try {
      return OffsetDateTime.parse(value).toInstant();
    } catch (DateTimeException e) {
      throw new TypeConversionException(
          "'" + value + "' is not a time such as 2026-03-02T10:15:00Z");
    }
  }
}
