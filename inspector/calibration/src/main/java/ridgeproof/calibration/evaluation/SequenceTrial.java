package ridgeproof.calibration.evaluation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import ridgeproof.calibration.print.LabelledPrints;
import ridgeproof.calibration.statistics.CleanCards;
import ridgeproof.corpus.batch.SubjectPlan;
import ridgeproof.corpus.composition.CaptureSession;
import ridgeproof.corpus.composition.CapturedPrint;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.PrintAnalyzer;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.matching.SecondLook;
import ridgeproof.ridges.matching.SequenceCheck;
import ridgeproof.ridges.matching.SequenceError;
import ridgeproof.ridges.matching.SequenceLimits;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.layout.FingerPosition;

/** Clean cards as they are, and with two rolls exchanged. */
public final class SequenceTrial {

  /** What became of an exchange of two rolls. */
  enum Outcome {
    /** An irregularity names exactly these two fingers. */
    NAMED,
    /** An irregularity names one of them and no finger that is in its place. */
    HALF_NAMED,
    /** Nothing is named, and neither finger is called confirmed. */
    INCONCLUSIVE,
    /** Nothing is named, and one of the two is called confirmed. */
    MISSED,
    /** A finger in its place is named. */
    WRONG
  }

  /**
   * One exchange.
   *
   * @param first and the other finger that have each other's roll
   */
  record Exchange(FingerPosition first, FingerPosition second, Outcome outcome) {

    static Exchange judged(FingerPosition first, FingerPosition second, SequenceResult said) {
      return new Exchange(first, second, SequenceTrial.outcome(List.of(first, second), said));
    }
  }

  /**
   * One card.
   *
   * @param answers of the card as it was taken, all in order
   * @param falselyNamed irregularities of the card as it was taken
   * @param exchanges what was said after two of its rolls were exchanged
   */
  public record Card(List<FingerMatchResult> answers, int falselyNamed, List<Exchange> exchanges) {

    public Card {
      answers = List.copyOf(answers);
      exchanges = List.copyOf(exchanges);
    }
  }

  /**
   * The prints of one card.
   *
   * @param uncertain plain prints among fewer than there are fingers
   * @param second a second look at the prints
   */
  record Prints(
      Map<FingerPosition, Minutiae> rolls,
      Map<FingerPosition, Minutiae> plains,
      Set<FingerPosition> uncertain,
      SecondLook second) {}

  private final long seed;
  private final SubjectPlan plan;
  private final int exchangesEach;
  private final SequenceLimits limits;

  /**
   * @param exchangesEach pairs of rolls drawn for each card
   * @param limits what it is decided by
   */
  public SequenceTrial(long seed, int exchangesEach, SequenceLimits limits) {
    this.seed = seed;
    this.exchangesEach = exchangesEach;
    this.limits = limits;
    plan = new SubjectPlan(seed, 0, 0);
  }

  /** The first so many subjects who gave a card of rolls and plain prints. */
  public List<Card> run(int cards) {
    List<Integer> subjects = CleanCards.subjects(plan).limit(cards).boxed().toList();
    return subjects.parallelStream().map(this::runCard).toList();
  }

  private Card runCard(int subject) {
    Scenario scenario = plan.scenario(subject);
    Map<FingerPosition, Minutiae> rolls = new EnumMap<>(FingerPosition.class);
    Map<FingerPosition, Minutiae> plains = new EnumMap<>(FingerPosition.class);
    Set<FingerPosition> uncertain = new HashSet<>();
    Map<FingerPosition, Supplier<Minutiae>> rollsAgain = new EnumMap<>(FingerPosition.class);
    Map<FingerPosition, Supplier<Minutiae>> plainsAgain = new EnumMap<>(FingerPosition.class);
    for (CapturedPrint taken : new CaptureSession(scenario, new SubjectCache()).prints()) {
      Map<FingerPosition, Minutiae> kind = taken.isRolled() ? rolls : plains;
      Map<FingerPosition, Supplier<Minutiae>> again = taken.isRolled() ? rollsAgain : plainsAgain;
      GrayImage image = LabelledPrints.stored(taken, scenario.prints().bitsPerPixel());
      PrintAnalyzer.Seen seen = LabelledPrints.seen(image, taken.labelledPpi(), taken.box());
      seen.fingers()
          .forEach(
              (finger, analysis) ->
                  analysis
                      .measures()
                      .ifPresent(
                          found -> {
                            kind.put(finger, found.minutiae());
                            again.put(
                                finger,
                                () ->
                                    Minutiae.again(
                                        image, taken.labelledPpi(), found.extent().box()));
                          }));
      if (seen.slap().filter(Slap::lacksPrints).isPresent()) {
        uncertain.addAll(seen.fingers().keySet());
      }
    }
    Prints prints =
        new Prints(
            rolls,
            plains,
            uncertain,
            new SecondLook(
                finger -> Optional.ofNullable(rollsAgain.get(finger)).map(Supplier::get),
                finger -> Optional.ofNullable(plainsAgain.get(finger)).map(Supplier::get)));
    SequenceResult clean = SequenceCheck.check(rolls, plains, uncertain, prints.second(), limits);
    SeededRandom dice = new SeededRandom(seed, 7_000_000L + subject);
    List<Exchange> exchanges = new ArrayList<>();
    List<FingerPosition> fingers = List.copyOf(rolls.keySet());
    for (int i = 0; i < exchangesEach; i++) {
      FingerPosition first = fingers.get(dice.below(fingers.size()));
      int further = 1 + dice.below(fingers.size() - 1);
      FingerPosition second = fingers.get((fingers.indexOf(first) + further) % fingers.size());
      exchanges.add(Exchange.judged(first, second, exchanged(first, second, prints, limits)));
    }
    return new Card(clean.answers(), clean.irregularities().size(), exchanges);
  }

  /** What is said of a set after two of its rolls were exchanged. */
  static SequenceResult exchanged(
      FingerPosition first, FingerPosition second, Prints prints, SequenceLimits limits) {
    Map<FingerPosition, Minutiae> wrong = new EnumMap<>(prints.rolls());
    wrong.put(first, prints.rolls().get(second));
    wrong.put(second, prints.rolls().get(first));
    SecondLook look =
        new SecondLook(
            finger ->
                prints
                    .second()
                    .rolls()
                    .apply(finger == first ? second : finger == second ? first : finger),
            prints.second().plains());
    return SequenceCheck.check(wrong, prints.plains(), prints.uncertain(), look, limits);
  }

  private static Outcome outcome(List<FingerPosition> wrong, SequenceResult said) {
    List<SequenceError> named = said.irregularities();
    boolean others =
        named.stream()
            .flatMap(irregularity -> irregularity.positions().stream())
            .anyMatch(finger -> !wrong.contains(finger));
    if (others) {
      return Outcome.WRONG;
    }
    if (!named.isEmpty()) {
      boolean both = named.stream().anyMatch(one -> one.positions().containsAll(wrong));
      return both ? Outcome.NAMED : Outcome.HALF_NAMED;
    }
    Optional<FingerMatchResult> confirmed =
        said.answers().stream()
            .filter(answer -> wrong.contains(answer.position()))
            .filter(answer -> answer.verdict() == Verdict.CONFIRMED)
            .findFirst();
    return confirmed.isPresent() ? Outcome.MISSED : Outcome.INCONCLUSIVE;
  }
}
