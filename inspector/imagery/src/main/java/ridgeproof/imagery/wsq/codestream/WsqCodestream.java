package ridgeproof.imagery.wsq.codestream;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.transaction.record.ByteSource;

/**
 * What the markers of a WSQ codestream say, without decoding the image (WSQ specification
 * IAFIS-IC-0110, from memory).
 *
 * @param offset of the first byte in the file
 * @param length of all bytes that were given
 * @param segments every marker segment in the order of the file
 * @param frame the first usable SOF
 * @param transform the last usable DTT
 * @param quantization the last usable DQT
 * @param huffmanTables every usable table of every DHT, in the order of the file
 * @param blocks every SOB with its data
 * @param restartInterval of the last DRI
 * @param comments every COM
 * @param trailingBytes how many bytes follow EOI; 0 without EOI
 * @param defects what is wrong, in the order of the file
 */
public record WsqCodestream(
    int offset,
    int length,
    List<WsqSegment> segments,
    Optional<WsqFrame> frame,
    Optional<TransformTable> transform,
    Optional<QuantizationTable> quantization,
    List<HuffmanTable> huffmanTables,
    List<WsqBlock> blocks,
    OptionalInt restartInterval,
    List<WsqComment> comments,
    int trailingBytes,
    List<CodestreamDefect> defects) {

  public WsqCodestream {
    segments = List.copyOf(segments);
    huffmanTables = List.copyOf(huffmanTables);
    blocks = List.copyOf(blocks);
    comments = List.copyOf(comments);
    defects = List.copyOf(defects);
  }

  /** Walks the markers. Whatever is wrong becomes a defect, never an exception. */
  public static WsqCodestream read(ByteSource source) {
    return new WsqMarkerParser(source).walk();
  }

  /** The first segment of this kind, if any. */
  public Optional<WsqSegment> first(WsqMarker marker) {
    for (WsqSegment segment : segments) {
      if (segment.marker() == marker) {
        return Optional.of(segment);
      }
    }
    return Optional.empty();
  }

  /** Keys and values of the first comment that has them, in the order of the file. */
  public Map<String, String> keyValues() {
    for (WsqComment comment : comments) {
      if (comment.isKeyValues()) {
        return comment.keyValues();
      }
    }
    return Map.of();
  }
}
