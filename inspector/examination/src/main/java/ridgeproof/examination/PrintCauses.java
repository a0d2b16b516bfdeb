package ridgeproof.examination;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import ridgeproof.examination.CardPrints.Print;
import ridgeproof.examination.PlainFits.Seen;
import ridgeproof.examination.PlainReading.Fit;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.Turn;
import ridgeproof.ridges.FingerPosition;
import ridgeproof.ridges.TipSide;

/** What happened to single images of a card whose other images are as they should be. */
final class PrintCauses {

  static final String MIRRORED = "RP-SEQ-023";
  static final String TURNED = "RP-SEQ-024";

  private final CardPrints card;
  private final List<Seen> seen;

  PrintCauses(CardPrints card, List<Seen> seen) {
    this.card = card;
    this.seen = seen;
  }

  void establish(CauseLog causes) {
    for (Seen image : seen) {
      Fit fit = image.fit();
      boolean inOrder = fit.order() == FingerOrder.OWN && image.looked() == Turn.NONE;
      if (inOrder && fit.mirrored() && !image.plain().isSlap()) {
        fit.matches().forEach((finger, plain) -> mirrored(finger, plain, true, causes));
      }
      if (inOrder && !fit.mirrored()) {
        image
            .inMirror()
            .ifPresent(
                mirror ->
                    mirror
                        .matches()
                        .forEach(
                            (finger, plain) ->
                                mirrored(finger, plain, !image.plain().isSlap(), causes)));
        turned(image, causes);
      }
    }
  }

  /**
   * @param eitherMay whether nothing tells which of the two images is mirrored
   */
  private void mirrored(FingerPosition finger, Print plain, boolean eitherMay, CauseLog causes) {
    Print roll = card.rolls().get(finger);
    report(
        MIRRORED,
        roll.image(),
        finger,
        eitherMay
            ? "rolled or plain print mirrored: they match only in a mirror"
            : "rolled print mirrored: it matches its plain print only in a mirror",
        "an image as the scanner sees the finger",
        List.of(roll.image(), plain.image()),
        eitherMay,
        causes);
  }

  private void turned(Seen image, CauseLog causes) {
    Map<FingerPosition, Turn> turns = new TreeMap<>(image.fit().turns());
    boolean single = image.plain().places().size() == 1;
    boolean slapUpright = image.fit().turn().filter(turn -> turn == Turn.NONE).isPresent();
    turns.forEach(
        (finger, turn) -> {
          if (turn != Turn.NONE && (single || slapUpright)) {
            Print roll = card.rolls().get(finger);
            Print plain = image.fit().matches().get(finger);
            boolean rollIsIt = !single || isWorse(roll, plain, turn);
            report(
                TURNED,
                rollIsIt ? roll.image() : plain.image(),
                finger,
                (rollIsIt ? "rolled print " : "plain print ")
                    + (turn == Turn.HALF ? "upside down" : "turned by a quarter"),
                "the fingertip at the top",
                List.of(rollIsIt ? roll.image() : plain.image()),
                false,
                causes);
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

  private static void report(
      String rule,
      ExaminedImage image,
      FingerPosition finger,
      String observed,
      String required,
      List<ExaminedImage> concerned,
      boolean rollUncertain,
      CauseLog causes) {
    Location place =
        rollUncertain || image.position().isEmpty()
            ? image.location()
            : RidgeLimitsRule.at(image, finger);
    Set<Integer> records =
        concerned.stream().map(one -> one.record().ordinal()).collect(Collectors.toSet());
    Consequences ofImage =
        rule.equals(TURNED)
            ? Consequences.ofRules("RP-RDG", "RP-IMG-009", "RP-IMG-019").inRecords(records)
            : Consequences.none();
    causes.add(
        rule,
        place,
        Observed.of(observed),
        required,
        List.of(),
        Consequences.ofRules("RP-SEQ").atPositions(Set.of(finger.code())).or(ofImage));
  }
}
