package ridgeproof.imagery.header;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.wsq.QuantizerRate;
import ridgeproof.imagery.wsq.codestream.CodestreamDefect;
import ridgeproof.imagery.wsq.codestream.WsqCodestream;
import ridgeproof.imagery.wsq.codestream.WsqComment;
import ridgeproof.imagery.wsq.codestream.WsqDecimal;
import ridgeproof.imagery.wsq.codestream.WsqFrame;
import ridgeproof.transaction.record.ByteSource;

/** Says what the markers of a WSQ codestream say, in the terms of every format. */
final class WsqHeaderReader {

  private static final int GRAY_BITS = 8;

  private final ImageHeaderBuilder draft;
  private final WsqCodestream codestream;

  WsqHeaderReader(ByteSource source) {
    this.draft = new ImageHeaderBuilder(source, ImageFormat.WSQ);
    this.codestream = WsqCodestream.read(source);
  }

  ImageHeader read() {
    draft.lossless = Optional.of(false);
    draft.quantizerRate =
        codestream.quantization().map(QuantizerRate::of).orElse(OptionalDouble.empty());
    draft.quantizerRate.ifPresent(
        rate ->
            draft.fact("rate of the quantizer", String.format(Locale.ROOT, "%.2f bit/px", rate)));
    codestream.frame().ifPresent(this::frame);
    for (WsqComment comment : codestream.comments()) {
      NistComment.keep(draft, comment.text());
    }
    draft.fact("blocks", codestream.blocks().size());
    codestream.restartInterval().ifPresent(rows -> draft.fact("restart interval", rows));
    draft.endsAt(codestream.length() - codestream.trailingBytes());
    for (CodestreamDefect defect : codestream.defects()) {
      if (defect.kind() != CodestreamDefect.Kind.TRAILING_BYTES) {
        draft.add(ImageDefect.Kind.DAMAGE, defect.offset() - codestream.offset(), defect.detail());
      }
    }
    return draft.finish();
  }

  private void frame(WsqFrame frame) {
    if (frame.width() > 0 && frame.height() > 0) {
      draft.width = frame.width();
      draft.height = frame.height();
    }
    draft.bitsPerPixel = GRAY_BITS;
    draft.components = 1;
    draft.fact("black", frame.black());
    draft.fact("white", frame.white());
    draft.fact("shift", decimal(frame.shift()));
    draft.fact("scale", decimal(frame.scale()));
    draft.fact("encoder number", frame.encoderAlgorithm());
    draft.fact("software number", frame.softwareImplementation());
  }

  private static String decimal(WsqDecimal number) {
    return Double.toString(number.value());
  }
}
