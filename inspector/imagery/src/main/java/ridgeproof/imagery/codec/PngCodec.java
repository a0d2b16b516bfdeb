package ridgeproof.imagery.codec;

import java.util.Set;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageCodec;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.transaction.record.ByteSource;

/** PNG (ISO/IEC 15948), by the JDK's reader. */
public final class PngCodec implements ImageCodec {

  @Override
  public Set<ImageFormat> formats() {
    return Set.of(ImageFormat.PNG);
  }

  @Override
  public Decoding decode(ByteSource codestream, StatedSize stated, DecodingLimits limits) {
    return ImageIoDecoder.run(codestream, warnings -> JdkImageReaders.open("png"), limits);
  }
}
