package ridgeproof.cli.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import ridgeproof.corpus.finger.FingerDigit;
import ridgeproof.corpus.finger.Hand;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.corpus.impression.FingerBox;
import ridgeproof.corpus.impression.FrameSize;
import ridgeproof.corpus.impression.Impression;
import ridgeproof.corpus.impression.ImpressionSettings;
import ridgeproof.corpus.impression.SlapComposer;
import ridgeproof.corpus.impression.TwoThumbs;
import ridgeproof.examination.safecopy.PrintOrder;
import ridgeproof.imagery.GrayImage;

/**
 * Draws the prints that are ordered; the fingers of one seed are those of one person, of nobody.
 */
public final class SyntheticPrints implements Function<PrintOrder, Optional<GrayImage>> {

  private static final int RIGHT_FOUR = 13;
  private static final int LEFT_FOUR = 14;
  private static final int BOTH_THUMBS = 15;
  private static final int PLAIN_RIGHT_THUMB = 11;
  private static final int PLAIN_LEFT_THUMB = 12;
  private static final int USUAL_PPI = 500;
  private static final int FINE_PPI = 1000;
  private static final byte PAPER = (byte) 245;
  private static final int WHOLE_IMAGE = 0;

  /** How much of a defect is tried, from the first attempt to the last. */
  private static final double[] STRENGTHS = {0.65, 0.85, 1};

  /** What in a capture makes the finding of a rule. */
  private static final Map<String, CaptureDefect> DEFECTS =
      Map.ofEntries(
          Map.entry("RP-RDG-001", CaptureDefect.BLANK),
          Map.entry("RP-RDG-002", CaptureDefect.TOO_FEW_MINUTIAE),
          Map.entry("RP-RDG-003", CaptureDefect.ROLL_NOT_WIDE),
          Map.entry("RP-RDG-004", CaptureDefect.TOO_DRY),
          Map.entry("RP-RDG-005", CaptureDefect.TOO_WET),
          Map.entry("RP-RDG-006", CaptureDefect.SLIPPAGE),
          Map.entry("RP-RDG-007", CaptureDefect.LIFTED_DURING_ROLL),
          Map.entry("RP-RDG-008", CaptureDefect.CORE_MISSING),
          Map.entry("RP-RDG-009", CaptureDefect.ROTATED),
          Map.entry("RP-RDG-010", CaptureDefect.CLIPPED_AT_BORDER),
          Map.entry("RP-RDG-011", CaptureDefect.BLURRED),
          Map.entry("RP-RDG-012", CaptureDefect.LOW_CONTRAST),
          Map.entry("RP-RDG-014", CaptureDefect.TOO_FEW_MINUTIAE),
          Map.entry("RP-RDG-015", CaptureDefect.LATENT_GHOST),
          Map.entry("RP-IMG-035", CaptureDefect.LOW_CONTRAST));

  private static final Set<String> INVERTED = Set.of("RP-IMG-037", "RP-IMG-051");

  private final Map<FingerDigit, MasterFinger> fingers = new ConcurrentHashMap<>();

  @Override
  public Optional<GrayImage> apply(PrintOrder order) {
    boolean drawable = order.ppi() == USUAL_PPI || order.ppi() == FINE_PPI;
    List<FingerDigit> digits = digits(order);
    if (!drawable || digits.isEmpty() || order.position() > BOTH_THUMBS) {
      return Optional.empty();
    }
    try {
      GrayImage image = fitted(drawn(order, digits), order);
      boolean inverted =
          order.faults().values().stream()
              .anyMatch(rules -> rules.stream().anyMatch(INVERTED::contains));
      return Optional.of(inverted ? inverted(image) : image);
    } catch (IllegalArgumentException e) {
      return Optional.empty(); // a frame or a hand that the corpus does not draw
    }
  }

  /** The fingers that the image is to show, from left to right. */
  private static List<FingerDigit> digits(PrintOrder order) {
    List<FingerDigit> named =
        switch (order.position()) {
          case RIGHT_FOUR -> Hand.RIGHT.slapOrder();
          case LEFT_FOUR -> Hand.LEFT.slapOrder();
          case BOTH_THUMBS -> List.of(FingerDigit.LEFT_THUMB, FingerDigit.RIGHT_THUMB);
          case PLAIN_RIGHT_THUMB -> List.of(FingerDigit.RIGHT_THUMB);
          case PLAIN_LEFT_THUMB -> List.of(FingerDigit.LEFT_THUMB);
          default ->
              order.position() >= 1 && order.position() <= FingerDigit.values().length
                  ? List.of(FingerDigit.values()[order.position() - 1])
                  : List.of();
        };
    return named.stream()
        .filter(digit -> !order.missing().contains(digit.position()))
        .map(digit -> FingerDigit.values()[shown(order, digit) - 1])
        .toList();
  }

