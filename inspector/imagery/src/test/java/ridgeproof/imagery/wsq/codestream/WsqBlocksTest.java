package ridgeproof.imagery.wsq.codestream;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ridgeproof.imagery.wsq.TestImages;
import ridgeproof.imagery.wsq.TestImages.Content;
import ridgeproof.imagery.wsq.WsqDecoder;
import ridgeproof.imagery.wsq.WsqDecoding;
import ridgeproof.imagery.wsq.WsqEncoder;
import ridgeproof.imagery.wsq.WsqEncoding;
import ridgeproof.imagery.wsq.codestream.CodestreamDefect.Kind;
import ridgeproof.imagery.wsq.entropy.HuffmanCode;
import ridgeproof.imagery.wsq.subband.EntropySymbols;
import ridgeproof.transaction.record.ByteSource;

/** The same coefficients in blocks of every kind must give the same image. */
class WsqBlocksTest {

  private static final int RESTART_EVERY = 37;

  private record Symbol(int symbol, int plain) {}

  private final byte[] encoded =
      WsqEncoder.encode(TestImages.of(Content.RIDGES, 150, 110, 4), new WsqEncoding(2, 500, 0));
  private final List<Symbol> symbols = randomSymbols();

  @Test
  void oneBlockGivesTheImage() {
    byte[] stream = stream(List.of(symbols), false);
    WsqDecoding decoding = WsqDecoder.decode(ByteSource.of(stream));
    assertEquals(List.of(), decoding.defects());
    assertTrue(decoding.isComplete());
    byte[] other = new org.jnbis.internal.WsqDecoder().decode(stream).getPixels();
    assertTrue(TestImages.largestDifference(decoding.image().orElseThrow().toArray(), other) <= 1);
  }

  @Test
  void blocksWithTablesOfTheirOwnGiveTheSameImage() {
    for (int blocks = 2; blocks < 9; blocks++) {
      assertSameImage(stream(divided(blocks), false));
    }
  }

  @Test
  void restartMarkersDoNotChangeTheImage() {
    assertSameImage(stream(List.of(symbols), true));
    assertSameImage(stream(divided(3), true));
  }

  @Test
  void restartMarkersWithoutAnIntervalAreReported() {
    byte[] stream = stream(List.of(symbols), true);
    int interval =
        WsqCodestream.read(ByteSource.of(stream)).first(WsqMarker.DRI).orElseThrow().offset();
    byte[] without = new byte[stream.length - 6];
    System.arraycopy(stream, 0, without, 0, interval);
    System.arraycopy(stream, interval + 6, without, interval, without.length - interval);
    WsqDecoding decoding = WsqDecoder.decode(ByteSource.of(without));
    assertEquals(
        List.of(Kind.RESTART_WITHOUT_INTERVAL),
        decoding.defects().stream().map(CodestreamDefect::kind).toList());
    assertTrue(decoding.isComplete());
  }

  @Test
  void aBlockThatGoesOnAfterItsCoefficientsIsReported() {
    List<Symbol> more = new ArrayList<>(symbols);
    for (int i = 0; i < 40; i++) {
      more.add(new Symbol(1, 0));
    }
    WsqDecoding decoding = WsqDecoder.decode(ByteSource.of(stream(List.of(more), false)));
    assertEquals(Kind.BLOCK_TOO_LONG, decoding.defects().get(0).kind());
    assertTrue(decoding.isComplete());
  }

  @Test
  void aBlockWithTooFewCoefficientsIsReported() {
    List<Symbol> fewer = symbols.subList(0, symbols.size() / 2);
    WsqDecoding decoding = WsqDecoder.decode(ByteSource.of(stream(List.of(fewer), false)));
    assertEquals(Kind.BLOCK_TOO_SHORT, decoding.defects().get(0).kind());
    assertTrue(decoding.image().isPresent());
    assertTrue(decoding.recoveredCoefficients() < decoding.codedCoefficients());
  }

