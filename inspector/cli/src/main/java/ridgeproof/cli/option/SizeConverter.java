package ridgeproof.cli.option;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads sizes such as 512M. */
final class SizeConverter implements ITypeConverter<Long> {

  private static final Pattern SIZE = Pattern.compile("([0-9]{1,9})([KMG]?)");

  @Override
  public Long convert(String value) {
    Matcher matcher = SIZE.matcher(value.toUpperCase(Locale.ROOT));
    if (!matcher.matches()) {
      throw new TypeConversionException("'" + value + "' is not a size such as 512M");
    }
    int shift =
        switch (matcher.group(2)) {
          case "K" -> 10;
          case "M" -> 20;
          case "G" -> 30;
          default -> 0;
        };
    long number = Long.parseLong(matcher.group(1));
    if (number == 0) {
      throw new TypeConversionException("'" + value + "' is not a size: the minimum is 1");
    }
    return Math.min(Math.min(number, Integer.MAX_VALUE) << shift, Integer.MAX_VALUE);
  }
}
