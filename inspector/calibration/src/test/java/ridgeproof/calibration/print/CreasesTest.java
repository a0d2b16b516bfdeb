package ridgeproof.calibration.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.Skin;
import ridgeproof.corpus.impression.FrameSize;
import ridgeproof.corpus.impression.Impression;
import ridgeproof.corpus.impression.ImpressionSettings;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.quality.FingerAnalyzer;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.spec.layout.FingerPosition;

/** Creases of the skin are white lines across ridges; their ends are no minutiae. */
class CreasesTest {

  private static final int PEOPLE = 4;
  private static final int WHITE = 250;

  private static List<FingerMeasures> prints(int creases, UnaryOperator<GrayImage> change) {
    Skin skin = new Skin(creases, 0, 0, Skin.smooth().belowCrease());
    return IntStream.range(0, PEOPLE)
        .mapToObj(
            person -> {
              MasterFinger finger =
                  MasterFinger.grow(4200 + person, FingerPosition.RIGHT_INDEX, skin);
              ImpressionSettings settings =
                  ImpressionSettings.natural(77 + person).withFrame(FrameSize.PLAIN_FINGER);
              return Impression.plain(finger, settings).image();
            })
        .map(change)
        .map(image -> FingerAnalyzer.analyse(image, 500).measures().orElseThrow())
        .toList();
  }

  private static int minutiae(List<FingerMeasures> prints) {
    return prints.stream().mapToInt(print -> print.minutiae().count()).sum();
  }

  private static double period(List<FingerMeasures> prints) {
    return prints.stream().mapToDouble(print -> print.flow().periodMm()).sum();
  }

  private static double area(List<FingerMeasures> prints) {
    return prints.stream().mapToDouble(print -> print.extent().areaMm2()).sum();
  }

  /** Slanting lines without any ink, three pixels broad and one and a half millimetres apart. */
  private static GrayImage crossed(GrayImage image) {
    byte[] gray = image.toArray();
    for (int y = 0; y < image.height(); y++) {
      for (int x = 0; x < image.width(); x++) {
        boolean within = x % 120 > 20 && y % 90 > 10;
        if (within && Math.floorMod(y - x / 3, 30) < 3) {
          gray[y * image.width() + x] = (byte) WHITE;
        }
      }
    }
    return GrayImage.owning(image.width(), image.height(), gray);
  }

  @Test
  void manyFineCreasesLeaveTheCountAsItIs() {
    List<FingerMeasures> smooth = prints(0, image -> image);
    List<FingerMeasures> creased = prints(40, image -> image);
    assertEquals(minutiae(smooth), minutiae(creased), 0.05 * minutiae(smooth));
    assertEquals(period(smooth), period(creased), 0.01 * period(smooth));
    assertEquals(area(smooth), area(creased), 0.01 * area(smooth));
  }

  @Test
  void endsOfWhiteLinesAreNotCounted() {
    List<FingerMeasures> smooth = prints(0, image -> image);
    List<FingerMeasures> crossed = prints(0, CreasesTest::crossed);
    int before = minutiae(smooth);
    int after = minutiae(crossed);
    assertTrue(after <= 1.05 * before && after >= 0.8 * before, before + " to " + after);
    assertEquals(area(smooth), area(crossed), 0.03 * area(smooth));
  }
}
