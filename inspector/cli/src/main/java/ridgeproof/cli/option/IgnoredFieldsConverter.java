package ridgeproof.cli.option;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import ridgeproof.examination.comparison.IgnoredFields;

/** Reads a list of fields such as {@code LEN,1.005}. */
public final class IgnoredFieldsConverter implements ITypeConverter<IgnoredFields> {

  @Override
  public IgnoredFields convert(String value) {
    try {
      return IgnoredFields.parse(value);
    } catch (IllegalArgumentException e) {
      throw new TypeConversionException("'" + value + "' is not a list such as LEN,1.005,1.014");
    }
  }
}
