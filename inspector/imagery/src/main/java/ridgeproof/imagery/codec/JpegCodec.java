package ridgeproof.imagery.codec;

import java.util.Set;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageCodec;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.transaction.record.ByteSource;

/** Sequential and progressive DCT JPEG of 8 bits (ITU-T T.81), by the JDK's reader. */
public final class JpegCodec implements ImageCodec {

  @Override
  public Set<ImageFormat> formats() {
    return Set.of(ImageFormat.JPEG);
  }

  @Override
  public Decoding decode(ByteSource codestream, StatedSize stated, DecodingLimits limits) {
    return ImageIoDecoder.run(codestream, warnings -> JdkImageReaders.open("jpeg"), limits);
  }
}
