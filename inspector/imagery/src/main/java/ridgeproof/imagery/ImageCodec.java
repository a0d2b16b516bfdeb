package ridgeproof.imagery;

import java.util.Set;
import ridgeproof.transaction.record.ByteSource;

/** Turns the codestreams of some formats into pixels. */
public interface ImageCodec {

  /** The formats it decodes. */
  Set<ImageFormat> formats();

  /** Decodes; damage ends in a defect, never in an exception. */
  Decoding decode(ByteSource codestream, StatedSize stated, DecodingLimits limits);

  /**
   * What the record says of its image, for formats that say nothing themselves.
   *
   * @param width pixels
   * @param height pixels
   * @param bitsPerPixel 1, 8, 16 or 24
   */
  record StatedSize(int width, int height, int bitsPerPixel) {}
}
