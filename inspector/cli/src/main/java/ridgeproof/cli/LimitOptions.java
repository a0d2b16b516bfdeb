package ridgeproof.cli;

import java.time.Duration;
import picocli.CommandLine.Option;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.transaction.ReadingLimits;

/** The limits that every command reading a file has. */
final class LimitOptions {

  @Option(
      names = "--max-file-size",
      paramLabel = "SIZE",
      defaultValue = "512M",
      converter = SizeConverter.class,
      description = "largest file that is read, 512M unless set")
  long maxFileSize;

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

  ReadingLimits reading() {
    ReadingLimits standard = ReadingLimits.standard();
    return new ReadingLimits(
        (int) Math.min(maxFileSize, Integer.MAX_VALUE),
        maxRecords,
        standard.maxItems(),
        standard.maxFindings());
  }

  DecodingLimits decoding() {
    return new DecodingLimits(maxMegapixels * 1_000_000L, Duration.ofSeconds(imageSeconds));
  }
}
