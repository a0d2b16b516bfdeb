package ridgeproof.ridges.matching;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import ridgeproof.spec.layout.FingerPosition;

/** Compares the templates of the prints of a card. */
final class TemplateScores implements CardScores {

  private final Map<FingerPosition, Minutiae> rolls;
  private final Map<FingerPosition, Minutiae> plains;
  private final SecondLook second;
  private final Map<FingerPosition, Optional<Minutiae>> rollsAgain = new ConcurrentHashMap<>();
  private final Map<FingerPosition, Optional<Minutiae>> plainsAgain = new ConcurrentHashMap<>();

  TemplateScores(
      Map<FingerPosition, Minutiae> rolls,
      Map<FingerPosition, Minutiae> plains,
      SecondLook second) {
    this.rolls = new EnumMap<>(FingerPosition.class);
    this.rolls.putAll(rolls);
    this.plains = new EnumMap<>(FingerPosition.class);
    this.plains.putAll(plains);
    this.second = second;
  }

  @Override
  public Map<FingerPosition, Integer> rolls() {
    return counts(rolls);
  }

  @Override
  public Map<FingerPosition, Integer> plains() {
    return counts(plains);
  }

  private static Map<FingerPosition, Integer> counts(Map<FingerPosition, Minutiae> prints) {
    Map<FingerPosition, Integer> counts = new EnumMap<>(FingerPosition.class);
    prints.forEach((finger, print) -> counts.put(finger, print.count()));
    return counts;
  }

  /** Rolls and plain prints go through one matcher, since making it is half the work. */
  @Override
  public double[] ofPlain(
      FingerPosition plain, List<FingerPosition> withRolls, List<FingerPosition> otherPlains) {
    List<Minutiae> candidates = new ArrayList<>();
    withRolls.forEach(roll -> candidates.add(rolls.get(roll)));
    otherPlains.forEach(other -> candidates.add(plains.get(other)));
    return plains.get(plain).similarities(candidates);
  }

  @Override
  public double[] ofRoll(FingerPosition roll, List<FingerPosition> others) {
    return rolls.get(roll).similarities(others.stream().map(rolls::get).toList());
  }

  @Override
  public double[] ofPlainAgain(FingerPosition plain, List<FingerPosition> withRolls) {
    double[] scores = new double[withRolls.size()];
    plainAgain(plain)
        .ifPresent(print -> raise(scores, print, withRolls, roll -> Optional.of(rolls.get(roll))));
    return scores;
  }

  @Override
  public double[] ofRollsAgain(FingerPosition plain, List<FingerPosition> withRolls) {
    double[] scores = new double[withRolls.size()];
    Function<FingerPosition, Optional<Minutiae>> again =
        roll -> rollsAgain.computeIfAbsent(roll, second.rolls());
    raise(scores, plains.get(plain), withRolls, again);
    plainAgain(plain).ifPresent(print -> raise(scores, print, withRolls, again));
    return scores;
  }

  private Optional<Minutiae> plainAgain(FingerPosition plain) {
    return plainsAgain.computeIfAbsent(plain, second.plains());
  }

  private static void raise(
      double[] best,
      Minutiae print,
      List<FingerPosition> fingers,
      Function<FingerPosition, Optional<Minutiae>> candidates) {
    List<Minutiae> compared = new ArrayList<>();
    int[] places = new int[fingers.size()];
    for (int i = 0; i < fingers.size(); i++) {
      Optional<Minutiae> candidate = candidates.apply(fingers.get(i));
      if (candidate.isPresent()) {
        places[compared.size()] = i;
        compared.add(candidate.get());
      }
    }
    if (compared.isEmpty()) {
      return;
    }
    double[] scores = print.similarities(compared);
    for (int i = 0; i < scores.length; i++) {
      best[places[i]] = Math.max(best[places[i]], scores[i]);
    }
  }
}
