package ridgeproof.examination.cause.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import ridgeproof.examination.RidgeImage;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.MeasuredCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.Turn;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerAnalyzer;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.ridges.quality.QualityScore;
import ridgeproof.ridges.segmentation.Segment;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.layout.FingerPosition;

/**
 * A tenprint card of made-up prints: ridges that end and fork by chance, in each finger elsewhere;
 * tips and extents are those of a made-up arch. Records 3 to 12 are the rolls, 13 and 14 the
 * thumbs, 15 and 16 the slaps.
 */
final class MadeHands {

  static final int RIGHT_SLAP = 15;
  static final int LEFT_SLAP = 16;
  static final List<Integer> RIGHT = List.of(2, 3, 4, 5);
  static final List<Integer> LEFT = List.of(10, 9, 8, 7);

  static final int SIDE = 240;
  private static final int MINUTIAE = 30;
  private static final double PERIOD = 9;
  private static final int PPI = 500;
  private static final int SCORE = 60;
  private static final Map<Print, Minutiae> KNOWN = new ConcurrentHashMap<>();
  private static final Map<Turn, FingerMeasures> ARCHES = new ConcurrentHashMap<>();

  /**
   * A print of a finger as an image shows it.
   *
   * @param finger 1 to 10; 0 for a print that matches nothing else
   * @param tip where the arch shows its tip: not turned where it is at the top
   */
  record Print(int finger, boolean mirrored, Turn turn, Turn tip) {

    static Print of(int finger) {
      return new Print(finger, false, Turn.NONE, Turn.NONE);
    }

    Print mirror() {
      return new Print(finger, !mirrored, turn, tip);
    }

    /** Turned as a picture is, its tip too. */
    Print turned(Turn by) {
      return new Print(finger, mirrored, by, by);
    }

    Print withTip(Turn side) {
      return new Print(finger, mirrored, turn, side);
    }

    private Minutiae minutiae() {
      return KNOWN.computeIfAbsent(
          new Print(finger, mirrored, turn, Turn.NONE), print -> made(print));
    }

    private static Minutiae made(Print print) {
      byte[] ridges = pixels(print.finger);
      byte[] pixels = new byte[ridges.length];
      for (int i = 0; i < pixels.length; i++) {
        int column = i % SIDE;
        pixels[i] = ridges[i - column + (print.mirrored ? SIDE - 1 - column : column)];
      }
      GrayImage image = print.turn.of(GrayImage.owning(SIDE, SIDE, pixels));
      return Minutiae.of(image.toArray(), SIDE, SIDE, PPI);
    }

    FingerAnalysis analysis() {
      FingerMeasures arch =
          ARCHES.computeIfAbsent(
              tip,
              side -> FingerAnalyzer.analyse(side.of(RidgeImage.usual()), PPI).measures().get());
      FingerMeasures measures =
          new FingerMeasures(
              arch.extent(),
              arch.flow(),
              arch.tone(),
              arch.clarity(),
              arch.smear(),
              arch.gap(),
              arch.pattern(),
              arch.rotation(),
              minutiae(),
              arch.maps());
      return new FingerAnalysis(
          List.of(), Optional.of(measures), new QualityScore(SCORE, List.of()));
    }
  }

  /** Ridges that end or fork wherever their phase winds about a point. */
  static byte[] pixels(int finger) {
    Random random = new Random(100 + finger);
    double[][] points = new double[MINUTIAE][];
    for (int i = 0; i < MINUTIAE; i++) {
      points[i] =
          new double[] {SIDE * random.nextDouble(), SIDE * random.nextDouble(), i % 2 * 2 - 1};
    }
    byte[] pixels = new byte[SIDE * SIDE];
    for (int i = 0; i < pixels.length; i++) {
      int x = i % SIDE;
      int y = i / SIDE;
      double phase = 2 * Math.PI * Math.hypot(x - SIDE / 2.0, y - 1.2 * SIDE) / PERIOD;
      for (double[] point : points) {
        phase += point[2] * Math.atan2(y - point[1], x - point[0]);
      }
      pixels[i] = (byte) Math.round(130 + 110 * Math.cos(phase));
    }
    return pixels;
  }

  private final MeasuredCard card;

  private MadeHands(MeasuredCard card) {
    this.card = card;
  }

  /** A card whose images show nothing yet. */
  static MadeHands none() {
    return new MadeHands(
        MeasuredCard.of(SampleCard.rolledTagged())
            .depth(Depth.RIDGES)
            .compared(new SequenceResult(List.of(), List.of(), 40)));
  }

  /** The ten rolls, each in its own record. */
  static MadeHands rolls() {
    MadeHands hands = none();
    for (int finger = 1; finger <= 10; finger++) {
      hands = hands.roll(finger, Print.of(finger));
    }
    return hands;
  }

  MadeHands roll(int box, Print print) {
    return new MadeHands(
        card.ridges(
            2 + box,
            new RidgeAnalysis(
                Impression.ROLLED, Map.of(finger(box), print.analysis()), Optional.empty())));
  }

  /** A single plain print, as of a thumb. */
  MadeHands plain(int record, int box, Print print) {
    return new MadeHands(
        card.ridges(
            record,
            new RidgeAnalysis(
                Impression.PLAIN, Map.of(finger(box), print.analysis()), Optional.empty())));
  }

  /** Places from left to right, and the prints that are found in them; null where none is. */
  MadeHands slap(int record, List<Integer> places, Print... prints) {
    Map<FingerPosition, FingerAnalysis> fingers = new EnumMap<>(FingerPosition.class);
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      FingerPosition place = finger(places.get(i));
      segments.add(
          new Segment(
              place, Optional.of(new RotatedBox(100 * i, 50, 80, 100, 0)), 0.9, 200, List.of()));
      if (prints[i] != null) {
        fingers.put(place, prints[i].analysis());
      }
    }
    return new MadeHands(
        card.ridges(
            record,
            new RidgeAnalysis(
                Impression.PLAIN, fingers, Optional.of(new Slap(segments, 0, Optional.empty())))));
  }

  /** A picture of prints and what is seen in it, in the place of a slap. */
  MadeHands picture(int record, RidgeAnalysis seen) {
    return new MadeHands(card.ridges(record, seen));
  }

  /** The same images once records hold other pictures. */
  static MadeHands on(SampleCard card) {
    return new MadeHands(
        MeasuredCard.of(card)
            .depth(Depth.RIDGES)
            .compared(new SequenceResult(List.of(), List.of(), 40)));
  }

  static Print[] prints(int... fingers) {
    return Arrays.stream(fingers).mapToObj(Print::of).toArray(Print[]::new);
  }

  private static FingerPosition finger(int code) {
    return FingerPosition.values()[code - 1];
  }

  MeasuredCard card() {
    return card;
  }
}
