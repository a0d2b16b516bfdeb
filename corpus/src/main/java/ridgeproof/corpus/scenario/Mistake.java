package ridgeproof.corpus.scenario;

/**
 * What went wrong with the set as a whole.
 *
 * @param box position code of the image it is about; 0 where it is about all
 * @param finger the other finger, 1 to 10; 0 where there is none
 */
public record Mistake(Kind kind, int box, int finger) {

  /** Each leaves the labels of the boxes as they should be, and puts something else in. */
  public enum Kind {
    /** The box shows another finger, which also stands in its own box: one finger in two boxes. */
    FINGER_TWICE,
    /** The box and the box of the other finger show each other's finger. */
    FINGERS_EXCHANGED,
    /** The images of four fingers show the other hand. */
    HANDS_EXCHANGED,
    /**
     * The plain thumbs stand in each other's box; in an image of both thumbs the segments name the
     * wrong one.
     */
    THUMBS_EXCHANGED,
    /** A second image of the same box was kept. */
    RETAKE_KEPT,
    /** Scanned at 1000 ppi and labelled 500, in one box or in all. */
    FINER_THAN_LABELLED
  }

  public Mistake {
    Defaults.required("kind", kind);
    Defaults.within("box", box, 0, 15);
    Defaults.within("finger", finger, 0, 10);
    boolean two = kind == Kind.FINGER_TWICE || kind == Kind.FINGERS_EXCHANGED;
    if (two && (box < 1 || box > 10 || finger == 0)) {
      throw new IllegalArgumentException(kind + " needs a box of 1 to 10 and a finger");
    }
    if (kind == Kind.RETAKE_KEPT && box == 0) {
      throw new IllegalArgumentException(kind + " needs a box");
    }
  }
}
