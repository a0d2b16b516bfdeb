package ridgeproof.imagery.wsq.codestream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.imagery.wsq.ReferenceCodestreams;
import ridgeproof.imagery.wsq.codestream.CodestreamDefect.Kind;
import ridgeproof.transaction.record.ByteSource;

class WsqCodestreamTest {

  @Test
  void everyReferenceCodestreamIsReadWithoutDefect() {
    List<ReferenceCodestreams.Reference> all = ReferenceCodestreams.all();
    assertTrue(all.size() >= 23, all.size() + " codestreams");
    for (ReferenceCodestreams.Reference reference : all) {
      WsqCodestream codestream = WsqCodestream.read(reference.source());
      assertEquals(List.of(), codestream.defects(), reference.name());
      assertEquals(3, codestream.blocks().size(), reference.name());
      WsqFrame frame = codestream.frame().orElseThrow();
      assertEquals(
          String.valueOf(frame.width()), codestream.keyValues().get("PIX_WIDTH"), reference.name());
      assertEquals(
          String.valueOf(frame.height()),
          codestream.keyValues().get("PIX_HEIGHT"),
          reference.name());
      assertEquals(0.44, codestream.quantization().orElseThrow().binCenter().value(), 1e-9);
      assertEquals(9, codestream.transform().orElseThrow().lowPassLength());
      int coded =
          codestream.segments().stream().mapToInt(WsqSegment::length).sum()
              + codestream.blocks().stream().mapToInt(WsqBlock::dataLength).sum();
      assertEquals(reference.source().length(), coded, reference.name());
    }
  }

  @Test
  void keyValuesKeepTheOrderOfTheComment() {
    byte[] text = "NIST_COM 3\nPIX_WIDTH 8\nHISTORY a b c\n".getBytes(StandardCharsets.US_ASCII);
    WsqCodestream codestream = read(soi(), comment(text), eoi());
    assertEquals(
        List.of("NIST_COM", "PIX_WIDTH", "HISTORY"), List.copyOf(codestream.keyValues().keySet()));
    assertEquals("a b c", codestream.keyValues().get("HISTORY"));
    assertFalse(codestream.comments().get(0).toString().contains("a b c"));
  }

  @Test
  void freeTextIsNoKeyValueList() {
    WsqCodestream codestream =
        read(soi(), comment("made by hand".getBytes(StandardCharsets.US_ASCII)), eoi());
    assertTrue(codestream.keyValues().isEmpty());
    assertEquals("made by hand", codestream.comments().get(0).text());
  }

  @Test
  void bytesThatAreNoCodestreamAreOneDefect() {
    WsqCodestream codestream = read(new byte[] {1, 2, 3, 4});
    assertEquals(List.of(Kind.NO_SOI), kinds(codestream));
  }

  @Test
  void anEmptySourceHasNoSoi() {
    assertEquals(List.of(Kind.NO_SOI), kinds(read(new byte[0])));
  }

  @Test
  void offsetsCountFromTheStartOfTheFile() {
    byte[] file = joined(new byte[10], soi(), comment(new byte[5]), eoi(), new byte[7]);
    WsqCodestream codestream = WsqCodestream.read(ByteSource.of(file).from(10));
    assertEquals(10, codestream.segments().get(0).offset());
    assertEquals(new WsqSegment(WsqMarker.COM, 12, 9), codestream.segments().get(1));
    assertEquals(21, codestream.first(WsqMarker.EOI).orElseThrow().offset());
    assertEquals(7, codestream.trailingBytes());
    assertTrue(
        codestream
            .defects()
            .contains(new CodestreamDefect(Kind.TRAILING_BYTES, 23, "7 bytes after EOI")));
  }

  @Test
  void aMissingEoiIsReported() {
    assertTrue(kinds(read(soi(), comment(new byte[5]))).contains(Kind.MISSING_EOI));
  }

  @Test
  void aSegmentCutShortIsReported() {
    byte[] whole = joined(soi(), comment(new byte[50]));
    byte[] cut = Arrays.copyOf(whole, 20);
    assertTrue(kinds(read(cut)).contains(Kind.TRUNCATED));
  }

