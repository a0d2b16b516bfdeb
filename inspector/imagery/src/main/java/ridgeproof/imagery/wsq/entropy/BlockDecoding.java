package ridgeproof.imagery.wsq.entropy;

import java.util.ArrayList;
import java.util.List;
import ridgeproof.imagery.wsq.codestream.CodestreamDefect;
import ridgeproof.imagery.wsq.codestream.CodestreamDefect.Kind;
import ridgeproof.imagery.wsq.codestream.DecodingDeadline;
import ridgeproof.imagery.wsq.codestream.HuffmanTable;
import ridgeproof.imagery.wsq.codestream.WsqBlock;
import ridgeproof.imagery.wsq.codestream.WsqCodestream;
import ridgeproof.imagery.wsq.codestream.WsqMarker;
import ridgeproof.imagery.wsq.entropy.EntropyDecoder.End;
import ridgeproof.imagery.wsq.subband.CoefficientPlane;

/**
 * Decodes the blocks of a codestream into one plane. Encoders usually write three blocks that end
 * with subbands 18, 51 and 63; then a damaged block does not harm the next one. Any other division
 * is read as one sequence (WSQ specification IAFIS-IC-0110, from memory).
 */
public final class BlockDecoding {

  private static final int[] LAST_SUBBANDS = {18, 51, 63};
  private static final int MAX_DEFECTS = 100;

  private final WsqCodestream codestream;
  private final byte[] bytes;
  private final CoefficientPlane plane;
  private final DecodingDeadline stop;
  private final EntropyDecoder decoder;
  private final HuffmanLookup[] lookups = new HuffmanLookup[HuffmanTable.IDS];
  private final List<CodestreamDefect> defects = new ArrayList<>();
  private long recovered;

  public BlockDecoding(
      WsqCodestream codestream, byte[] bytes, CoefficientPlane plane, DecodingDeadline stop) {
    this.codestream = codestream;
    this.bytes = bytes;
    this.plane = plane;
    this.stop = stop;
    this.decoder = new EntropyDecoder(plane, stop);
  }

  public void run() {
    boolean usual = codestream.blocks().size() == LAST_SUBBANDS.length;
    attempt(usual);
    if (usual && !defects.isEmpty() && areAllOfLength()) {
      attempt(false);
      if (!defects.isEmpty()) {
        attempt(true);
      }
    }
  }

  public List<CodestreamDefect> defects() {
    return defects;
  }

  public long recovered() {
    return recovered;
  }

  private void attempt(boolean usual) {
    if (recovered > 0) {
      plane.clear();
    }
    defects.clear();
    recovered = 0;
    int from = 0;
    for (int index = 0; index < codestream.blocks().size() && !stop.isRaised(); index++) {
      int to = usual ? plane.end(LAST_SUBBANDS[index]) : plane.size();
      WsqBlock block = codestream.blocks().get(index);
      boolean mayBeShort = !usual && index < codestream.blocks().size() - 1;
      int reached = block.table().isEmpty() ? from : decode(index, from, to, mayBeShort);
      recovered += reached - from;
      from = usual ? to : reached;
    }
  }

  private int decode(int index, int from, int to, boolean mayBeShort) {
    WsqBlock block = codestream.blocks().get(index);
    int start = block.dataOffset() - codestream.offset();
    EntropyCodedSegment data = new EntropyCodedSegment(bytes, start, start + block.dataLength());
    HuffmanLookup lookup = lookup(block.table().orElseThrow());
    End end = decoder.decode(data, lookup, from, to);
    int reached = Math.min(decoder.position(), to);
    boolean goesOn = decoder.position() > to || decoder.remainingBits() >= Byte.SIZE;
    if (end != End.COMPLETE || goesOn) {
      String name = "block " + (index + 1) + " of " + codestream.blocks().size();
      String part = reached - from + " of " + (to - from) + " coefficients";
      int at = codestream.offset() + data.originalPosition(decoder.bytePosition());
      report(end, index, at, mayBeShort, name, part);
    }
    return end == End.BAD_CODE && mayBeShort ? nextUsualStart(reached) : reached;
  }

  private void report(End end, int index, int at, boolean mayBeShort, String name, String part) {
    switch (end) {
      case BAD_CODE -> report(Kind.BAD_CODE, at, name + " has a bad code after " + part);
      case SHORT -> {
        boolean last = index == codestream.blocks().size() - 1;
        if (last && codestream.first(WsqMarker.EOI).isEmpty()) {
          report(Kind.TRUNCATED, at, "the bytes end in " + name + " after " + part);
        } else if (!mayBeShort) {
          report(Kind.BLOCK_TOO_SHORT, at, name + " holds only " + part);
        }
      }
      case COMPLETE ->
          report(Kind.BLOCK_TOO_LONG, at, name + " goes on after its last coefficient");
      case STOPPED -> {}
    }
  }

  private HuffmanLookup lookup(HuffmanTable table) {
    HuffmanLookup known = lookups[table.id()];
    if (known == null || !known.isFor(table)) {
      known = new HuffmanLookup(table);
      lookups[table.id()] = known;
    }
    return known;
  }

  private int nextUsualStart(int position) {
    for (int last : LAST_SUBBANDS) {
      if (plane.end(last) >= position) {
        return plane.end(last);
      }
    }
    return position;
  }

  private void report(Kind kind, int offset, String detail) {
    if (defects.size() < MAX_DEFECTS) {
      defects.add(new CodestreamDefect(kind, offset, detail));
    }
  }

  private boolean areAllOfLength() {
    for (CodestreamDefect defect : defects) {
      if (defect.kind() != Kind.BLOCK_TOO_SHORT && defect.kind() != Kind.BLOCK_TOO_LONG) {
        return false;
      }
    }
    return true;
  }
}
