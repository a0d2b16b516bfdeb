package ridgeproof.cli.option;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import ridgeproof.examination.facts.Depth;

/** Reads {@code structure}, {@code images} or {@code ridges}. */
public final class DepthConverter implements ITypeConverter<Depth> {

  @Override
  public Depth convert(String value) {
    return switch (value) {
      case "structure" -> Depth.STRUCTURE;
      case "images" -> Depth.IMAGES;
      case "ridges" -> Depth.RIDGES;
      default ->
          throw new TypeConversionException("'" + value + "' is not structure, images, or ridges");
    };
  }
}
