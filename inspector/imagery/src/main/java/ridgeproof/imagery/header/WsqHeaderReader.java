package ridgeproof.imagery.header;

import java.math.BigDecimal;
import java.util.Optional;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.transaction.ByteSource;

/** Walks the marker segments of a WSQ codestream (WSQ Gray-scale Fingerprint Image Compression). */
final class WsqHeaderReader {

  private static final int SOI = 0xA0;
  private static final int EOI = 0xA1;
  private static final int SOF = 0xA2;
  private static final int SOB = 0xA3;
  private static final int DRI = 0xA7;
  private static final int COM = 0xA8;
  private static final int RST0 = 0xB0;
  private static final int SOF_BYTES = 15;

  private final HeaderDraft draft;
  private final MarkerWalk walk;
  private final RestartCount restarts;
  private boolean frameSeen;
  private int blocks;

  WsqHeaderReader(ByteSource source) {
    this.draft = new HeaderDraft(source, ImageFormat.WSQ);
    this.restarts = new RestartCount(draft, RST0);
    this.walk =
        new MarkerWalk(draft, 2, code -> code == SOI || code == EOI || restarts.isRestart(code));
  }

  ImageHeader read() {
    draft.lossless = Optional.of(false);
    Optional<MarkerWalk.Segment> segment = walk.next();
    while (segment.isPresent() && segment.get().code() != EOI) {
      take(segment.get());
      segment = walk.next();
    }
    if (segment.isPresent()) {
      draft.endsAt(walk.position());
    }
    if (!frameSeen) {
      draft.damage(0, "holds no frame header (SOF)");
    }
    if (blocks == 0) {
      draft.damage(0, "holds no block of coded data (SOB)");
    }
    draft.fact("blocks", blocks);
    return draft.finish();
  }

  private void take(MarkerWalk.Segment segment) {
    ByteSource body = segment.body();
    switch (segment.code()) {
      case SOF -> frame(segment);
      case COM -> NistComment.keep(draft, body.latin1(0, body.length()));
      case DRI -> draft.fact("restart interval", body.has(0, 2) ? body.uint16At(0) : 0);
      case SOB -> {
        blocks++;
        restarts.scanBegins();
        walk.skipEntropyCoded(restarts);
      }
      case SOI -> draft.damage(segment.position(), "a second start marker");
      default -> {}
    }
  }

  private void frame(MarkerWalk.Segment segment) {
    ByteSource body = segment.body();
    if (body.length() < SOF_BYTES) {
      draft.damage(segment.position(), "the frame header (SOF) is too short");
      return;
    }
    if (frameSeen) {
      draft.damage(segment.position(), "a second frame header (SOF)");
      return;
    }
    frameSeen = true;
    draft.fact("black", body.byteAt(0));
    draft.fact("white", body.byteAt(1));
    draft.size(body.uint16At(4), body.uint16At(2), segment.position());
    draft.bitsPerPixel = 8;
    draft.components = 1;
    draft.fact("shift", scaled(body, 6));
    draft.fact("scale", scaled(body, 9));
    draft.fact("encoder number", body.byteAt(12));
    draft.fact("software number", body.uint16At(13));
  }

  /** A 16-bit number whose decimal point stands as many places from the right as a byte says. */
  private static String scaled(ByteSource body, int position) {
    return BigDecimal.valueOf(body.uint16At(position + 1), body.byteAt(position)).toPlainString();
  }
}
