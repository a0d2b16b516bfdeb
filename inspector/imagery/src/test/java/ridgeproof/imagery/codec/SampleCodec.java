package ridgeproof.imagery.codec;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageCodec;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.transaction.record.ByteSource;

/** A sample: decodes whatever it is given as two pixels. */
final class SampleCodec implements ImageCodec {

  @Override
  public Set<ImageFormat> formats() {
    return Set.of(ImageFormat.PNG);
  }

  @Override
  public Decoding decode(ByteSource codestream, StatedSize stated, DecodingLimits limits) {
    GrayImage image = GrayImage.owning(2, 1, new byte[] {7, 9});
    return new Decoding(Optional.of(image), List.of());
  }
}
