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
import ridgeproof.corpus.fault.ImageChange;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.impression.FingerBox;
import ridgeproof.corpus.impression.FrameSize;
import ridgeproof.corpus.impression.Impression;
import ridgeproof.corpus.impression.ImpressionSettings;
import ridgeproof.corpus.impression.SlapComposer;
import ridgeproof.corpus.impression.TwoThumbs;
import ridgeproof.examination.safecopy.PrintOrder;
import ridgeproof.imagery.GrayImage;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Draws the prints that are ordered; the fingers of one seed are those of one person, of nobody.
 */
public final class SyntheticPrints implements Function<PrintOrder, Optional<GrayImage>> {

  private static final int RIGHT_FOUR = 13;
  private static final int LEFT_FOUR = 14;
  private static final int BOTH_THUMBS = 15;
  private static final int USUAL_PPI = 500;
  private static final int FINE_PPI = 1000;

  /** From here on a picture is drawn at 1000 ppi and scaled, not at 500. */
  private static final int NEARER_TO_FINE = 750;

  /** A scale as near to 1 as this is none. */
  private static final double SAME_SCALE = 0.02;

  private static final byte PAPER = (byte) 245;
  private static final int WHOLE_IMAGE = 0;

  /** What separates the seeds of one person from those of another. */
  private static final long STRANGER = 7_919;

  /** Seeds of captures: one for each position, and others when it is tried again. */
  private static final int SEEDS = 1000;

  private static final int ANOTHER = 100;

  private record Grown(boolean stranger, FingerPosition digit) {}

  private final Map<Grown, MasterFinger> fingers = new ConcurrentHashMap<>();

  @Override
  public Optional<GrayImage> apply(PrintOrder order) {
    List<FingerPosition> digits = digits(order);
    if (digits.isEmpty() || order.position() > BOTH_THUMBS) {
      return Optional.empty();
    }
    try {
      GrayImage image = new ImageFaults(order).in(scaled(drawn(order, digits), order));
      return Optional.of(fitted(image, order));
    } catch (IllegalArgumentException e) {
      return Optional.empty(); // a frame or a hand that the corpus does not draw
    }
  }

  /** The fingers that the image is to show, from left to right. */
  private static List<FingerPosition> digits(PrintOrder order) {
    List<FingerPosition> named = FingerPosition.shownBy(order.position());
    List<FingerPosition> present =
        named.stream().filter(digit -> !order.missing().contains(digit.code())).toList();
    List<FingerPosition> shown =
        present.stream().map(digit -> FingerPosition.values()[shown(order, digit) - 1]).toList();
    // Of a slap no finger can be drawn twice, nor can one of the other hand be among them.
    boolean possible =
        shown.stream().map(FingerPosition::hand).distinct().count() < 2 || both(order);
    return possible && Set.copyOf(shown).size() == shown.size() ? shown : present;
  }

  private static boolean both(PrintOrder order) {
    return order.position() == BOTH_THUMBS;
  }

  private static int shown(PrintOrder order, FingerPosition digit) {
    return order.shown().getOrDefault(digit.code(), digit.code());
  }

  /** Only a finger at fault is spoilt, where the image shows several. */
  private GrayImage drawn(PrintOrder order, List<FingerPosition> digits) {
    ImpressionSettings settings =
        ImpressionSettings.natural(
                order.seed() * SEEDS + order.position() + (long) ANOTHER * order.attempt())
            .withPpi(drawingPpi(order))
            .withFrame(frame(order));
    Impression clean =
        impression(
            order,
            digits,
            spoilt(settings, order, order.faults().getOrDefault(WHOLE_IMAGE, Set.of())));
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
        if (box.digit().code() == finger.getKey()) {
          image = pasted(image, worse.image(), box);
        }
      }
    }
    return image;
  }

  private static int drawingPpi(PrintOrder order) {
    return order.ppi() < NEARER_TO_FINE ? USUAL_PPI : FINE_PPI;
  }

  private static double scale(PrintOrder order) {
    double scale = order.ppi() / (double) drawingPpi(order);
    return Math.abs(scale - 1) < SAME_SCALE ? 1 : scale;
  }

  private static FrameSize frame(PrintOrder order) {
    double scale = scale(order) * drawingPpi(order) / USUAL_PPI;
    int across = (int) Math.ceil(order.width() / scale);
    int down = (int) Math.ceil(order.height() / scale);
    return order.sideways() ? new FrameSize(down, across) : new FrameSize(across, down);
  }

  private static GrayImage scaled(GrayImage image, PrintOrder order) {
    double scale = scale(order);
    return scale == 1
        ? image
        : ImageChange.edit("scale", List.of((int) Math.round(100 * scale))).apply(image);
  }

  private static ImpressionSettings spoilt(
      ImpressionSettings settings, PrintOrder order, Set<String> rules) {
    return CaptureFaults.spoilt(settings, order.rolled(), order.attempt(), rules);
  }

  private Impression impression(
      PrintOrder order, List<FingerPosition> digits, ImpressionSettings settings) {
    List<MasterFinger> masters = new ArrayList<>();
    digits.forEach(
        digit ->
            masters.add(
                fingers.computeIfAbsent(
                    new Grown(order.strangers().contains(digit.code()), digit),
                    key ->
                        MasterFinger.grow(
                            order.seed() + (key.stranger() ? STRANGER : 0), key.digit()))));
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
}
