package ridgeproof.examination.facts;

import java.util.Optional;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.measure.PixelDifference;

/**
 * What another decoder made of a codestream that ours decoded.
 *
 * @param difference of its image from ours; empty where it gave none of the same size
 */
public record SecondDecoding(Optional<PixelDifference> difference) {

  public static SecondDecoding of(GrayImage ours, Decoding other) {
    return new SecondDecoding(other.image().flatMap(image -> PixelDifference.between(ours, image)));
  }
}
