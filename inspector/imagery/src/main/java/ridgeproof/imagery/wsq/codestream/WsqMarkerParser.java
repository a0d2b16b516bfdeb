package ridgeproof.imagery.wsq.codestream;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.finding.Quantity;
import ridgeproof.imagery.wsq.codestream.CodestreamDefect.Kind;
import ridgeproof.transaction.record.ByteSource;

/** One pass over the markers of a codestream; used once, then thrown away. */
final class WsqMarkerParser {

  private static final int MARKER_BYTES = 2;
  private static final int LENGTH_BYTES = 2;
  private static final int BODY = MARKER_BYTES + LENGTH_BYTES;
  private static final int MAX_DEFECTS = 100;

  private final ByteSource source;
  private final List<WsqSegment> segments = new ArrayList<>();
  private final List<HuffmanTable> tables = new ArrayList<>();
  private final Map<Integer, HuffmanTable> tablesInForce = new LinkedHashMap<>();
  private final List<WsqBlock> blocks = new ArrayList<>();
  private final List<WsqComment> comments = new ArrayList<>();
  private final List<CodestreamDefect> defects = new ArrayList<>();
  private WsqFrame frame;
  private TransformTable transform;
  private QuantizationTable quantization;
  private OptionalInt restartInterval = OptionalInt.empty();
  private int trailingBytes;

  WsqMarkerParser(ByteSource source) {
    this.source = source;
  }

  WsqCodestream walk() {
    int position = start();
    boolean ended = false;
    while (position >= 0 && position < source.length() && !ended) {
      WsqMarker marker = markerAt(position).orElse(null);
      if (marker == null) {
        position = afterStrayBytes(position);
      } else if (marker == WsqMarker.EOI) {
        add(marker, position, MARKER_BYTES);
        position += MARKER_BYTES;
        ended = true;
      } else if (marker.hasSegment()) {
        position = afterSegment(marker, position);
      } else {
        add(marker, position, MARKER_BYTES);
        report(Kind.UNKNOWN_MARKER, position, marker + " where it is not allowed");
        position += MARKER_BYTES;
      }
    }
    checkEnd(ended ? position : source.length(), ended);
    return new WsqCodestream(
        source.origin(),
        source.length(),
        segments,
        Optional.ofNullable(frame),
        Optional.ofNullable(transform),
        Optional.ofNullable(quantization),
        tables,
        blocks,
        restartInterval,
        comments,
        trailingBytes,
        defects);
  }

  private int start() {
    if (codeAt(0) == WsqMarker.SOI.code()) {
      add(WsqMarker.SOI, 0, MARKER_BYTES);
      return MARKER_BYTES;
    }
    report(Kind.NO_SOI, 0, "the first two bytes are not SOI");
    if (markerAt(0).isPresent()) {
      return 0;
    }
    for (int at = source.indexOf(0xFF, 0); at >= 0; at = source.indexOf(0xFF, at + 1)) {
      if (codeAt(at) == WsqMarker.SOI.code() && markerAt(at + MARKER_BYTES).isPresent()) {
        report(Kind.STRAY_BYTES, 0, Quantity.of(at, "byte") + " before SOI");
        add(WsqMarker.SOI, at, MARKER_BYTES);
        return at + MARKER_BYTES;
      }
    }
    return -1;
  }

  private void checkEnd(int end, boolean ended) {
    if (segments.isEmpty()) {
      return;
    }
    if (frame == null) {
      report(Kind.MISSING_FRAME, end, "no usable SOF");
    }
    if (transform == null) {
      report(Kind.MISSING_TABLE, end, "no usable filter table (DTT)");
    }
    if (quantization == null) {
      report(Kind.MISSING_TABLE, end, "no usable quantization table (DQT)");
    }
    if (blocks.isEmpty()) {
      report(Kind.MISSING_BLOCK, end, "no entropy-coded block (SOB)");
    }
    if (!ended) {
      report(Kind.MISSING_EOI, source.length(), "the bytes end without EOI");
    } else if (end < source.length()) {
      trailingBytes = source.length() - end;
      report(Kind.TRAILING_BYTES, end, Quantity.of(trailingBytes, "byte") + " after EOI");
    }
  }

