package ridgeproof.examination.facts;

import java.util.List;
import java.util.Optional;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.codec.ImageCodecs;
import ridgeproof.transaction.record.ByteSource;

/**
 * Decodes the image of a record by what the bytes are, and by what the record says where they do
 * not tell.
 */
public final class RecordImageDecoder {

  private final ImageCodecs codecs = ImageCodecs.standard();

  /** Without pixels and without a defect where there is no way to decode it. */
  public Decoding decode(
      ExaminedImage image, ByteSource data, ImageHeader header, DecodingLimits limits) {
    Optional<ImageFormat> stated = image.statedFormat();
    if (header.format() == ImageFormat.RAW && stated.isEmpty()) {
      return new Decoding(Optional.empty(), List.of());
    }
    if (header.format() != ImageFormat.RAW) {
      return codecs.decode(data, header, image.statedSize(), limits);
    }
    return switch (stated.get()) {
      case GROUP_4 -> codecs.decodeGroup4(data, image.statedSize(), limits);
      case PEN_VECTORS -> codecs.decodePenVectors(data, image.statedSize(), limits);
      default -> codecs.decode(data, header, image.statedSize(), limits);
    };
  }
}
