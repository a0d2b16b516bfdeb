package ridgeproof.examination.cause.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.cause.card.CardPrints.Print;
import ridgeproof.examination.cause.card.PlainFits.Seen;
import ridgeproof.examination.cause.card.PlainReading.Fit;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.Turn;
import ridgeproof.ridges.segmentation.TipSide;
import ridgeproof.spec.layout.FingerPosition;

/** What happened to single images of a card whose other images are as they should be. */
final class PrintCauses {

  static final String MIRRORED = "RP-SEQ-023";
  static final String TURNED = "RP-SEQ-024";

  /** As many single images with the same fault are one fault of the card. */
  private static final int SEVERAL = 3;

  private static final double MOST = 0.6;

  /** What is said of one finger until all are known. */
  private record Fault(
      String rule,
      ExaminedImage image,
      FingerPosition finger,
      String observed,
      String required,
      List<ExaminedImage> concerned,
      boolean rollUncertain) {}

  private final CardPrints card;
  private final List<Seen> seen;
  private final List<Fault> faults = new ArrayList<>();

  PrintCauses(CardPrints card, List<Seen> seen) {
    this.card = card;
    this.seen = seen;
  }

  void establish(CauseLog causes) {
    for (Seen image : seen) {
      Fit fit = image.fit();
      boolean inOrder = fit.order() == FingerOrder.OWN && image.looked() == Turn.NONE;
      if (inOrder && fit.mirrored() && !image.plain().isSlap()) {
        fit.matches().forEach((finger, plain) -> mirrored(finger, plain, true));
      }
      if (inOrder && !fit.mirrored()) {
        image
            .inMirror()
            .ifPresent(
                mirror ->
                    mirror
                        .matches()
                        .forEach(
                            (finger, plain) -> mirrored(finger, plain, !image.plain().isSlap())));
        turned(image);
      }
    }
    Map<String, List<Fault>> alike =
        faults.stream()
            .collect(
                Collectors.groupingBy(Fault::observed, LinkedHashMap::new, Collectors.toList()));
    long compared = seen.stream().mapToLong(image -> image.plain().prints().size()).sum();
    alike
        .values()
        .forEach(
            same -> {
              if (same.size() >= SEVERAL && same.size() >= MOST * compared) {
                together(same, causes);
              } else {
                same.forEach(fault -> report(fault, causes));
              }
            });
  }

  private static void together(List<Fault> faults, CauseLog causes) {
    boolean mirrored = faults.get(0).rule().equals(MIRRORED);
    boolean half = faults.get(0).observed().endsWith("upside down");
    List<ExaminedImage> images =
        faults.stream().flatMap(fault -> fault.concerned().stream()).toList();
    Consequences ofImages =
        Consequences.ofRules("RP-RDG", "RP-IMG-009", "RP-IMG-019")
            .inRecords(ExaminedImage.ordinals(images));
    Set<Integer> positions = new TreeSet<>();
    faults.forEach(fault -> positions.add(fault.finger().code()));
    images.forEach(image -> image.position().ifPresent(positions::add));
    causes.add(
        mirrored ? CardCauses.MIRRORED : half ? CardCauses.UPSIDE_DOWN : CardCauses.QUARTER,
        Location.file(),
        Observed.of(
            String.format(Locale.ROOT, "%d fingers: %s", faults.size(), faults.get(0).observed())),
        faults.get(0).required(),
        List.of(),
        Consequences.ofRules("RP-SEQ")
            .onlyWhere(finding -> isAtOneOf(positions, finding.location()))
            .or(mirrored ? Consequences.none() : ofImages));
  }

  /** What names no finger is of the card; a finger without the fault speaks for itself. */
  private static boolean isAtOneOf(Set<Integer> positions, Location place) {
    return place.position().isEmpty() || positions.contains(place.position().getAsInt());
  }

  /**
   * @param eitherMay whether nothing tells which of the two images is mirrored
   */
  private void mirrored(FingerPosition finger, Print plain, boolean eitherMay) {
    Print roll = card.rolls().get(finger);
    faults.add(
        new Fault(
            MIRRORED,
            roll.image(),
            finger,
            eitherMay
                ? "rolled or plain print mirrored: they match only when one is mirrored"
                : "rolled print mirrored: it matches its plain print only when mirrored",
            "an image that is not mirrored",
            List.of(roll.image(), plain.image()),
            eitherMay));
  }

  private void turned(Seen image) {
    Map<FingerPosition, Turn> turns = new TreeMap<>(image.fit().turns());
    boolean single = image.plain().places().size() == 1;
    boolean slapUpright = image.fit().turn().filter(turn -> turn == Turn.NONE).isPresent();
    turns.forEach(
        (finger, turn) -> {
          if (turn != Turn.NONE && (single || slapUpright)) {
            Print roll = card.rolls().get(finger);
            Print plain = image.fit().matches().get(finger);
            boolean rollIsIt = !single || isWorse(roll, plain, turn);
            faults.add(
                new Fault(
                    TURNED,
                    rollIsIt ? roll.image() : plain.image(),
                    finger,
                    (rollIsIt ? "rolled print " : "plain print ")
                        + (turn == Turn.HALF ? "upside down" : "turned by 90 degrees"),
                    "the fingertip at the top",
                    List.of(rollIsIt ? roll.image() : plain.image()),
                    false));
          }
        });
  }

  /** Whether the tip of the first is further from the top. */
  private static boolean isWorse(Print one, Print other, Turn turn) {
    TipSide first = TipSide.of(one.measures());
    TipSide second = TipSide.of(other.measures());
    return turn == Turn.HALF
        ? first.up() < second.up()
        : Math.abs(first.right()) - first.up() > Math.abs(second.right()) - second.up();
  }

  private static void report(Fault fault, CauseLog causes) {
    Location place =
        fault.rollUncertain() || fault.image().position().isEmpty()
            ? fault.image().location()
            : fault.image().location(fault.finger());
    Set<Integer> records = ExaminedImage.ordinals(fault.concerned());
    Consequences ofImage =
        fault.rule().equals(TURNED)
            ? Consequences.ofRules("RP-RDG", "RP-IMG-009", "RP-IMG-019").inRecords(records)
            : Consequences.none();
    causes.add(
        fault.rule(),
        place,
        Observed.of(fault.observed()),
        fault.required(),
        List.of(),
        Consequences.ofRules("RP-SEQ").atPositions(Set.of(fault.finger().code())).or(ofImage));
  }
}
