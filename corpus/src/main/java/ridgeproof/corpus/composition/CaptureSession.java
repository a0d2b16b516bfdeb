package ridgeproof.corpus.composition;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.Skin;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.corpus.impression.FingerBox;
import ridgeproof.corpus.impression.FrameSize;
import ridgeproof.corpus.impression.Impression;
import ridgeproof.corpus.impression.ImpressionSettings;
import ridgeproof.corpus.impression.SlapComposer;
import ridgeproof.corpus.impression.TwoThumbs;
import ridgeproof.corpus.scenario.Mistake;
import ridgeproof.corpus.scenario.PrintDefect;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.spec.layout.FingerPosition;

/** The hour at the station: every image of a story, with all that goes wrong there. */
public final class CaptureSession {

  private static final int RIGHT_FOUR = 13;
  private static final int LEFT_FOUR = 14;
  private static final int BOTH_THUMBS = 15;
  private static final int RIGHT_PLAIN_THUMB = 11;
  private static final int LEFT_PLAIN_THUMB = 12;
  private static final int FINE_PPI = 1000;
  private static final int USUAL_PPI = 500;

  private final Scenario scenario;
  private final SubjectCache people;

  public CaptureSession(Scenario scenario, SubjectCache people) {
    this.scenario = scenario;
    this.people = people;
  }

  /** The images in the order of the boxes; a box whose fingers are all missing has none. */
  public List<CapturedPrint> prints() {
    List<CapturedPrint> prints = new ArrayList<>();
    for (int box : scenario.prints().boxes()) {
      take(box, 0).ifPresent(prints::add);
      for (Mistake mistake : scenario.mistakes()) {
        if (mistake.kind() == Mistake.Kind.RETAKE_KEPT && mistake.box() == box) {
          take(box, 1).ifPresent(prints::add);
        }
      }
    }
    return prints;
  }

  /** The image of one box; none where all its fingers are missing. */
  public Optional<CapturedPrint> print(int box) {
    return take(box, 0);
  }

  private Optional<CapturedPrint> take(int box, int retake) {
    List<FingerPosition> labels = present(FingerPosition.shownBy(box));
    List<FingerPosition> shown = present(shownIn(box));
    if (labels.isEmpty() || shown.isEmpty()) {
      return Optional.empty();
    }
    Optional<Mistake.Kind> mistake =
        retake > 0 ? Optional.of(Mistake.Kind.RETAKE_KEPT) : mistakeOf(box);
    boolean finer = has(Mistake.Kind.FINER_THAN_LABELLED, box);
    int ppi = finer ? FINE_PPI : scenario.prints().ppi();
    Map<CaptureDefect, Double> defects = retake > 0 ? Map.of() : defectsOf(box);
    long capture = (scenario.seed() * 100 + box) * 10 + retake;
    ImpressionSettings settings =
        ImpressionSettings.natural(capture)
            .withPpi(ppi)
            .withTraces(scenario.skin().traces(capture))
            .withPaper(scenario.paper());
    for (Map.Entry<CaptureDefect, Double> defect : defects.entrySet()) {
      settings = settings.withDefect(defect.getKey(), defect.getValue());
    }
    Impression impression = impression(box, shown, settings);
    return Optional.of(
        new CapturedPrint(
            box,
            impression.boxes().stream().map(FingerBox::digit).toList(),
            labelsInOrder(box, labels, impression),
            impression,
            finer ? USUAL_PPI : ppi,
            defects,
            mistake));
  }

  private List<FingerPosition> present(List<FingerPosition> fingers) {
    return fingers.stream().filter(digit -> !scenario.isMissing(digit.code())).toList();
  }

  private List<FingerPosition> shownIn(int box) {
    int source = box;
    for (Mistake mistake : scenario.mistakes()) {
      source =
          switch (mistake.kind()) {
            case FINGER_TWICE -> mistake.box() == box ? mistake.finger() : source;
            case FINGERS_EXCHANGED -> exchanged(source, mistake.box(), mistake.finger());
            case HANDS_EXCHANGED -> exchanged(source, RIGHT_FOUR, LEFT_FOUR);
            case THUMBS_EXCHANGED -> exchanged(source, RIGHT_PLAIN_THUMB, LEFT_PLAIN_THUMB);
            case RETAKE_KEPT, FINER_THAN_LABELLED -> source;
          };
    }
    return FingerPosition.shownBy(source);
  }

  private static int exchanged(int box, int one, int other) {
    if (box == one) {
      return other;
    }
    return box == other ? one : box;
  }

  private Optional<Mistake.Kind> mistakeOf(int box) {
    for (Mistake mistake : scenario.mistakes()) {
      boolean touched =
          switch (mistake.kind()) {
            case FINGER_TWICE -> mistake.box() == box;
            case FINGERS_EXCHANGED -> mistake.box() == box || mistake.finger() == box;
            case HANDS_EXCHANGED -> box == RIGHT_FOUR || box == LEFT_FOUR;
            case THUMBS_EXCHANGED ->
                box == RIGHT_PLAIN_THUMB || box == LEFT_PLAIN_THUMB || box == BOTH_THUMBS;
            case FINER_THAN_LABELLED -> has(Mistake.Kind.FINER_THAN_LABELLED, box);
            case RETAKE_KEPT -> false;
          };
      if (touched) {
        return Optional.of(mistake.kind());
      }
    }
    return Optional.empty();
  }

  private boolean has(Mistake.Kind kind, int box) {
    return scenario.mistakes().stream()
        .anyMatch(m -> m.kind() == kind && (m.box() == box || m.box() == 0));
  }

  private Map<CaptureDefect, Double> defectsOf(int box) {
    Map<CaptureDefect, Double> defects = new EnumMap<>(CaptureDefect.class);
    for (PrintDefect defect : scenario.defects()) {
      if (defect.box() == box) {
        defects.put(defect.kind(), defect.strength());
      }
    }
    return defects;
  }

  private Impression impression(int box, List<FingerPosition> shown, ImpressionSettings settings) {
    Skin skin = scenario.skin().skin(scenario.person());
    List<MasterFinger> fingers =
        shown.stream().map(digit -> people.finger(scenario.person(), digit, skin)).toList();
    return switch (box) {
      case RIGHT_FOUR, LEFT_FOUR ->
          SlapComposer.fourFingers(
              fingers, shown.get(0).hand(), settings.withFrame(scenario.prints().slapFrameSize()));
      case BOTH_THUMBS ->
          fingers.size() == 2
              ? TwoThumbs.of(fingers.get(0), fingers.get(1), settings)
              : Impression.plain(fingers.get(0), settings.withFrame(FrameSize.TWO_THUMBS));
      case RIGHT_PLAIN_THUMB, LEFT_PLAIN_THUMB -> Impression.plain(fingers.get(0), settings);
      default -> Impression.rolled(fingers.get(0), settings);
    };
  }

  /** A segmenter names what it sees from left to right by the box, not by the hand it sees. */
  private List<FingerPosition> labelsInOrder(
      int box, List<FingerPosition> labels, Impression impression) {
    List<FingerPosition> order = new ArrayList<>(labels);
    if (box == BOTH_THUMBS && has(Mistake.Kind.THUMBS_EXCHANGED, 0)) {
      Collections.reverse(order);
    }
    List<FingerPosition> named = new ArrayList<>();
    for (int i = 0; i < impression.boxes().size(); i++) {
      named.add(i < order.size() ? order.get(i) : impression.boxes().get(i).digit());
    }
    return named;
  }
}