  private static int shown(PrintOrder order, FingerDigit digit) {
    return order.shown().getOrDefault(digit.position(), digit.position());
  }

  /** Only a finger at fault is spoilt, where the image shows several. */
  private GrayImage drawn(PrintOrder order, List<FingerDigit> digits) {
    ImpressionSettings settings =
        ImpressionSettings.natural(order.seed() * 100 + order.position())
            .withPpi(order.ppi())
            .withFrame(frame(order));
    Impression clean =
        impression(order, digits, spoilt(settings, order, order.faults().get(WHOLE_IMAGE)));
    if (digits.size() == 1) {
      Set<String> faults =
          order.faults().values().stream().flatMap(Set::stream).collect(Collectors.toSet());
      return impression(order, digits, spoilt(settings, order, faults)).image();
    }
    GrayImage image = clean.image();
    Map<Integer, Set<String>> byFinger = new HashMap<>(order.faults());
    byFinger.remove(WHOLE_IMAGE);
    for (Map.Entry<Integer, Set<String>> finger : byFinger.entrySet()) {
      Impression worse = impression(order, digits, spoilt(settings, order, finger.getValue()));
      for (FingerBox box : clean.boxes()) {
        if (box.digit().position() == finger.getKey()) {
          image = pasted(image, worse.image(), box);
        }
      }
    }
    return image;
  }

  private static FrameSize frame(PrintOrder order) {
    int scale = order.ppi() / USUAL_PPI;
    return new FrameSize((order.width() + scale - 1) / scale, (order.height() + scale - 1) / scale);
  }

  private static ImpressionSettings spoilt(
      ImpressionSettings settings, PrintOrder order, Set<String> rules) {
    ImpressionSettings spoilt = settings;
    double strength = STRENGTHS[Math.min(order.attempt(), STRENGTHS.length - 1)];
    for (String rule : rules == null ? Set.<String>of() : rules) {
      CaptureDefect defect = DEFECTS.get(rule);
      if (defect != null && defect.befalls(order.rolled())) {
        spoilt = spoilt.withDefect(defect, strength);
      }
    }
    return spoilt;
  }

  private Impression impression(
      PrintOrder order, List<FingerDigit> digits, ImpressionSettings settings) {
    List<MasterFinger> masters = new ArrayList<>();
    digits.forEach(
        digit ->
            masters.add(
                fingers.computeIfAbsent(digit, key -> MasterFinger.grow(order.seed(), key))));
    if (order.position() == RIGHT_FOUR || order.position() == LEFT_FOUR) {
      return SlapComposer.fourFingers(masters, digits.get(0).hand(), settings);
    }
    if (order.position() == BOTH_THUMBS && masters.size() == 2) {
      return TwoThumbs.of(masters.get(0), masters.get(1), settings);
    }
    return order.rolled()
        ? Impression.rolled(masters.get(0), settings)
        : Impression.plain(masters.get(0), settings);
  }

  private static GrayImage pasted(GrayImage image, GrayImage from, FingerBox box) {
    byte[] pixels = image.toArray();
    for (int y = Math.max(0, box.top()); y <= Math.min(image.height() - 1, box.bottom()); y++) {
      for (int x = Math.max(0, box.left()); x <= Math.min(image.width() - 1, box.right()); x++) {
        pixels[y * image.width() + x] = (byte) from.grayAt(x, y);
      }
    }
    return GrayImage.owning(image.width(), image.height(), pixels);
  }

  /** To the very pixel: of a fine image the frame is only near. */
  private static GrayImage fitted(GrayImage image, PrintOrder order) {
    if (image.width() == order.width() && image.height() == order.height()) {
      return image;
    }
    byte[] pixels = new byte[order.width() * order.height()];
    Arrays.fill(pixels, PAPER);
    for (int y = 0; y < Math.min(image.height(), order.height()); y++) {
      for (int x = 0; x < Math.min(image.width(), order.width()); x++) {
        pixels[y * order.width() + x] = (byte) image.grayAt(x, y);
      }
    }
    return GrayImage.owning(order.width(), order.height(), pixels);
  }

  private static GrayImage inverted(GrayImage image) {
    byte[] pixels = image.toArray();
    for (int i = 0; i < pixels.length; i++) {
      pixels[i] = (byte) ~pixels[i];
    }
    return GrayImage.owning(image.width(), image.height(), pixels);
  }
}
