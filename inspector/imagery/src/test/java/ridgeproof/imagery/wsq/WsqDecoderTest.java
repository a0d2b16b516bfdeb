package ridgeproof.imagery.wsq;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.jnbis.api.model.Bitmap;
import org.junit.jupiter.api.Test;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.TestImages.Content;
import ridgeproof.imagery.wsq.codestream.CodestreamDefect;
import ridgeproof.imagery.wsq.codestream.CodestreamDefect.Kind;
import ridgeproof.imagery.wsq.codestream.CodestreamWriter;
import ridgeproof.imagery.wsq.codestream.DecodingDeadline;
import ridgeproof.imagery.wsq.codestream.WsqBlock;
import ridgeproof.imagery.wsq.codestream.WsqCodestream;
import ridgeproof.imagery.wsq.codestream.WsqDecimal;
import ridgeproof.imagery.wsq.codestream.WsqFrame;
import ridgeproof.imagery.wsq.codestream.WsqLimits;
import ridgeproof.imagery.wsq.codestream.WsqMarker;
import ridgeproof.imagery.wsq.codestream.WsqSegment;
import ridgeproof.imagery.wsq.entropy.BlockDecoding;
import ridgeproof.imagery.wsq.subband.CoefficientPlane;
import ridgeproof.imagery.wsq.subband.Quantization;
import ridgeproof.imagery.wsq.subband.SubbandTree;
import ridgeproof.imagery.wsq.wavelet.BandSynthesis;
import ridgeproof.imagery.wsq.wavelet.BandSynthesisTest;
import ridgeproof.imagery.wsq.wavelet.ConvolutionSynthesis;
import ridgeproof.imagery.wsq.wavelet.FilterPair;
import ridgeproof.imagery.wsq.wavelet.ImageSynthesis;
import ridgeproof.transaction.record.ByteSource;

class WsqDecoderTest {

  @Test
  void everyReferenceImageAgreesWithAnotherDecoderWithinOneGrayLevel() {
    int different = 0;
    long pixels = 0;
    for (ReferenceCodestreams.Reference reference : ReferenceCodestreams.all()) {
      WsqDecoding decoding = WsqDecoder.decode(reference.source());
      assertEquals(List.of(), decoding.defects(), reference.name());
      assertTrue(decoding.isComplete(), reference.name());
      GrayImage image = decoding.image().orElseThrow();
      Bitmap other = new org.jnbis.internal.WsqDecoder().decode(reference.source().toArray());
      assertEquals(other.getWidth(), image.width());
      assertEquals(other.getHeight(), image.height());
      byte[] ours = image.toArray();
      assertTrue(TestImages.largestDifference(other.getPixels(), ours) <= 1, reference.name());
      different += TestImages.differences(other.getPixels(), ours);
      pixels += ours.length;
    }
    System.out.println(different + " of " + pixels + " pixels differ by one gray level");
    assertTrue(different < pixels / 1000);
  }

  @Test
  void liftingAndConvolutionGiveTheSameReferenceImages() {
    for (ReferenceCodestreams.Reference reference : ReferenceCodestreams.all().subList(0, 2)) {
      WsqCodestream codestream = WsqCodestream.read(reference.source());
      WsqFrame frame = codestream.frame().orElseThrow();
      FilterPair filters = FilterPair.of(codestream.transform().orElseThrow());
      byte[] lifted = decoded(reference.source(), codestream, ImageSynthesis.of(filters));
      byte[] convolved = decoded(reference.source(), codestream, new ConvolutionSynthesis(filters));
      assertEquals(frame.pixels(), lifted.length);
      assertTrue(TestImages.largestDifference(lifted, convolved) <= 1, reference.name());
    }
  }

  @Test
  void everyKindOfFilterAgreesWithAnotherDecoder() {
    for (FilterPair filters : BandSynthesisTest.PAIRS) {
      for (int width = 160; width < 164; width++) {
        byte[] encoded =
            WsqEncoder.encode(
                TestImages.of(Content.RIDGES, width, 321 - width, 4), new WsqEncoding(2, 500, 0));
        byte[] bytes = withFilters(encoded, filters);
        WsqDecoding decoding = WsqDecoder.decode(ByteSource.of(bytes));
        assertEquals(List.of(), decoding.defects());
        byte[] ours = decoding.image().orElseThrow().toArray();
        byte[] other = new org.jnbis.internal.WsqDecoder().decode(bytes).getPixels();
        assertTrue(TestImages.largestDifference(ours, other) <= 1);
      }
    }
  }

