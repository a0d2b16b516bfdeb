package ridgeproof.cli.option;

import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads limits that are counted: whole numbers from 1. */
final class PositiveConverter implements ITypeConverter<Integer> {

  private static final Pattern NUMBER = Pattern.compile("0*[1-9][0-9]{0,8}");

  @Override
  public Integer convert(String value) {
    if (!NUMBER.matcher(value).matches()) {
      throw new TypeConversionException(
          "'" + value + "' is not a whole number from 1 to 999999999");
    }
    return Integer.valueOf(value);
  }
}
