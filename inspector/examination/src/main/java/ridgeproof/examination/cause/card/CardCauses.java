package ridgeproof.examination.cause.card;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.cause.card.CardPrints.PlainImage;
import ridgeproof.examination.cause.card.CardPrints.Print;
import ridgeproof.examination.cause.card.PlainFits.Seen;
import ridgeproof.examination.cause.card.PlainReading.Fit;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.Turn;

/**
 * What happened to many images of a card at once: mirrored, upside down, turned, or filed in an
 * order that is wrong as a whole. A rule that looks at fingers would accuse each of them.
 */
public final class CardCauses implements CauseRule {

  static final String REVERSED = "RP-SEQ-020";
  static final String UPSIDE_DOWN = "RP-SEQ-021";
  static final String MIRRORED = "RP-SEQ-022";
  static final String QUARTER = "RP-SEQ-025";
  static final String SHIFTED = "RP-SEQ-026";

  /** Prints of one image bear each other out, so that each may be less alike than one alone. */
  private static final double AMONG_SEVERAL = 0.7;

  /** Fingers that have to agree before boxes are called shifted. */
  private static final int MIN_SHIFTED = 3;

  /** How clearly tips have to be at the bottom, on average over many prints. */
  private static final double DOWN = -0.06;

  /** What is seen of an image that lies on its side or on its head, and of its size. */
  private static final Consequences OF_TURN =
      Consequences.ofRules("RP-SEQ", "RP-RDG", "RP-IMG-009", "RP-IMG-019");

  @Override
  public Set<String> ids() {
    return Set.of(
        REVERSED,
        UPSIDE_DOWN,
        MIRRORED,
        QUARTER,
        SHIFTED,
        PrintCauses.MIRRORED,
        PrintCauses.TURNED);
  }

  @Override
  public void establish(ExaminationInput examinee, List<Finding> found, CauseLog causes) {
    if (examinee.depth() != Depth.RIDGES) {
      return;
    }
    CardPrints card = CardPrints.of(examinee.images());
    if (examinee.sequence().isEmpty() || card.rolls().isEmpty() || card.plains().isEmpty()) {
      withoutRolls(examinee, card, causes);
      return;
    }
    double threshold = AMONG_SEVERAL * examinee.sequence().get().answers().threshold();
    List<Seen> seen = new PlainFits(examinee, card, threshold).all();
    boolean told =
        reversed(card, seen, causes)
            || flipped(card, seen, causes)
            || shifted(seen, causes)
            || rollsAlike(card, seen, causes);
    if (!told) {
      eachPlainImage(seen, causes);
      new PrintCauses(card, seen).establish(causes);
    }
  }

  /** Every slap that matches in the opposite order, though its prints lie as the rolls do. */
  private static boolean reversed(CardPrints card, List<Seen> seen, CauseLog causes) {
    List<Seen> slaps = slaps(seen);
    boolean all = !slaps.isEmpty() && slaps.stream().allMatch(CardCauses::isReversedLikeTheRolls);
    if (!all) {
      return false;
    }
    if (card.tipsUp() < DOWN) {
      upsideDown(card, String.format(Locale.ROOT, "all %d images", images(card)), causes);
    } else {
      causes.add(
          REVERSED,
          Location.file(),
          Observed.of("the fingers of every slap are in reverse order"),
          "the fingers of each slap in their natural order",
          evidence(slaps),
          Consequences.ofRules("RP-SEQ", "RP-RDG-021", "RP-IMG-019"));
    }
    return true;
  }

  /** In the opposite order, though its prints are upright where the rolls are. */
  private static boolean isReversedLikeTheRolls(Seen seen) {
    Fit fit = seen.fit();
    FingerOrder expected = seen.looked() == Turn.HALF ? FingerOrder.OWN : FingerOrder.REVERSED;
    return !seen.looked().isQuarter()
        && fit.order() == expected
        && !fit.mirrored()
        && fit.turn().filter(turn -> turn == Turn.NONE).isPresent();
  }

