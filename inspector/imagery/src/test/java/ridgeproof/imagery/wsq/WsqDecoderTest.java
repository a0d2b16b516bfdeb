package ridgeproof.imagery.wsq;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.jnbis.api.model.Bitmap;
import org.junit.jupiter.api.Test;
import ridgeproof.imagery.GrayImage;

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
      assertTrue(largestDifference(other.getPixels(), image) <= 1, reference.name());
      different += differences(other.getPixels(), image);
      pixels += other.getLength();
    }
    System.out.println(different + " of " + pixels + " pixels differ by one gray level");
  }

  static int largestDifference(byte[] expected, GrayImage image) {
    byte[] actual = image.toArray();
    int largest = 0;
    for (int i = 0; i < actual.length; i++) {
      largest = Math.max(largest, Math.abs((expected[i] & 0xFF) - (actual[i] & 0xFF)));
    }
    return largest;
  }

  private static int differences(byte[] expected, GrayImage image) {
    byte[] actual = image.toArray();
    int count = 0;
    for (int i = 0; i < actual.length; i++) {
      count += expected[i] == actual[i] ? 0 : 1;
    }
    return count;
  }
}
