package ridgeproof.imagery.codec;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jnbis.api.Jnbis;
import org.jnbis.api.model.Bitmap;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageCodec;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.record.ByteSource;

/** WSQ, by the public interface of jnbis. */
public final class JnbisWsqCodec implements ImageCodec {

  @Override
  public Set<ImageFormat> formats() {
    return Set.of(ImageFormat.WSQ);
  }

  @Override
  public Decoding decode(ByteSource codestream, StatedSize stated, DecodingLimits limits) {
    ImageHeader header = ImageHeaders.read(codestream);
    Optional<ImageDefect> refusal = ImageSizeGuard.refusal(codestream, header, limits);
    if (refusal.isPresent()) {
      return Decoding.failed(refusal.get());
    }
    // It cannot be stopped: past the time limit its daemon thread runs out by itself.
    return DecodingTimeout.run(
        () -> decoded(codestream, header), () -> {}, codestream.origin(), () -> "", limits);
  }

  private static Decoding decoded(ByteSource codestream, ImageHeader header) {
    Bitmap bitmap = Jnbis.wsq().decode(codestream.toArray()).asBitmap();
    if (bitmap.getWidth() != header.width() || bitmap.getHeight() != header.height()) {
      return Decoding.failed(
          new ImageDefect(
              ImageDefect.Kind.DAMAGE,
              codestream.origin(),
              "the decoder produces an image of another size"));
    }
    return new Decoding(
        Optional.of(
            GrayImage.owning(bitmap.getWidth(), bitmap.getHeight(), bitmap.getPixels().clone())),
        List.of());
  }
}
