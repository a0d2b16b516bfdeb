package ridgeproof.imagery.codec;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageCodec;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.wsq.CodestreamDefect;
import ridgeproof.imagery.wsq.WsqDecoder;
import ridgeproof.imagery.wsq.WsqDecoding;
import ridgeproof.transaction.ByteSource;

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
            ridgeproof.imagery.wsq.DecodingLimits.standard()
                .withMaxPixels(limits.maxPixels())
                .withTimeLimit(limits.timeLimit().toNanos()));
    // What the markers say is the header's to report; only what decoding met is told here.
    List<CodestreamDefect> met = new ArrayList<>(decoding.defects());
    met.removeAll(decoding.codestream().defects());
    return new Decoding(decoding.image(), met.stream().map(WsqCodec::defect).toList());
  }

  /** A defect of a WSQ codestream in the terms of every format. */
  public static ImageDefect defect(CodestreamDefect defect) {
    ImageDefect.Kind kind =
        switch (defect.kind()) {
          case TRAILING_BYTES -> ImageDefect.Kind.TRAILING_BYTES;
          case SIZE_OVER_LIMIT, OUT_OF_MEMORY, TIME_LIMIT, CANCELLED -> ImageDefect.Kind.LIMIT;
          default -> ImageDefect.Kind.DAMAGE;
        };
    return new ImageDefect(kind, defect.offset(), defect.detail());
  }
}
