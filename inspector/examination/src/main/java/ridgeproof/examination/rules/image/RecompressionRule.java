package ridgeproof.examination.rules.image;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.PixelStatistics;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.record.ByteSource;

/** A field holds one codestream, and its pixels were not compressed in another way before. */
final class RecompressionRule implements Rule {

  /** A marker and a size; less can only be a fragment. */
  private static final int MIN_CODESTREAM = 16;

  /** How much of what follows an image is searched for another. */
  private static final int SEARCHED_BYTES = 1 << 20;

  /** Names of lossy algorithms in the comments of fingerprint software (common practice). */
  private static final Map<String, ImageFormat> LOSSY_NAMES =
      Map.of(
          "WSQ", ImageFormat.WSQ,
          "WSQ20", ImageFormat.WSQ,
          "JPEGB", ImageFormat.JPEG,
          "JP2", ImageFormat.JPEG_2000);

  /** Comment keys that only the encoder of one format writes. */
  private static final Map<String, ImageFormat> KEYS_OF_LOSSY =
      Map.of("WSQ_BITRATE", ImageFormat.WSQ, "JPEGB_QUALITY", ImageFormat.JPEG);

  @Override
  public Set<String> ids() {
    return Set.of("RP-IMG-030", "RP-IMG-031", "RP-IMG-032");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    for (ExaminedImage image : examinee.prints()) {
      image.header().ifPresent(header -> check(image, header, log));
    }
  }

  private static void check(ExaminedImage image, ImageHeader header, FindingLog log) {
    follower(image.data().get(), header)
        .ifPresent(
            next ->
                log.add(
                    "RP-IMG-030",
                    image.location().at(next.range()),
                    Observed.of(
                        String.format(
                            Locale.ROOT,
                            "%s after the %s, at byte %d",
                            ImageHeaders.formatOf(next).label(),
                            header.format().label(),
                            next.origin())),
                    "one codestream"));
    earlier(header)
        .ifPresent(
            format ->
                log.add(
                    "RP-IMG-031",
                    image.atData(),
                    Observed.of(
                        String.format(
                            Locale.ROOT,
                            "%s; the comment names %s",
                            header.format().label(),
                            format)),
                    "an image compressed only once"));
    image
        .pixels()
        .flatMap(PixelStatistics::hidden)
        .filter(format -> header.format() != ImageFormat.RAW)
        .ifPresent(
            format ->
                log.add(
                    "RP-IMG-032",
                    image.atData(),
                    Observed.of(
                        String.format(
                            Locale.ROOT,
                            "%s whose pixels are the bytes of a %s",
                            header.format().label(),
                            format.label())),
                    "the pixels of a print"));
  }

  /** The codestream that begins behind the first, perhaps after some filling bytes. */
  private static Optional<ByteSource> follower(ByteSource data, ImageHeader header) {
    int end = header.extent().offset() + header.extent().length() - data.origin();
    if (header.format() == ImageFormat.RAW) {
      return Optional.empty();
    }
    int last = Math.min(data.length() - MIN_CODESTREAM, end + SEARCHED_BYTES);
    for (int at = end; at <= last; at++) {
      ByteSource rest = data.from(at);
      if (ImageHeaders.formatOf(rest) != ImageFormat.RAW && ImageHeaders.read(rest).width() > 0) {
        return Optional.of(rest);
      }
    }
    return Optional.empty();
  }

  /** What the comments say of a lossy compression that is not the one at hand. */
  private static Optional<String> earlier(ImageHeader header) {
    for (Map.Entry<String, String> comment : header.comments().entrySet()) {
      // Of two comments with the same keys, those of the second are numbered.
      String key = comment.getKey().replaceFirst(" \\d+$", "").toUpperCase(Locale.ROOT);
      String value = comment.getValue().strip().toUpperCase(Locale.ROOT);
      ImageFormat named =
          key.equals("COMPRESSION") ? LOSSY_NAMES.get(value) : KEYS_OF_LOSSY.get(key);
      if (named != null && named != header.format()) {
        return Optional.of(named.label());
      }
      boolean reversible = header.lossless().orElse(false);
      if (key.equals("LOSSY") && value.equals("1") && reversible) {
        return Optional.of("an earlier lossy compression");
      }
    }
    return Optional.empty();
  }
}
