package ridgeproof.imagery.standin;

import java.util.Optional;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.imagery.wsq.WsqEncoder;
import ridgeproof.imagery.wsq.WsqEncoding;

/** Another picture as WSQ. */
final class WsqStandIn {

  private static final int SOI_BYTES = 2;
  private static final int COMMENT = 0xA8;
  private static final int SHORTEST = 4;

  private WsqStandIn() {}

  static Optional<byte[]> of(int room, ImageHeader header, GrayImage picture) {
    int ppi =
        header
            .density()
            .map(PixelDensity::meanPpi)
            .map(density -> (int) Math.round(density))
            .orElse(WsqEncoding.UNKNOWN_PPI);
    return Rates.fitting(
            room,
            SHORTEST,
            WsqEncoding.STANDARD_BITS_PER_PIXEL,
            WsqEncoding.HIGH_BITS_PER_PIXEL,
            rate -> WsqEncoder.encode(picture, new WsqEncoding(rate, ppi, 0)))
        .map(
            bytes ->
                SegmentPadding.inserted(
                    bytes, SOI_BYTES, SegmentPadding.of(COMMENT, SHORTEST, room - bytes.length)));
  }
}