  private static byte[] withFilters(byte[] encoded, FilterPair filters) {
    WsqSegment old = WsqCodestream.read(ByteSource.of(encoded)).first(WsqMarker.DTT).orElseThrow();
    double[] low = filters.lowPassAnalysis();
    double[] high = filters.highPassAnalysis();
    CodestreamWriter out = new CodestreamWriter();
    out.bytes(Arrays.copyOf(encoded, old.offset()));
    out.marker(WsqMarker.DTT);
    out.uint16(4 + 6 * (low.length + high.length));
    out.uint8(2 * low.length - (filters.isOdd() ? 1 : 0));
    out.uint8(2 * high.length - (filters.isOdd() ? 1 : 0));
    out.signedNumbers(numbers(low));
    out.signedNumbers(numbers(high));
    out.bytes(Arrays.copyOfRange(encoded, old.offset() + old.length(), encoded.length));
    return out.toArray();
  }

  private static List<WsqDecimal> numbers(double[] values) {
    return Arrays.stream(values)
        .mapToObj(value -> WsqDecimal.closestTo(value, 0xFFFFFFFFL))
        .toList();
  }

  @Test
  void manyThreadsDecodeAtOnceWithTheSameResult() {
    List<ReferenceCodestreams.Reference> references = ReferenceCodestreams.all();
    List<GrayImage> together =
        references.parallelStream()
            .map(reference -> WsqDecoder.decode(reference.source()).image().orElseThrow())
            .toList();
    for (int i = 0; i < references.size(); i++) {
      GrayImage alone = WsqDecoder.decode(references.get(i).source()).image().orElseThrow();
      assertEquals(alone.asBuffer(), together.get(i).asBuffer());
    }
  }

  private static byte[] decoded(
      ByteSource source, WsqCodestream codestream, BandSynthesis synthesis) {
    WsqFrame frame = codestream.frame().orElseThrow();
    DecodingDeadline never = new DecodingDeadline(WsqLimits.standard());
    CoefficientPlane plane =
        new CoefficientPlane(
            new SubbandTree(frame.width(), frame.height()),
            new Quantization(codestream.quantization().orElseThrow()),
            synthesis.lowFactor(),
            synthesis.highFactor(),
            frame.scale().value());
    new BlockDecoding(codestream, source.toArray(), plane, never).run();
    return new ImageSynthesis(synthesis, never).pixels(plane, frame.shift().value()).orElseThrow();
  }

  @Test
  void anImageAboveTheLimitIsNotDecoded() {
    WsqDecoding decoding =
        WsqDecoder.decode(ridges(), WsqLimits.standard().withMaxPixels(200 * 100 - 1));
    assertTrue(decoding.image().isEmpty());
    assertEquals(List.of(Kind.SIZE_OVER_LIMIT), kinds(decoding));
  }

  @Test
  void aSizeThatTheBytesCannotCodeIsNotDecoded() {
    byte[] bytes = ridges().toArray();
    int frame = WsqCodestream.read(ByteSource.of(bytes)).frame().orElseThrow().offset();
    bytes[frame + 6] = 0x3F;
    bytes[frame + 8] = 0x3F;
    int cut = WsqCodestream.read(ByteSource.of(bytes)).blocks().get(0).dataOffset() + 8;
    WsqDecoding decoding =
        WsqDecoder.decode(
            ByteSource.of(bytes).slice(0, cut),
            WsqLimits.standard().withMaxPixels(Integer.MAX_VALUE));
    assertTrue(decoding.image().isEmpty());
    assertTrue(kinds(decoding).contains(Kind.SIZE_IMPLAUSIBLE), decoding.defects().toString());
  }

  @Test
  void aLargeSizeThatTheDataDoesNotCodeIsNotDecoded() {
    byte[] bytes = ridges().toArray();
    int frame = WsqCodestream.read(ByteSource.of(bytes)).frame().orElseThrow().offset();
    bytes[frame + 6] = 0x36;
    bytes[frame + 8] = 0x36;
    WsqDecoding decoding = WsqDecoder.decode(ByteSource.of(bytes));
    assertTrue(decoding.image().isEmpty());
    assertEquals(Kind.SIZE_IMPLAUSIBLE, kinds(decoding).get(kinds(decoding).size() - 1));
  }

