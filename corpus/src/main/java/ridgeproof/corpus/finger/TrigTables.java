package ridgeproof.corpus.finger;

/** Sine and cosine from a table filled by StrictMath: equal on every machine, and quick. */
public final class TrigTables {

  private static final int SIZE = 1 << 13;
  private static final int MASK = SIZE - 1;
  private static final float STEPS_PER_RADIAN = (float) (SIZE / (2 * Math.PI));
  private static final float[] SINE = new float[SIZE];

  static {
    for (int i = 0; i < SIZE; i++) {
      SINE[i] = (float) StrictMath.sin(2 * Math.PI * i / SIZE);
    }
  }

  private TrigTables() {}

  public static float sin(float radians) {
    return SINE[index(radians)];
  }

  public static float cos(float radians) {
    return SINE[(index(radians) + SIZE / 4) & MASK];
  }

  private static int index(float radians) {
    return (int) (radians * STEPS_PER_RADIAN + 16 * SIZE + 0.5f) & MASK;
  }
}
