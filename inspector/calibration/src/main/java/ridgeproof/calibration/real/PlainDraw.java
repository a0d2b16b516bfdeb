package ridgeproof.calibration.real;

import java.util.List;
import java.util.stream.IntStream;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.corpus.finger.Skin;
import ridgeproof.corpus.impression.FrameSize;
import ridgeproof.corpus.impression.Impression;
import ridgeproof.corpus.impression.ImpressionSettings;
import ridgeproof.corpus.impression.Traces;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerAnalyzer;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Single plain prints without defects, each of another finger, as a small sensor takes them: two
 * thirds of them are index and middle fingers, and the frame cuts some.
 */
public final class PlainDraw {

  private static final double PPI = 500;
  private static final int YOUNGEST = 18;
  private static final int OLDEST = 86;
  private static final int WHITE = 254;

  private final long seed;
  private final boolean aged;

  /**
   * @param aged whether skin is drawn by age and hands are laid down with less care; else as
   *     careful captures of smooth skin
   */
  public PlainDraw(long seed, boolean aged) {
    this.seed = seed;
    this.aged = aged;
  }

  /** So many, on all cores. */
  public List<FingerAnalysis> draw(int prints) {
    return IntStream.rangeClosed(1, prints).parallel().mapToObj(this::print).toList();
  }

  private FingerAnalysis print(int number) {
    SeededRandom dice = new SeededRandom(seed, number);
    long person = seed * 1_000_003 + number;
    FingerPosition digit = FingerPosition.values()[finger(dice) + (dice.chance(0.5) ? 5 : 0)];
    int age = YOUNGEST + dice.below(OLDEST - YOUNGEST);
    Skin skin = aged ? Skin.ofAge(age, dice) : Skin.smooth();
    ImpressionSettings settings =
        ImpressionSettings.natural(person).withFrame(aged ? sensor(dice) : FrameSize.PLAIN_FINGER);
    if (aged) {
      settings = careless(settings, dice).withTraces(Traces.ofAge(age, dice));
    }
    Impression impression = Impression.plain(MasterFinger.grow(person, digit, skin), settings);
    GrayImage image = aged ? whitened(impression.image(), dice) : impression.image();
    return FingerAnalyzer.analyse(image, PPI);
  }

  /** Optical sensors are set so that their bare ground is nearly or wholly white. */
  private static GrayImage whitened(GrayImage image, SeededRandom dice) {
    double white = dice.between(205, 250);
    byte[] gray = image.toArray();
    for (int i = 0; i < gray.length; i++) {
      gray[i] = (byte) Math.min(WHITE, Math.round((gray[i] & 0xFF) * WHITE / white));
    }
    return GrayImage.owning(image.width(), image.height(), gray);
  }

  private static int finger(SeededRandom dice) {
    return dice.chance(0.67) ? 1 + dice.below(2) : dice.below(5);
  }

  /** 0.7 to 1.2 in wide, 0.75 to 1 in high (common practice). */
  private static FrameSize sensor(SeededRandom dice) {
    return new FrameSize(350 + dice.below(250), 380 + dice.below(120));
  }

  /** As people lay a finger down whom nobody guides. */
  private static ImpressionSettings careless(ImpressionSettings careful, SeededRandom dice) {
    return careful
        .withRotation(Math.max(-45, Math.min(45, dice.between(-12, 12) + dice.between(-12, 12))))
        .withShift(dice.between(-60, 60), dice.between(-15, 75))
        .withSkin(dice.between(0.05, 0.95), dice.between(0.05, 0.95))
        .withSensor(dice.between(0.7, 1), dice.between(0, 4))
        .withDistortion(dice.between(0.1, 0.8));
  }
}
