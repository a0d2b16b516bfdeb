package ridgeproof.imagery.codec;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageCodec;
import ridgeproof.imagery.ImageCodec.StatedSize;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.transaction.record.ByteSource;

/** Picks the codec of a format; a library is loaded only once an image needs it. */
public final class ImageCodecs {

  private final Map<ImageFormat, ImageCodec> replaced;

  private ImageCodecs(Map<ImageFormat, ImageCodec> replaced) {
    this.replaced = replaced;
  }

  /** The codecs of this package. */
  public static ImageCodecs standard() {
    return new ImageCodecs(Map.of());
  }

  /** The same codecs, but with this one for the formats it decodes. */
  public ImageCodecs with(ImageCodec codec) {
    Map<ImageFormat, ImageCodec> more = new EnumMap<>(ImageFormat.class);
    more.putAll(replaced);
    codec.formats().forEach(format -> more.put(format, codec));
    return new ImageCodecs(more);
  }

  /** Why an image is refused by what its header states, before any work, if so. */
  public static Optional<ImageDefect> refusal(
      ByteSource codestream, ImageHeader header, DecodingLimits limits) {
    return ImageSizeGuard.refusal(codestream, header, limits);
  }

  /**
   * Decodes an image.
   *
   * @param header what {@link ridgeproof.imagery.header.ImageHeaders} read of the codestream
   * @param stated used where the codestream says nothing of its size
   * @return the image, or a defect that says why there is none; never an exception
   */
  public Decoding decode(
      ByteSource codestream, ImageHeader header, StatedSize stated, DecodingLimits limits) {
    Optional<ImageDefect> refusal = refusal(codestream, header, limits);
    if (refusal.isPresent()) {
      return Decoding.failed(refusal.get());
    }
    return codecOf(header.format()).decode(codestream, stated, limits);
  }

  /**
   * Decodes what a record says is CCITT Group 4 (ITU-T T.6): coded data alone, whose size the
   * record states, or in a TIFF file.
   */
  public Decoding decodeGroup4(ByteSource codestream, StatedSize stated, DecodingLimits limits) {
    return codecOf(ImageFormat.TIFF).decode(codestream, stated, limits);
  }

  /** Decodes what a record says are the points of a pen. */
  public Decoding decodePenVectors(ByteSource points, StatedSize stated, DecodingLimits limits) {
    return codecOf(ImageFormat.PEN_VECTORS).decode(points, stated, limits);
  }

  /** A switch and no table of objects, so that the other codecs' classes stay unloaded. */
  private ImageCodec codecOf(ImageFormat format) {
    ImageCodec replacement = replaced.get(format);
    if (replacement != null) {
      return replacement;
    }
    return switch (format) {
      case WSQ -> new WsqCodec();
      case JPEG -> new JpegCodec();
      case JPEG_LOSSLESS -> new LosslessJpegCodec();
      case JPEG_2000 -> new Jpeg2000Codec();
      case PNG -> new PngCodec();
      case TIFF, GROUP_4 -> new Group4Codec();
      case PEN_VECTORS -> new PenVectorCodec();
      case RAW -> new RawCodec();
    };
  }
}
