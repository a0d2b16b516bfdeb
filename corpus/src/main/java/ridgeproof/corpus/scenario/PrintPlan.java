package ridgeproof.corpus.scenario;

import java.util.List;
import ridgeproof.corpus.impression.FrameSize;

/**
 * How the fingerprints are captured and stored.
 *
 * @param set which boxes there are
 * @param boxes position codes 1 to 15 instead of those of the set; empty for those of the set
 * @param record 4 for binary, 14 for tagged records; 0 for 4 on a rolled card and else 14
 * @param ppi 500 or 1000 pixels per inch
 * @param compression how each image is stored
 * @param bitsPerPixel the rate that WSQ is computed for; the synthetic platen is so clean that the
 *     published 0.75 comes out as 18:1 to 27:1, and 1.5, the default, as 10:1 to 15:1
 * @param segments whether 14.021 gives the true box of each finger in an image of several
 * @param alternateSegments whether 14.025 gives it as a polygon
 * @param slapFrame width and height of a four-finger image in pixels at 500 ppi; 1600 x 1000 unless
 *     given, the largest that every edition allows
 */
public record PrintPlan(
    BoxSet set,
    List<Integer> boxes,
    int record,
    int ppi,
    Compression compression,
    double bitsPerPixel,
    boolean segments,
    boolean alternateSegments,
    List<Integer> slapFrame) {

  private static final double USUAL_RATE = 1.5;
  private static final List<Integer> USUAL_SLAP = List.of(1600, 1000);

  public PrintPlan {
    set = Defaults.orElse(set, BoxSet.ROLLED_CARD);
    boxes = boxes == null || boxes.isEmpty() ? set.boxes() : List.copyOf(boxes);
    boxes.forEach(box -> Defaults.within("box", box, 1, 15));
    if (record == 0) {
      record = set == BoxSet.ROLLED_CARD ? 4 : 14;
    }
    if (record != 4 && record != 14) {
      throw new IllegalArgumentException("record is " + record + ", not 4 or 14");
    }
    ppi = ppi == 0 ? 500 : ppi;
    compression = Defaults.orElse(compression, Compression.WSQ);
    bitsPerPixel = bitsPerPixel == 0 ? USUAL_RATE : bitsPerPixel;
    slapFrame = slapFrame == null || slapFrame.isEmpty() ? USUAL_SLAP : List.copyOf(slapFrame);
    if (slapFrame.size() != 2) {
      throw new IllegalArgumentException("slap_frame is not a width and a height");
    }
  }

  static PrintPlan of(BoxSet set) {
    return new PrintPlan(set, List.of(), 0, 0, null, 0, false, false, List.of());
  }

  /** The frame of four-finger images. */
  public FrameSize slapFrameSize() {
    return new FrameSize(slapFrame.get(0), slapFrame.get(1));
  }
}