  /**
   * Everything fits together, and still the tips are at the bottom: mirrored and turned at once.
   */
  private static boolean flipped(CardPrints card, List<Seen> seen, CauseLog causes) {
    List<Seen> slaps = slaps(seen);
    boolean flipped =
        !slaps.isEmpty()
            && slaps.stream().allMatch(s -> is(s, FingerOrder.OWN, false, Turn.NONE))
            && card.tipsUp() < DOWN;
    if (flipped) {
      causes.add(
          MIRRORED,
          Location.file(),
          Observed.of(
              String.format(
                  Locale.ROOT, "all %d images mirrored from top to bottom", images(card))),
          "images that are not mirrored",
          List.of(Measure.of("certainty that the fingertips are at the top", card.tipsUp(), "")),
          Consequences.ofRules("RP-SEQ", "RP-RDG", "RP-IMG-019"));
    }
    return flipped;
  }

  private static void upsideDown(CardPrints card, String which, CauseLog causes) {
    causes.add(
        UPSIDE_DOWN,
        Location.file(),
        Observed.of(which + " upside down"),
        "fingertips at the top",
        List.of(Measure.of("certainty that the fingertips are at the top", card.tipsUp(), "")),
        Consequences.ofRules("RP-SEQ", "RP-RDG", "RP-IMG-019"));
  }

  private static int images(CardPrints card) {
    return ExaminedImage.ordinals(card.all().stream().map(Print::image).toList()).size();
  }

  private static boolean shifted(List<Seen> seen, CauseLog causes) {
    for (FingerOrder order : List.of(FingerOrder.NEXT_BOX, FingerOrder.PREVIOUS_BOX)) {
      List<Seen> moved =
          seen.stream().filter(s -> s.fit().order() == order && !s.fit().mirrored()).toList();
      int fingers = moved.stream().mapToInt(s -> s.fit().count()).sum();
      if (fingers >= MIN_SHIFTED) {
        causes.add(
            SHIFTED,
            Location.file(),
            Observed.of(
                String.format(
                    Locale.ROOT,
                    "%d rolled prints are in the position %s their own",
                    fingers,
                    order == FingerOrder.NEXT_BOX ? "after" : "before")),
            "each rolled print in its own position",
            evidence(moved),
            slaps(seen).stream().noneMatch(s -> s.fit().order() == FingerOrder.OWN)
                ? Consequences.ofRules("RP-SEQ")
                : Consequences.ofRules("RP-SEQ").atPositions(positions(moved)));
        return true;
      }
    }
    return false;
  }

  /** All slaps stand in their own order, but mirrored or upside down against the rolls. */
  private static boolean rollsAlike(CardPrints card, List<Seen> seen, CauseLog causes) {
    List<Seen> slaps = slaps(seen);
    boolean mirrored =
        !slaps.isEmpty() && slaps.stream().allMatch(s -> is(s, FingerOrder.OWN, true, Turn.NONE));
    boolean turned =
        !slaps.isEmpty() && slaps.stream().allMatch(s -> is(s, FingerOrder.OWN, false, Turn.HALF));
    if (!mirrored && !turned) {
      return false;
    }
    Set<Integer> records =
        ExaminedImage.ordinals(card.rolls().values().stream().map(Print::image).toList());
    causes.add(
        mirrored ? MIRRORED : UPSIDE_DOWN,
        Location.file(),
        Observed.of(
            String.format(
                Locale.ROOT,
                "all %d rolled prints %s",
                records.size(),
                mirrored ? "mirrored" : "upside down")),
        mirrored ? "images that are not mirrored" : "fingertips at the top",
        evidence(slaps),
        Consequences.ofRules("RP-SEQ")
            .or(Consequences.ofRules("RP-RDG").inRecords(mirrored ? Set.of() : records)));
    return true;
  }

