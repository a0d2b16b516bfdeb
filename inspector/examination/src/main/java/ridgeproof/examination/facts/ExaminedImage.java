package ridgeproof.examination.facts;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import ridgeproof.finding.Location;
import ridgeproof.imagery.ImageCodec.StatedSize;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.imagery.measure.GrayLevelStatistics;
import ridgeproof.spec.consistency.ImageRecordRow;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * An image record: what the record says of its image and, once opened, what the image says of
 * itself.
 *
 * @param positions friction ridge position codes, fillers left out
 * @param impression impression type code
 * @param width pixels as the record states them
 * @param height pixels as the record states them
 * @param bitsPerPixel as the record states or its type fixes it
 * @param density as the record or the Type-1 record states it
 * @param compression the code of the compression field
 * @param statedFormat what the code stands for
 * @param data the bytes of the image
 * @param header what the codestream says; empty at structure depth
 * @param pixels what is kept of the decoded pixels; empty at structure depth and where decoding
 *     failed
 * @param decodingDefects what decoding met
 * @param ridges what the ridges show; empty at lesser depths and where no finger was laid down
 */
public record ExaminedImage(
    LogicalRecord record,
    ImageRecordRow layout,
    List<Integer> positions,
    OptionalInt impression,
    OptionalInt width,
    OptionalInt height,
    OptionalInt bitsPerPixel,
    Optional<PixelDensity> density,
    Optional<String> compression,
    Optional<ImageFormat> statedFormat,
    Optional<ByteSource> data,
    Optional<ImageHeader> header,
    Optional<PixelStatistics> pixels,
    List<ImageDefect> decodingDefects,
    Optional<RidgeAnalysis> ridges) {

  public ExaminedImage opened(
      ImageHeader found,
      Optional<PixelStatistics> measured,
      List<ImageDefect> defects,
      Optional<RidgeAnalysis> seen) {
    return new ExaminedImage(
        record,
        layout,
        positions,
        impression,
        width,
        height,
        bitsPerPixel,
        density,
        compression,
        statedFormat,
        data,
        Optional.of(found),
        measured,
        defects,
        seen);
  }

  /** The first position, where there is one. */
  public OptionalInt position() {
    return positions.isEmpty() ? OptionalInt.empty() : OptionalInt.of(positions.get(0));
  }

  /** The ordinals of the records of these images. */
  public static Set<Integer> ordinals(Collection<ExaminedImage> images) {
    return images.stream().map(image -> image.record.ordinal()).collect(Collectors.toSet());
  }

  /** What was measured of the print; empty where the gray levels mean nothing. */
  public Optional<GrayLevelStatistics> print() {
    return pixels.flatMap(PixelStatistics::print);
  }

  /** Where a finding on one finger of the image is. */
  public Location location(FingerPosition finger) {
    return location().withPosition(OptionalInt.of(finger.code()));
  }

  public Location location() {
    return Location.of(record).withPosition(position());
  }

  /** The place of a field of this record; of the record where the field is absent. */
  public Location at(FieldNumber number) {
    Location place = location().in(number);
    return record.field(number).map(field -> place.at(field.range())).orElse(place);
  }

  /** Where the image bytes stand. */
  public Location atData() {
    return data.map(bytes -> location().at(bytes.range())).orElse(location());
  }

  /** Pixels across: of the image itself where it says so, else as the record states them. */
  public OptionalInt trueWidth() {
    return own(ImageHeader::width, width);
  }

  /** Pixels down: of the image itself where it says so, else as the record states them. */
  public OptionalInt trueHeight() {
    return own(ImageHeader::height, height);
  }

  private OptionalInt own(ToIntFunction<ImageHeader> size, OptionalInt stated) {
    return header
        .filter(found -> found.format() != ImageFormat.RAW)
        .map(size::applyAsInt)
        .filter(pixels -> pixels > 0)
        .map(OptionalInt::of)
        .orElse(stated);
  }

  /** What a codec needs to know where the image itself says nothing; 0 for what is not stated. */
  StatedSize statedSize() {
    return new StatedSize(width.orElse(0), height.orElse(0), bitsPerPixel.orElse(0));
  }

  /** Bytes of the pixels, uncompressed, for each byte of the codestream. */
  public Optional<Double> compressionRatio() {
    if (width.isEmpty() || height.isEmpty() || bitsPerPixel.isEmpty() || data.isEmpty()) {
      return Optional.empty();
    }
    long bits = (long) width.getAsInt() * height.getAsInt() * bitsPerPixel.getAsInt();
    return data.get().isEmpty() ? Optional.empty() : Optional.of(bits / 8.0 / data.get().length());
  }
}
