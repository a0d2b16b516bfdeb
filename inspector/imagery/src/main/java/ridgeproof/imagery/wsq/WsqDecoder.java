package ridgeproof.imagery.wsq;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.codestream.CodestreamDefect;
import ridgeproof.imagery.wsq.codestream.CodestreamDefect.Kind;
import ridgeproof.imagery.wsq.codestream.DecodingDeadline;
import ridgeproof.imagery.wsq.codestream.WsqCodestream;
import ridgeproof.imagery.wsq.codestream.WsqFrame;
import ridgeproof.imagery.wsq.codestream.WsqLimits;
import ridgeproof.imagery.wsq.entropy.BlockDecoding;
import ridgeproof.imagery.wsq.subband.CoefficientPlane;
import ridgeproof.imagery.wsq.subband.Quantization;
import ridgeproof.imagery.wsq.subband.SubbandTree;
import ridgeproof.imagery.wsq.wavelet.BandSynthesis;
import ridgeproof.imagery.wsq.wavelet.FilterPair;
import ridgeproof.imagery.wsq.wavelet.ImageSynthesis;
import ridgeproof.transaction.record.ByteSource;

/**
 * Decodes WSQ, the wavelet scalar quantization of gray-scale fingerprint images (WSQ specification
 * IAFIS-IC-0110, from memory). Nothing is kept between calls, so that many threads may decode at
 * once.
 *
 * <p>Restart markers end a run of codes at a byte boundary; decoding goes on behind them whatever
 * the restart interval is.
 */
public final class WsqDecoder {

  /** A smaller image is no danger, and of a damaged one whatever is left may be worth seeing. */
  private static final long LARGE = 4_000_000;

  /** Of a large image that holds less than this part of its coefficients nothing can be seen. */
  private static final long MIN_PART = 64;

  private WsqDecoder() {}

  /** Decodes with {@link WsqLimits#standard()}. */
  public static WsqDecoding decode(ByteSource source) {
    return decode(source, WsqLimits.standard());
  }

  /** Decodes what can be decoded. Whatever is wrong becomes a defect, never an exception. */
  public static WsqDecoding decode(ByteSource source, WsqLimits limits) {
    WsqCodestream codestream = WsqCodestream.read(source);
    List<CodestreamDefect> defects = new ArrayList<>(codestream.defects());
    if (codestream.frame().isEmpty()
        || codestream.transform().isEmpty()
        || codestream.quantization().isEmpty()
        || codestream.blocks().isEmpty()) {
      return new WsqDecoding(Optional.empty(), codestream, defects, 0, 0);
    }
    WsqFrame frame = codestream.frame().get();
    if (frame.pixels() > Math.min(limits.maxPixels(), Integer.MAX_VALUE / 2)) {
      defects.add(
          new CodestreamDefect(
              Kind.SIZE_OVER_LIMIT, frame.offset(), frame.pixels() + " pixels are too many"));
      return new WsqDecoding(Optional.empty(), codestream, defects, 0, 0);
    }
    SubbandTree tree = new SubbandTree(frame.width(), frame.height());
    long coded = CoefficientPlane.codedCoefficients(tree, codestream.quantization().get());
    if (coded > LARGE) {
      long held = new CodedExtent(source.toArray(), source.origin()).of(codestream);
      if (held < coded / MIN_PART) {
        String detail = "states " + frame.pixels() + " pixels, the data codes only " + held;
        defects.add(new CodestreamDefect(Kind.SIZE_IMPLAUSIBLE, frame.offset(), detail));
        return new WsqDecoding(Optional.empty(), codestream, defects, coded, 0);
      }
    }
    return decodeImage(source, codestream, tree, coded, limits, defects);
  }

  private static WsqDecoding decodeImage(
      ByteSource source,
      WsqCodestream codestream,
      SubbandTree tree,
      long coded,
      WsqLimits limits,
      List<CodestreamDefect> defects) {
    WsqFrame frame = codestream.frame().orElseThrow();
    DecodingDeadline stop = new DecodingDeadline(limits);
    BandSynthesis bands = ImageSynthesis.of(FilterPair.of(codestream.transform().orElseThrow()));
    CoefficientPlane plane =
        new CoefficientPlane(
            tree,
            new Quantization(codestream.quantization().orElseThrow()),
            bands.lowFactor(),
            bands.highFactor(),
            frame.scale().value());
    BlockDecoding blocks = new BlockDecoding(codestream, source.toArray(), plane, stop);
    blocks.run();
    defects.addAll(blocks.defects());
    Optional<byte[]> pixels =
        blocks.recovered() > 0 || coded == 0
            ? new ImageSynthesis(bands, stop).pixels(plane, frame.shift().value())
            : Optional.empty();
    Optional<GrayImage> image = Optional.empty();
    if (stop.reason().isPresent()) {
      defects.add(new CodestreamDefect(stop.reason().get(), frame.offset(), "decoding stopped"));
    } else if (pixels.isPresent()) {
      image = Optional.of(GrayImage.owning(frame.width(), frame.height(), pixels.get()));
    }
    return new WsqDecoding(image, codestream, defects, coded, blocks.recovered());
  }
}
