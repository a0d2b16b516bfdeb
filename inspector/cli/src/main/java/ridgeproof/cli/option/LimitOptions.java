package ridgeproof.cli.option;

import java.time.Duration;
import java.util.OptionalLong;
import picocli.CommandLine.Option;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.transaction.reader.ParseLimits;

/** The limits that every command reading a file has. */
public final class LimitOptions {

  private static final long MEGA = 1_000_000L;

  @Option(
      names = "--max-file-size",
      paramLabel = "SIZE",
      defaultValue = "512M",
      converter = SizeConverter.class,
      description = "largest file to read (default: 512M)")
  public long maxFileSize;

  @Option(
      names = "--max-records",
      paramLabel = "N",
      defaultValue = "10000",
      converter = PositiveConverter.class,
      description = "largest number of records to read from a file (default: 10000)")
  int maxRecords;

  @Option(
      names = "--max-items",
      paramLabel = "N",
      defaultValue = "1000000",
      converter = PositiveConverter.class,
      description = "largest number of information items to read from a file (default: 1000000)")
  int maxItems;

  @Option(
      names = "--max-findings",
      paramLabel = "N",
      defaultValue = "10000",
      converter = PositiveConverter.class,
      description = "largest number of findings to keep for a file (default: 10000)")
  int maxFindings;

  @Option(
      names = "--max-pixels",
      paramLabel = "MPX",
      defaultValue = "200",
      converter = PositiveConverter.class,
      description = "largest image to decode, in millions of pixels (default: 200)")
  int maxMegapixels;

  @Option(
      names = "--image-time",
      paramLabel = "SECONDS",
      defaultValue = "60",
      converter = PositiveConverter.class,
      description = "longest time for one image, in seconds (default: 60)")
  int imageSeconds;

  @Option(
      names = "--file-pixels",
      paramLabel = "MPX",
      converter = PositiveConverter.class,
      description =
          "largest total for the images of a file, in millions of pixels; each color counts"
              + " (default: 40, plus 30 for each million bytes of the file)")
  Integer fileMegapixels;

  @Option(
      names = "--file-time",
      paramLabel = "SECONDS",
      defaultValue = "120",
      converter = PositiveConverter.class,
      description = "longest time for all images of a file, in seconds (default: 120)")
  int fileSeconds;

  public ParseLimits reading() {
    return new ParseLimits(
        (int) Math.min(maxFileSize, Integer.MAX_VALUE), maxRecords, maxItems, maxFindings);
  }

  public DecodingLimits decoding() {
    return new DecodingLimits(
        maxMegapixels * MEGA,
        Duration.ofSeconds(imageSeconds),
        fileMegapixels == null ? OptionalLong.empty() : OptionalLong.of(fileMegapixels * MEGA),
        Duration.ofSeconds(fileSeconds));
  }
}
