package ridgeproof.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import ridgeproof.spec.FieldNumber;

/** Reads a field number such as 2.2102. */
final class FieldNumberConverter implements ITypeConverter<FieldNumber> {

  @Override
  public FieldNumber convert(String text) {
    try {
      return FieldNumber.parse(text);
    } catch (IllegalArgumentException e) {
      throw new TypeConversionException("\"" + text + "\" is not a field number such as 2.2102");
    }
  }
}