  private static void eachPlainImage(List<Seen> seen, CauseLog causes) {
    List<Seen> mirrored = new ArrayList<>();
    List<Seen> upsideDown = new ArrayList<>();
    for (Seen image : slaps(seen)) {
      Fit fit = image.fit();
      boolean reversed = fit.order() == FingerOrder.REVERSED;
      boolean own = fit.order() == FingerOrder.OWN;
      boolean half =
          image.looked() == Turn.HALF || fit.turn().filter(Turn.HALF::equals).isPresent();
      boolean quarter = fit.turn().filter(Turn::isQuarter).isPresent();
      if (image.looked().isQuarter() && own || image.looked() == Turn.NONE && !own && quarter) {
        add(QUARTER, List.of(image), "turned by 90 degrees", "fingertips at the top", causes);
      } else if (reversed && fit.mirrored() || half && own && fit.mirrored()) {
        mirrored.add(image);
      } else if (reversed || image.looked() == Turn.HALF && own) {
        upsideDown.add(image);
      }
    }
    if (!mirrored.isEmpty()) {
      seen.stream().filter(s -> !s.plain().isSlap() && s.fit().mirrored()).forEach(mirrored::add);
      add(MIRRORED, mirrored, "mirrored", "images that are not mirrored", causes);
    }
    if (!upsideDown.isEmpty()) {
      add(UPSIDE_DOWN, upsideDown, "upside down", "fingertips at the top", causes);
    }
  }

  /** One finding at the image, or at the file where there are several. */
  private static void add(
      String rule, List<Seen> images, String what, String required, CauseLog causes) {
    Set<Integer> records =
        ExaminedImage.ordinals(images.stream().map(image -> image.plain().image()).toList());
    causes.add(
        rule,
        images.size() == 1 ? images.get(0).plain().image().location() : Location.file(),
        Observed.of(
            images.size() == 1
                ? "image " + what
                : String.format(Locale.ROOT, "%d images %s", images.size(), what)),
        required,
        evidence(images),
        Consequences.ofRules("RP-SEQ")
            .atPositions(positions(images))
            .or(OF_TURN.inRecords(records)));
  }

  /** Codes of the images and of the fingers that they are of. */
  private static Set<Integer> positions(Collection<Seen> images) {
    Set<Integer> positions = new TreeSet<>();
    for (Seen image : images) {
      image.plain().image().position().ifPresent(positions::add);
      image.plain().places().forEach(finger -> positions.add(finger.code()));
      image.fit().matches().keySet().forEach(finger -> positions.add(finger.code()));
    }
    return positions;
  }

  private static List<Seen> slaps(List<Seen> seen) {
    return seen.stream().filter(s -> s.plain().isSlap()).toList();
  }

  private static boolean is(Seen seen, FingerOrder order, boolean mirrored, Turn turn) {
    return seen.looked() == Turn.NONE
        && seen.fit().order() == order
        && seen.fit().mirrored() == mirrored
        && seen.fit().turn().filter(t -> t == turn).isPresent();
  }

  private static List<Measure> evidence(Collection<Seen> seen) {
    return List.of(
        Measure.of("matching fingers", seen.stream().mapToInt(s -> s.fit().count()).sum(), ""),
        Measure.of(
            "total similarity", seen.stream().mapToDouble(s -> s.fit().similarity()).sum(), ""));
  }

  /** Without rolls only the prints themselves tell which side is up. */
  private static void withoutRolls(ExaminationInput examinee, CardPrints card, CauseLog causes) {
    Map<PlainImage, Turn> turned = new UprightSlaps(examinee).turned(card.plains());
    long several = card.plains().stream().filter(plain -> plain.places().size() > 1).count();
    // A single slap speaks for itself alone.
    boolean all = turned.size() > 1 && turned.size() == several;
    if (all && turned.values().stream().allMatch(turn -> turn == Turn.HALF)) {
      upsideDown(card, String.format(Locale.ROOT, "all %d images", images(card)), causes);
      return;
    }
    if (all && turned.values().stream().allMatch(Turn::isQuarter)) {
      causes.add(
          QUARTER,
          Location.file(),
          Observed.of(String.format(Locale.ROOT, "%d images turned by 90 degrees", turned.size())),
          "fingertips at the top",
          List.of(),
          OF_TURN);
      return;
    }
    turned.forEach(
        (plain, turn) -> {
          Location place = plain.image().location();
          causes.add(
              turn == Turn.HALF ? UPSIDE_DOWN : QUARTER,
              place,
              Observed.of(turn == Turn.HALF ? "image upside down" : "image turned by 90 degrees"),
              "fingertips at the top",
              List.of(),
              OF_TURN.inRecords(Set.of(plain.image().record().ordinal())));
        });
  }
}
