package ridgeproof.imagery.wsq;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.TestImages.Content;
import ridgeproof.imagery.wsq.codestream.WsqCodestream;
import ridgeproof.imagery.wsq.codestream.WsqFrame;
import ridgeproof.transaction.record.ByteSource;

class WsqEncoderTest {

  @Test
  void referenceImagesEncodedAgainComeOutAlikeInSizeAndQuality() {
    System.out.println(
        "                      image   original      again   ratio   dB  other decoder");
    for (ReferenceCodestreams.Reference reference : ReferenceCodestreams.all()) {
      GrayImage image = WsqDecoder.decode(reference.source()).image().orElseThrow();
      byte[] again = WsqEncoder.encode(image, WsqEncoding.standard(500));
      WsqDecoding decoding = WsqDecoder.decode(ByteSource.of(again));
      assertEquals(List.of(), decoding.defects());
      byte[] ours = decoding.image().orElseThrow().toArray();
      byte[] other = new org.jnbis.internal.WsqDecoder().decode(again).getPixels();
      int original = reference.source().length();
      double psnr = TestImages.psnr(image.toArray(), ours);
      System.out.printf(
          "%-38s %6d %6d %6.1f %6.2f  differs in %d%n",
          reference.name(),
          original,
          again.length,
          (double) ours.length / again.length,
          psnr,
          TestImages.differences(ours, other));
      assertTrue(TestImages.largestDifference(ours, other) <= 1, reference.name());
      assertTrue(Math.abs(again.length - original) < 0.05 * original, reference.name());
      assertTrue(psnr > 36, reference.name() + " " + psnr);
    }
  }

  @Test
  void theCommentStatesSizeResolutionAndRate() {
    byte[] bytes =
        WsqEncoder.encode(TestImages.of(Content.RIDGES, 40, 30, 1), WsqEncoding.standard(500));
    WsqCodestream codestream = WsqCodestream.read(ByteSource.of(bytes));
    assertEquals(
        List.of(
            "NIST_COM",
            "PIX_WIDTH",
            "PIX_HEIGHT",
            "PIX_DEPTH",
            "PPI",
            "LOSSY",
            "COLORSPACE",
            "COMPRESSION",
            "WSQ_BITRATE"),
        List.copyOf(codestream.keyValues().keySet()));
    assertEquals("40", codestream.keyValues().get("PIX_WIDTH"));
    assertEquals("30", codestream.keyValues().get("PIX_HEIGHT"));
    assertEquals("500", codestream.keyValues().get("PPI"));
    assertEquals("0.750000", codestream.keyValues().get("WSQ_BITRATE"));
  }

  @Test
  void theFrameHoldsTheSoftwareNumber() {
    byte[] bytes =
        WsqEncoder.encode(
            TestImages.of(Content.RIDGES, 40, 30, 1), new WsqEncoding(0.75, 500, 513));
    WsqFrame frame = WsqCodestream.read(ByteSource.of(bytes)).frame().orElseThrow();
    assertEquals(513, frame.softwareImplementation());
    assertEquals(40, frame.width());
    assertEquals(30, frame.height());
  }

  @Test
  void anImageOfOneGrayLevelComesBackUnchanged() {
    for (int gray = 0; gray < 256; gray += 15) {
      byte[] pixels = new byte[300];
      Arrays.fill(pixels, (byte) gray);
      byte[] bytes = WsqEncoder.encode(GrayImage.owning(20, 15, pixels), WsqEncoding.standard(500));
      WsqDecoding decoding = WsqDecoder.decode(ByteSource.of(bytes));
      assertEquals(List.of(), decoding.defects());
      assertArrayEquals(pixels, decoding.image().orElseThrow().toArray());
    }
  }

  @Test
  void aHigherRateComesNearerToTheImage() {
    GrayImage image = TestImages.of(Content.RIDGES, 300, 200, 3);
    double standard = psnrAt(image, WsqEncoding.STANDARD_BITS_PER_PIXEL);
    double high = psnrAt(image, WsqEncoding.HIGH_BITS_PER_PIXEL);
    assertTrue(high > standard, standard + " dB, " + high + " dB");
  }

  private static double psnrAt(GrayImage image, double rate) {
    byte[] bytes = WsqEncoder.encode(image, new WsqEncoding(rate, 500, 0));
    byte[] back = WsqDecoder.decode(ByteSource.of(bytes)).image().orElseThrow().toArray();
    return TestImages.psnr(image.toArray(), back);
  }

  @Test
  void aRateOfZeroIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new WsqEncoding(0, 500, 0));
  }

  @Test
  void aSideThatSofCannotStateIsRefused() {
    GrayImage wide = GrayImage.owning(65536, 1, new byte[65536]);
    assertThrows(
        IllegalArgumentException.class, () -> WsqEncoder.encode(wide, WsqEncoding.standard(500)));
  }
}