  @Test
  void anUnknownMarkerIsSkipped() {
    WsqCodestream codestream = read(soi(), new byte[] {(byte) 0xFF, (byte) 0xD8}, eoi());
    assertTrue(kinds(codestream).contains(Kind.UNKNOWN_MARKER));
    assertTrue(codestream.first(WsqMarker.EOI).isPresent());
  }

  @Test
  void aFrameWithoutPixelsIsReported() {
    byte[] frame = new byte[19];
    frame[0] = (byte) 0xFF;
    frame[1] = (byte) 0xA2;
    frame[3] = 17;
    WsqCodestream codestream = read(soi(), frame, eoi());
    assertTrue(kinds(codestream).contains(Kind.SIZE_OUT_OF_RANGE));
    assertTrue(codestream.frame().isEmpty());
  }

  @Test
  void aWrongLengthOfAFixedSegmentDoesNotLoseTheNextOne() {
    byte[] frame = new byte[19];
    frame[0] = (byte) 0xFF;
    frame[1] = (byte) 0xA2;
    frame[3] = 14;
    frame[7] = 5;
    frame[9] = 6;
    WsqCodestream codestream = read(soi(), frame, comment(new byte[1]), eoi());
    assertTrue(kinds(codestream).contains(Kind.BAD_SEGMENT_LENGTH));
    assertEquals(30, codestream.frame().orElseThrow().pixels());
    assertEquals(1, codestream.comments().size());
  }

  @Test
  void aWrongLengthOfACommentDoesNotSwallowTheNextSegment() {
    for (int stated : new int[] {0, 1, 9, 11, 30, 60000}) {
      byte[] first = comment(new byte[8]);
      first[2] = (byte) (stated >> 8);
      first[3] = (byte) stated;
      WsqCodestream codestream = read(soi(), first, comment(new byte[40]), eoi());
      assertEquals(2, codestream.comments().size(), "length " + stated);
      assertTrue(kinds(codestream).contains(Kind.BAD_SEGMENT_LENGTH));
      assertTrue(codestream.first(WsqMarker.EOI).isPresent());
    }
  }

  @Test
  void aBlockWithoutItsTableIsReported() {
    byte[] block = {(byte) 0xFF, (byte) 0xA3, 0, 3, 4, 0x55, (byte) 0xFF, 0, 0x11};
    WsqCodestream codestream = read(soi(), block, eoi());
    assertTrue(kinds(codestream).contains(Kind.MISSING_TABLE));
    assertEquals(4, codestream.blocks().get(0).dataLength());
    assertEquals(4, codestream.blocks().get(0).tableId());
  }

  @Test
  void impossibleHuffmanTablesAreNotUsed() {
    byte[] table = new byte[2 + 2 + 17 + 3];
    table[0] = (byte) 0xFF;
    table[1] = (byte) 0xA6;
    table[3] = (byte) (table.length - 2);
    table[5] = 3;
    WsqCodestream codestream = read(soi(), table, eoi());
    assertTrue(kinds(codestream).contains(Kind.BAD_TABLE));
    assertTrue(codestream.huffmanTables().isEmpty());
  }

  private static List<Kind> kinds(WsqCodestream codestream) {
    return codestream.defects().stream().map(CodestreamDefect::kind).toList();
  }

  private static WsqCodestream read(byte[]... parts) {
    return WsqCodestream.read(ByteSource.of(joined(parts)));
  }

  private static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      all.writeBytes(part);
    }
    return all.toByteArray();
  }

  private static byte[] soi() {
    return new byte[] {(byte) 0xFF, (byte) 0xA0};
  }

  private static byte[] eoi() {
    return new byte[] {(byte) 0xFF, (byte) 0xA1};
  }

  private static byte[] comment(byte[] text) {
    byte[] head = {(byte) 0xFF, (byte) 0xA8, 0, (byte) (text.length + 2)};
    return joined(head, text);
  }
}
