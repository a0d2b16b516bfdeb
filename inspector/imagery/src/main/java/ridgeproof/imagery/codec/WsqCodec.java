package ridgeproof.imagery.codec;

import java.util.Set;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageCodec;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.wsq.WsqDecoder;
import ridgeproof.imagery.wsq.WsqDecoding;
import ridgeproof.imagery.wsq.codestream.CodestreamDefect;
import ridgeproof.imagery.wsq.codestream.WsqLimits;
import ridgeproof.transaction.record.ByteSource;

/** WSQ, by the decoder of this module. */
public final class WsqCodec implements ImageCodec {

  @Override
  public Set<ImageFormat> formats() {
    return Set.of(ImageFormat.WSQ);
  }

  @Override
  public Decoding decode(ByteSource codestream, StatedSize stated, DecodingLimits limits) {
    WsqDecoding decoding =
        WsqDecoder.decode(
            codestream,
            WsqLimits.standard()
                .withMaxPixels(limits.maxPixels())
                .withTimeLimit(limits.timeLimit().toNanos()));
    return new Decoding(
        decoding.image(), decoding.defects().stream().map(WsqCodec::defect).toList());
  }

  /** A defect of a WSQ codestream in the terms of every format. */
  public static ImageDefect defect(CodestreamDefect defect) {
    ImageDefect.Kind kind =
        switch (defect.kind()) {
          case TRAILING_BYTES -> ImageDefect.Kind.TRAILING_BYTES;
          case SIZE_OVER_LIMIT, TIME_LIMIT, CANCELLED -> ImageDefect.Kind.LIMIT;
          default -> ImageDefect.Kind.DAMAGE;
        };
    return new ImageDefect(kind, defect.offset(), defect.detail());
  }
}
