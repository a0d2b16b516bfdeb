package ridgeproof.corpus.finger;

/**
 * One of the ten fingers.
 *
 * <p>Position codes are those of ANSI/NIST-ITL, finger position table, 1 to 10 (from memory). The
 * sizes are typical adult ones in pixels at 500 ppi (common practice): the width of the skin from
 * nail edge to nail edge laid flat, the length of the last phalanx from tip to flexion crease, and
 * how far the tip lies below the middle finger's when the hand is held straight.
 */
public enum FingerDigit {
  RIGHT_THUMB(1, Hand.RIGHT, Kind.THUMB),
  RIGHT_INDEX(2, Hand.RIGHT, Kind.INDEX),
  RIGHT_MIDDLE(3, Hand.RIGHT, Kind.MIDDLE),
  RIGHT_RING(4, Hand.RIGHT, Kind.RING),
  RIGHT_LITTLE(5, Hand.RIGHT, Kind.LITTLE),
  LEFT_THUMB(6, Hand.LEFT, Kind.THUMB),
  LEFT_INDEX(7, Hand.LEFT, Kind.INDEX),
  LEFT_MIDDLE(8, Hand.LEFT, Kind.MIDDLE),
  LEFT_RING(9, Hand.LEFT, Kind.RING),
  LEFT_LITTLE(10, Hand.LEFT, Kind.LITTLE);

  /** The finger's place on the hand. */
  public enum Kind {
    THUMB(600, 540, 0, 1.04),
    INDEX(520, 470, 130, 1.00),
    MIDDLE(535, 490, 0, 1.00),
    RING(515, 475, 95, 0.99),
    LITTLE(450, 415, 420, 0.95);

    public final int widthPx;
    public final int lengthPx;
    public final int tipDropPx;
    final double ridgeBreadth;

    Kind(int widthPx, int lengthPx, int tipDropPx, double ridgeBreadth) {
      this.widthPx = widthPx;
      this.lengthPx = lengthPx;
      this.tipDropPx = tipDropPx;
      this.ridgeBreadth = ridgeBreadth;
    }
  }

  private final int position;
  private final Hand hand;
  private final Kind kind;

  FingerDigit(int position, Hand hand, Kind kind) {
    this.position = position;
    this.hand = hand;
    this.kind = kind;
  }

  /** The finger position code, 1 (right thumb) to 10 (left little). */
  public int position() {
    return position;
  }

  /** The hand it belongs to. */
  public Hand hand() {
    return hand;
  }

  /** Its place on the hand. */
  public Kind kind() {
    return kind;
  }
}
