package ridgeproof.calibration.real;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;
import ridgeproof.ridges.matching.SequenceCheck;
import ridgeproof.ridges.matching.SequenceError;
import ridgeproof.ridges.matching.SequenceError.Kind;
import ridgeproof.ridges.matching.SequenceLimits;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.spec.layout.FingerPosition;

/** Cards put together of the prints of a pool, in order and out of it, and what is said of them. */
public final class CardTrial {

  private static final int FINGERS = 10;
  private static final int HAND = 5;

  /** What is wrong with a card. */
  enum Story {
    RIGHT("in order", Set.of()),
    EXCHANGE("two fingers exchanged", Set.of(Kind.EXCHANGED, Kind.THUMBS_EXCHANGED)),
    ROTATION("three fingers rotated among themselves", Set.of(Kind.ROTATED)),
    SHIFT("four fingers of a hand shifted by one", Set.of(Kind.SHIFTED)),
    HANDS("both hands exchanged", Set.of(Kind.HANDS_EXCHANGED)),
    STRANGER("one plain print of nobody on the card", Set.of());

    private final String words;
    private final Set<Kind> kinds;

    Story(String words, Set<Kind> kinds) {
      this.words = words;
      this.kinds = kinds;
    }

    String words() {
      return words;
    }
  }

  /**
   * What was said of the cards of one story.
   *
   * @param cards how many
   * @param fingers how many plain prints with a roll are in their places
   * @param confirmed of these
   * @param inconclusive of these
   * @param falsely of these called another finger or part of a disorder
   * @param seen cards whose disorder was told of at least one of its fingers, and of no other
   * @param named cards whose disorder was called by its name, with all of its fingers and no other
   * @param spoken of these, cards where each print says so by itself
   * @param passed cards with a finger out of place that was confirmed
   */
  record Outcome(
      Story story,
      int cards,
      int fingers,
      int confirmed,
      int inconclusive,
      int falsely,
      int seen,
      int named,
      int spoken,
      int passed) {

    private static Outcome none(Story story) {
      return new Outcome(story, 0, 0, 0, 0, 0, 0, 0, 0, 0);
    }

    private Outcome with(Outcome other) {
      return new Outcome(
          story,
          cards + other.cards,
          fingers + other.fingers,
          confirmed + other.confirmed,
          inconclusive + other.inconclusive,
          falsely + other.falsely,
          seen + other.seen,
          named + other.named,
          spoken + other.spoken,
          passed + other.passed);
    }
  }

  private final List<PrintPool> pools;
  private final long seed;

  /**
   * @param pools each of ten fingers or more, of which a card's are drawn. Of a finger with two
   *     prints the first is the roll; of one with more any two are drawn.
   */
  public CardTrial(List<PrintPool> pools, long seed) {
    this.pools = pools.stream().filter(CardTrial::isEnough).toList();
    this.seed = seed;
    if (this.pools.isEmpty()) {
      throw new IllegalArgumentException("a card needs two prints each of ten fingers");
    }
  }

  private static boolean isEnough(PrintPool pool) {
    return byFinger(pool).values().stream().filter(prints -> prints.size() >= 2).count() >= FINGERS;
  }

  private static Map<Integer, List<Integer>> byFinger(PrintPool pool) {
    return IntStream.range(0, pool.fingers().length)
        .boxed()
        .collect(
            Collectors.groupingBy(
                print -> pool.fingers()[print], TreeMap::new, Collectors.toList()));
  }

  /** Draws so many cards; the same seed draws the same ones, whatever the limits. */
  Outcome run(Story story, int cards, SequenceLimits limits) {
    return IntStream.range(0, cards)
        .parallel()
        .mapToObj(card -> runCard(story, card, limits))
        .reduce(Outcome.none(story), Outcome::with);
  }