  private int afterStrayBytes(int position) {
    int code = codeAt(position);
    int next = nextMarker(position + 1);
    int end = next < 0 ? source.length() : next;
    if (code >> 8 == 0xFF) {
      report(
          Kind.UNKNOWN_MARKER,
          position,
          String.format(Locale.ROOT, "not a WSQ marker: %04X", code));
    } else {
      report(
          Kind.STRAY_BYTES, position, Quantity.of(end - position, "byte") + " outside any segment");
    }
    return end;
  }

  private int afterSegment(WsqMarker marker, int position) {
    if (!source.has(position + MARKER_BYTES, LENGTH_BYTES)) {
      return truncated(marker, position);
    }
    int stated = source.uint16At(position + MARKER_BYTES);
    int needed = neededLength(marker, position, stated);
    int length = stated;
    if (stated != needed) {
      report(
          Kind.BAD_SEGMENT_LENGTH,
          position,
          marker + " states a length of " + stated + " but its content needs " + needed);
      boolean believeContent =
          marker == WsqMarker.SOB || markerAt(position + MARKER_BYTES + needed).isPresent();
      length = believeContent ? needed : Math.max(stated, LENGTH_BYTES);
    }
    if (!source.has(position + MARKER_BYTES, length)) {
      int next = nextMarker(position + MARKER_BYTES);
      if (next < 0) {
        return truncated(marker, position);
      }
      report(
          Kind.BAD_SEGMENT_LENGTH,
          position,
          marker + " states a length of " + stated + " that goes past the end");
      add(marker, position, next - position);
      return next;
    }
    add(marker, position, MARKER_BYTES + length);
    int end = position + MARKER_BYTES + length;
    if (length >= needed) {
      readSegment(marker, position, end);
    }
    return marker == WsqMarker.SOB ? afterBlock(position, end) : end;
  }

  private int truncated(WsqMarker marker, int position) {
    add(marker, position, source.length() - position);
    report(Kind.TRUNCATED, position, "the bytes end inside " + marker);
    return source.length();
  }

  private int neededLength(WsqMarker marker, int position, int stated) {
    return switch (marker) {
      case SOF -> MarkerSegmentSyntax.FRAME_LENGTH;
      case SOB -> MarkerSegmentSyntax.BLOCK_LENGTH;
      case DRI -> MarkerSegmentSyntax.RESTART_LENGTH;
      case DQT -> MarkerSegmentSyntax.QUANTIZATION_LENGTH;
      case DTT -> MarkerSegmentSyntax.transformLength(source, position + BODY);
      case DHT -> MarkerSegmentSyntax.huffmanLength(source, position + BODY, stated);
      case COM -> commentLength(position, stated);
      case SOI, EOI, RST -> 0;
    };
  }

  /** A comment must end at a marker; when it does not, the next marker ends it. */
  private int commentLength(int position, int stated) {
    if (stated >= LENGTH_BYTES && markerAt(position + MARKER_BYTES + stated).isPresent()) {
      return stated;
    }
    int next = nextMarker(position + BODY);
    return next < 0 ? Math.max(stated, LENGTH_BYTES) : next - position - MARKER_BYTES;
  }

  private void readSegment(WsqMarker marker, int position, int end) {
    int body = position + BODY;
    int offset = source.origin() + position;
    switch (marker) {
      case SOF -> readFrame(position);
      case DQT -> quantization = MarkerSegmentSyntax.quantization(source, body, offset);
      case DTT -> readTransform(position);
      case DHT -> {
        for (HuffmanTable table : MarkerSegmentSyntax.huffman(source, body, end)) {
          define(table, position);
        }
      }
      case DRI -> restartInterval = OptionalInt.of(source.uint16At(body));
      case COM -> comments.add(WsqComment.of(offset, source.latin1(body, end - body)));
      case SOB, SOI, EOI, RST -> {}
    }
  }

