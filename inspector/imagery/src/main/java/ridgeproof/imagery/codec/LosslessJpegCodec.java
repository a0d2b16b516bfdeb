package ridgeproof.imagery.codec;

import com.twelvemonkeys.imageio.plugins.jpeg.JPEGImageReaderSpi;
import java.io.IOException;
import java.util.Set;
import javax.imageio.ImageReader;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageCodec;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.transaction.record.ByteSource;

/** Lossless JPEG (ITU-T T.81 Annex H), by the TwelveMonkeys library. */
public final class LosslessJpegCodec implements ImageCodec {

  @Override
  public Set<ImageFormat> formats() {
    return Set.of(ImageFormat.JPEG_LOSSLESS);
  }

  @Override
  public Decoding decode(ByteSource codestream, StatedSize stated, DecodingLimits limits) {
    return ImageIoDecoder.run(LosslessTables.ofFirstClass(codestream), warnings -> open(), limits);
  }

  private static ImageReader open() throws IOException {
    JPEGImageReaderSpi provider = new JPEGImageReaderSpi();
    // It looks up the JDK's JPEG reader here, which it needs for all that is not lossless.
    provider.onRegistration(IIORegistry.getDefaultInstance(), ImageReaderSpi.class);
    return provider.createReaderInstance();
  }
}