  private Outcome runCard(Story story, int card, SequenceLimits limits) {
    SeededRandom dice = new SeededRandom(seed, story.ordinal() * 1_000_000L + card);
    PrintPool pool = pools.get(card % pools.size());
    Map<Integer, List<Integer>> byFinger = byFinger(pool);
    byFinger.values().removeIf(prints -> prints.size() < 2);
    List<Integer> people = drawn(List.copyOf(byFinger.keySet()), FINGERS, dice);
    Map<FingerPosition, Integer> rolls = new EnumMap<>(FingerPosition.class);
    Map<FingerPosition, Integer> plains = new EnumMap<>(FingerPosition.class);
    for (FingerPosition finger : FingerPosition.values()) {
      List<Integer> prints = byFinger.get(people.get(finger.ordinal()));
      List<Integer> two = prints.size() == 2 ? prints : drawn(prints, 2, dice);
      rolls.put(finger, two.get(0));
      plains.put(finger, two.get(1));
    }
    Set<FingerPosition> wrong = spoil(story, rolls, plains, dice);
    SequenceResult said =
        SequenceCheck.check(new ComposedScores(pool, rolls, plains), Set.of(), limits);
    return judged(story, wrong, said);
  }

  private static <T> List<T> drawn(List<T> from, int count, SeededRandom dice) {
    List<T> left = new ArrayList<>(from);
    List<T> drawn = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      drawn.add(left.remove(dice.below(left.size())));
    }
    return drawn;
  }

  /** Puts rolls into wrong boxes and says which fingers are concerned. */
  private static Set<FingerPosition> spoil(
      Story story,
      Map<FingerPosition, Integer> rolls,
      Map<FingerPosition, Integer> plains,
      SeededRandom dice) {
    List<FingerPosition> all = List.of(FingerPosition.values());
    return switch (story) {
      case RIGHT -> Set.of();
      case EXCHANGE -> rotate(drawn(all, 2, dice), rolls);
      case ROTATION -> rotate(drawn(all, 3, dice), rolls);
      case SHIFT -> {
        int first = 1 + HAND * dice.below(2);
        List<FingerPosition> four = new ArrayList<>(all.subList(first, first + HAND - 1));
        if (dice.below(2) == 0) {
          Collections.reverse(four);
        }
        yield rotate(four, rolls);
      }
      case HANDS -> {
        for (FingerPosition finger : all.subList(0, HAND)) {
          rotate(List.of(finger, all.get(finger.ordinal() + HAND)), rolls);
        }
        yield new HashSet<>(all);
      }
      case STRANGER -> {
        List<FingerPosition> two = drawn(all, 2, dice);
        plains.put(two.get(0), plains.remove(two.get(1)));
        rolls.remove(two.get(1));
        yield Set.of(two.get(0));
      }
    };
  }

  private static Set<FingerPosition> rotate(
      List<FingerPosition> fingers, Map<FingerPosition, Integer> rolls) {
    int last = rolls.get(fingers.get(fingers.size() - 1));
    for (int i = fingers.size() - 1; i > 0; i--) {
      rolls.put(fingers.get(i), rolls.get(fingers.get(i - 1)));
    }
    rolls.put(fingers.get(0), last);
    return new HashSet<>(fingers);
  }

  private static Outcome judged(Story story, Set<FingerPosition> wrong, SequenceResult said) {
    Set<FingerPosition> told = new HashSet<>();
    said.irregularities().forEach(one -> told.addAll(one.positions()));
    said.answers().stream()
        .filter(answer -> answer.verdict() == Verdict.CONTRADICTED)
        .forEach(answer -> told.add(answer.position()));
    List<FingerMatchResult> right =
        said.answers().stream().filter(answer -> !wrong.contains(answer.position())).toList();
    int falsely = (int) right.stream().filter(answer -> told.contains(answer.position())).count();
    boolean seen = falsely == 0 && !told.isEmpty();
    List<SequenceError> rightly =
        said.irregularities().stream()
            .filter(one -> story.kinds.contains(one.kind()))
            .filter(one -> new HashSet<>(one.positions()).equals(wrong))
            .toList();
    boolean named = falsely == 0 && !rightly.isEmpty();
    boolean passed =
        said.answers().stream()
            .anyMatch(
                answer ->
                    wrong.contains(answer.position()) && answer.verdict() == Verdict.CONFIRMED);
    return new Outcome(
        story,
        1,
        right.size(),
        count(right, Verdict.CONFIRMED),
        count(right, Verdict.INCONCLUSIVE),
        falsely,
        seen ? 1 : 0,
        named ? 1 : 0,
        named && rightly.get(0).mutual() ? 1 : 0,
        passed ? 1 : 0);
  }

  private static int count(List<FingerMatchResult> answers, Verdict verdict) {
    return (int) answers.stream().filter(answer -> answer.verdict() == verdict).count();
  }
}
