package ridgeproof.cli.option;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import ridgeproof.spec.layout.FieldNumber;

/** Reads a field number such as 2.2102. */
public final class FieldNumberConverter implements ITypeConverter<FieldNumber> {

  @Override
  public FieldNumber convert(String text) {
    try {
      return FieldNumber.parse(text);
    } catch (IllegalArgumentException e) {
      throw new TypeConversionException("\"" + text + "\" is not a field number such as 2.2102");
    }
  }
}