  private void assertSameImage(byte[] stream) {
    WsqDecoding expected = WsqDecoder.decode(ByteSource.of(stream(List.of(symbols), false)));
    WsqDecoding decoding = WsqDecoder.decode(ByteSource.of(stream));
    assertEquals(List.of(), decoding.defects());
    assertArrayEquals(
        expected.image().orElseThrow().toArray(), decoding.image().orElseThrow().toArray());
  }

  private List<Symbol> randomSymbols() {
    long wanted = WsqDecoder.decode(ByteSource.of(encoded)).codedCoefficients();
    Random random = new Random(12);
    List<Symbol> made = new ArrayList<>();
    while (wanted > 0) {
      int kind = random.nextInt(100);
      int run = (int) Math.min(wanted, 1 + random.nextInt(kind == 0 ? 900 : 30));
      if (kind < 1) {
        made.add(new Symbol(EntropySymbols.RUN_16, run));
        wanted -= run;
      } else if (kind < 3) {
        made.add(new Symbol(EntropySymbols.RUN_8, run));
        wanted -= run;
      } else if (kind < 30) {
        made.add(new Symbol(run, 0));
        wanted -= run;
      } else {
        made.add(value(kind, random));
        wanted--;
      }
    }
    return made;
  }

  private static Symbol value(int kind, Random random) {
    return switch (kind) {
      case 30 -> new Symbol(EntropySymbols.POSITIVE_8, 75 + random.nextInt(181));
      case 31 -> new Symbol(EntropySymbols.NEGATIVE_8, 75 + random.nextInt(181));
      case 32 -> new Symbol(EntropySymbols.POSITIVE_16, 256 + random.nextInt(500));
      case 33 -> new Symbol(EntropySymbols.NEGATIVE_16, 256 + random.nextInt(500));
      default -> {
        int wide = random.nextInt(10) == 0 ? 73 : 3;
        int value = (1 + random.nextInt(wide)) * (random.nextBoolean() ? 1 : -1);
        yield new Symbol(EntropySymbols.ZERO_VALUE + value, 0);
      }
    };
  }

  private List<List<Symbol>> divided(int blocks) {
    List<List<Symbol>> parts = new ArrayList<>();
    for (int i = 0; i < blocks; i++) {
      parts.add(symbols.subList(symbols.size() * i / blocks, symbols.size() * (i + 1) / blocks));
    }
    return parts;
  }

  private byte[] stream(List<List<Symbol>> blocks, boolean restarts) {
    CodestreamWriter out = new CodestreamWriter();
    int tables =
        WsqCodestream.read(ByteSource.of(encoded)).first(WsqMarker.DHT).orElseThrow().offset();
    ByteArrayOutputStream head = new ByteArrayOutputStream();
    head.write(encoded, 0, tables);
    out.bytes(head.toByteArray());
    if (restarts) {
      out.marker(WsqMarker.DRI);
      out.uint16(4);
      out.uint16(RESTART_EVERY);
    }
    for (List<Symbol> block : blocks) {
      write(block, restarts, out);
    }
    out.marker(WsqMarker.EOI);
    return out.toArray();
  }

  private static void write(List<Symbol> block, boolean restarts, CodestreamWriter out) {
    int[] frequencies = new int[256];
    block.forEach(symbol -> frequencies[symbol.symbol()]++);
    HuffmanCode code = HuffmanCode.of(3, frequencies);
    HuffmanTable table = code.table();
    out.marker(WsqMarker.DHT);
    out.uint16(3 + 16 + table.symbols().size());
    out.uint8(table.id());
    table.codesOfLength().forEach(out::uint8);
    table.symbols().forEach(out::uint8);
    out.marker(WsqMarker.SOB);
    out.uint16(3);
    out.uint8(table.id());
    for (int i = 0; i < block.size(); i++) {
      if (restarts && i > 0 && i % RESTART_EVERY == 0) {
        out.endBits();
        out.uint16(WsqMarker.RST.code() + i / RESTART_EVERY % 8);
      }
      Symbol symbol = block.get(i);
      out.bits(code.code(symbol.symbol()), code.length(symbol.symbol()));
      out.bits(symbol.plain(), EntropySymbols.extraBits(symbol.symbol()));
    }
    out.endBits();
  }
}