  private void readTransform(int position) {
    Optional<TransformTable> read =
        MarkerSegmentSyntax.transform(source, position + BODY, source.origin() + position);
    if (read.isPresent()) {
      transform = read.get();
    } else {
      report(Kind.BAD_TABLE, position, "filter lengths that make no pair of wavelet filters");
    }
  }

  private void readFrame(int position) {
    WsqFrame read = MarkerSegmentSyntax.frame(source, position + BODY, source.origin() + position);
    if (read.pixels() == 0) {
      report(Kind.SIZE_OUT_OF_RANGE, position, read.width() + " x " + read.height() + " pixels");
    } else if (frame != null) {
      report(Kind.REPEATED_FRAME, position, "a second SOF");
    } else {
      frame = read;
    }
  }

  private void define(HuffmanTable table, int position) {
    Optional<String> impossibility = table.impossibility();
    if (impossibility.isPresent()) {
      report(Kind.BAD_TABLE, position, impossibility.get());
    } else {
      tables.add(table);
      tablesInForce.put(table.id(), table);
    }
  }

  private int afterBlock(int position, int dataStart) {
    int tableId = source.byteAt(position + BODY);
    int at = dataStart;
    boolean restartReported = restartInterval.isPresent();
    boolean unknownReported = false;
    for (int ff = source.indexOf(0xFF, at); ; ff = source.indexOf(0xFF, at)) {
      if (ff < 0 || ff == source.length() - 1) {
        at = source.length();
        break;
      }
      WsqMarker marker = markerAt(ff).orElse(null);
      if (marker == WsqMarker.RST) {
        if (!restartReported) {
          report(Kind.RESTART_WITHOUT_INTERVAL, ff, "a restart marker without DRI");
          restartReported = true;
        }
      } else if (marker != null && marker != WsqMarker.SOI) {
        at = ff;
        break;
      } else if (source.byteAt(ff + 1) != 0 && !unknownReported) {
        report(
            Kind.UNKNOWN_MARKER,
            ff,
            String.format(Locale.ROOT, "%04X inside block %d", codeAt(ff), blocks.size() + 1));
        unknownReported = true;
      }
      at = ff + (source.byteAt(ff + 1) == 0xFF ? 1 : MARKER_BYTES);
    }
    Optional<HuffmanTable> table = Optional.ofNullable(tablesInForce.get(tableId));
    if (table.isEmpty()) {
      report(
          Kind.MISSING_TABLE,
          position,
          "block " + (blocks.size() + 1) + " needs Huffman table " + tableId);
    }
    int origin = source.origin();
    blocks.add(new WsqBlock(origin + position, tableId, table, origin + dataStart, at - dataStart));
    return at;
  }

  private int nextMarker(int from) {
    for (int at = source.indexOf(0xFF, from); at >= 0; at = source.indexOf(0xFF, at + 1)) {
      Optional<WsqMarker> marker = markerAt(at);
      if (marker.isPresent() && marker.get() != WsqMarker.SOI && marker.get() != WsqMarker.RST) {
        return at;
      }
    }
    return -1;
  }

  private Optional<WsqMarker> markerAt(int position) {
    return WsqMarker.of(codeAt(position));
  }

  private int codeAt(int position) {
    return source.has(position, MARKER_BYTES) ? source.uint16At(position) : 0;
  }

  private void add(WsqMarker marker, int position, int length) {
    segments.add(new WsqSegment(marker, source.origin() + position, length));
  }

  private void report(Kind kind, int position, String detail) {
    // Bytes of another kind would fill memory with defects; a hundred tell as much.
    if (defects.size() < MAX_DEFECTS) {
      defects.add(new CodestreamDefect(kind, source.origin() + position, detail));
    }
  }
}