  @Test
  void aLargeImageThatIsMostlyPaperIsDecoded() {
    int side = 2500;
    byte[] paper = new byte[side * side];
    Arrays.fill(paper, (byte) 250);
    for (int i = 0; i < 600; i++) {
      for (int x = 0; x < 600; x++) {
        paper[(900 + i) * side + 900 + x] = (byte) (128 + 100 * Math.sin(x * 0.7));
      }
    }
    byte[] stream =
        WsqEncoder.encode(GrayImage.owning(side, side, paper), WsqEncoding.standard(500));
    WsqDecoding decoding = WsqDecoder.decode(ByteSource.of(stream));
    assertEquals(List.of(), kinds(decoding));
    assertTrue(decoding.isComplete());
  }

  @Test
  void filtersOfHundredsOfTapsAreRefused() {
    byte[] bytes = ridges().toArray();
    int table = WsqCodestream.read(ByteSource.of(bytes)).transform().orElseThrow().offset();
    bytes[table + 4] = (byte) 255;
    bytes[table + 5] = (byte) 255;
    WsqDecoding decoding = WsqDecoder.decode(ByteSource.of(bytes));
    assertTrue(decoding.image().isEmpty());
    assertTrue(decoding.codestream().transform().isEmpty());
  }

  @Test
  void aPassedDeadlineEndsInADefect() {
    WsqDecoding decoding = WsqDecoder.decode(ridges(), WsqLimits.standard().withTimeLimit(-1));
    assertTrue(decoding.image().isEmpty());
    assertEquals(List.of(Kind.TIME_LIMIT), kinds(decoding));
  }

  @Test
  void cancellationEndsInADefectWhereverItComes() {
    for (int allowed = 0; allowed < 60; allowed++) {
      int[] asked = {0};
      int limit = allowed;
      WsqDecoding decoding =
          WsqDecoder.decode(
              ridges(), WsqLimits.standard().withCancellation(() -> asked[0]++ >= limit));
      assertTrue(decoding.image().isEmpty());
      assertEquals(List.of(Kind.CANCELLED), kinds(decoding));
    }
  }

  @Test
  void aDamagedBlockLeavesTheOthersWhole() {
    ByteSource good = ridges();
    WsqCodestream codestream = WsqCodestream.read(good);
    WsqBlock second = codestream.blocks().get(1);
    byte[] bytes = good.toArray();
    int damage = second.dataOffset() + 20;
    bytes[damage - 1] = 0;
    for (int i = 0; i < 10; i++) {
      bytes[damage + 2 * i] = (byte) 0xFF;
      bytes[damage + 2 * i + 1] = 0;
    }
    WsqDecoding decoding = WsqDecoder.decode(ByteSource.of(bytes));
    CodestreamDefect defect = decoding.defects().get(0);
    assertEquals(Kind.BAD_CODE, defect.kind());
    assertTrue(defect.detail().startsWith("block 2 of 3"), defect.detail());
    assertTrue(defect.offset() >= second.dataOffset() + 18, defect.toString());
    assertTrue(defect.offset() <= second.dataOffset() + 40, defect.toString());
    assertTrue(decoding.image().isPresent());
    assertTrue(decoding.recoveredCoefficients() > decoding.codedCoefficients() / 2);
  }

  @Test
  void aCutBlockIsNamedWithTheByteWhereItEnds() {
    ByteSource good = ridges();
    WsqBlock second = WsqCodestream.read(good).blocks().get(1);
    int cut = second.dataOffset() + second.dataLength() / 2;
    WsqDecoding decoding = WsqDecoder.decode(good.slice(0, cut));
    CodestreamDefect defect =
        decoding.defects().stream()
            .filter(d -> d.kind() == Kind.TRUNCATED)
            .findFirst()
            .orElseThrow();
    assertTrue(defect.offset() > cut - 4 && defect.offset() <= cut, defect.toString());
    assertTrue(decoding.image().isPresent());
  }

  private static ByteSource ridges() {
    GrayImage image = TestImages.of(Content.RIDGES, 200, 100, 7);
    return ByteSource.of(WsqEncoder.encode(image, new WsqEncoding(2.25, 500, 0)));
  }

  private static List<Kind> kinds(WsqDecoding decoding) {
    return decoding.defects().stream().map(CodestreamDefect::kind).toList();
  }
}
