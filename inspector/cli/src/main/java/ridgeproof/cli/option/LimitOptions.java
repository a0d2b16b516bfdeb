package ridgeproof.cli.option;

import java.time.Duration;
import java.util.OptionalLong;
import picocli.CommandLine.Option;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.transaction.reader.ReadingLimits;

/** The limits that every command reading a file has. */
public final class LimitOptions {

  private static final long MEGA = 1_000_000L;

  @Option(
      names = "--max-file-size",
      paramLabel = "SIZE",
      defaultValue = "512M",
      converter = SizeConverter.class,
      description = "largest file that is read, 512M unless set")
  public long maxFileSize;

  @Option(
      names = "--max-records",
      paramLabel = "N",
      defaultValue = "10000",
      converter = PositiveConverter.class,
      description = "most records of a file that are read, 10000 unless set")
  int maxRecords;

  @Option(
      names = "--max-pixels",
      paramLabel = "MPX",
      defaultValue = "200",
      converter = PositiveConverter.class,
      description = "largest image that is decoded, in million pixels, 200 unless set")
  int maxMegapixels;

  @Option(
      names = "--image-time",
      paramLabel = "SECONDS",
      defaultValue = "60",
      converter = PositiveConverter.class,
      description = "longest time for one image, 60 seconds unless set")
  int imageSeconds;

  @Option(
      names = "--file-pixels",
      paramLabel = "MPX",
      converter = PositiveConverter.class,
      description = {
        "most pixels of all images of a file together, in millions, colors counted singly",
        "(default: 40, and 30 for each million bytes of the file)"
      })
  Integer fileMegapixels;

  @Option(
      names = "--file-time",
      paramLabel = "SECONDS",
      defaultValue = "120",
      converter = PositiveConverter.class,
      description = "longest time for all images of a file (default: 120 seconds)")
  int fileSeconds;

  public ReadingLimits reading() {
    ReadingLimits standard = ReadingLimits.standard();
    return new ReadingLimits(
        (int) Math.min(maxFileSize, Integer.MAX_VALUE),
        maxRecords,
        standard.maxItems(),
        standard.maxFindings());
  }

  public DecodingLimits decoding() {
    return new DecodingLimits(
        maxMegapixels * MEGA,
        Duration.ofSeconds(imageSeconds),
        fileMegapixels == null ? OptionalLong.empty() : OptionalLong.of(fileMegapixels * MEGA),
        Duration.ofSeconds(fileSeconds));
  }
}
