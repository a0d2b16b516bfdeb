package ridgeproof.ledger.health;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntPredicate;

/**
 * Finds marks that stay at one place over different people.
 *
 * <p>Each place is followed from person to person. A run that begins at one person and goes on has
 * the likelihood ratio of a fixed mark, seen nine times of ten, against a place that is marked by
 * chance at most every other time. Without a fixed mark, a ratio of r is ever reached with a
 * probability of at most 1/r (Ville 1939), so that places x people / r bounds the error.
 */
final class FixedMarks {

  private static final double SEEN = Math.log(0.9 / 0.5);
  private static final double NOT_SEEN = Math.log(0.1 / 0.5);

  /**
   * A place with a fixed mark.
   *
   * @param first index of the person with whom it begins
   * @param last index of the last person with whom it was there
   * @param seen people with whom it was there, between the two
   * @param looked people with whom the place was free, between the two
   * @param probability bound of the error over all places and people
   */
  record Run(int place, int first, int last, int seen, int looked, double probability) {}

  private final int people;
  private final Map<Integer, List<Integer>> markedWith = new HashMap<>();
  private final IntPredicate[] free;

  /**
   * @param people how many there are, in order of time
   */
  FixedMarks(int people) {
    this.people = people;
    this.free = new IntPredicate[people];
  }

  /**
   * What one person's image showed.
   *
   * @param marked places
   * @param isFree whether a place could be seen
   */
  void add(int person, List<Integer> marked, IntPredicate isFree) {
    marked.forEach(place -> markedWith.computeIfAbsent(place, p -> new ArrayList<>()).add(person));
    free[person] = isFree;
  }

  /**
   * The places with a fixed mark.
   *
   * @param places how many there are in all
   * @param errorRate of all of them together
   */
  List<Run> find(int places, double errorRate) {
    List<Run> runs = new ArrayList<>();
    double threshold = Math.log((double) places * Math.max(1, people) / errorRate);
    new TreeMap<>(markedWith)
        .forEach(
            (place, persons) -> {
              if (persons.size() * SEEN >= threshold) {
                Run run = best(place, persons, places);
                if (run.probability() <= errorRate) {
                  runs.add(run);
                }
              }
            });
    return runs;
  }

  private Run best(int place, List<Integer> persons, int places) {
    double score = 0;
    double largest = 0;
    int start = 0;
    int[] best = new int[2];
    int next = 0;
    for (int person = 0; person < people; person++) {
      boolean marked = next < persons.size() && persons.get(next) == person;
      if (marked) {
        next++;
      } else if (free[person] == null || !free[person].test(place)) {
        continue;
      }
      if (score <= 0) {
        score = 0;
        start = person;
      }
      score += marked ? SEEN : NOT_SEEN;
      if (score > largest) {
        largest = score;
        best[0] = start;
        best[1] = person;
      }
    }
    int seen = (int) persons.stream().filter(p -> p >= best[0] && p <= best[1]).count();
    int looked = 0;
    for (int person = best[0]; person <= best[1]; person++) {
      looked += free[person] != null && free[person].test(place) ? 1 : 0;
    }
    double probability = Math.min(1, (double) places * people * Math.exp(-largest));
    return new Run(place, best[0], best[1], seen, Math.max(looked, seen), probability);
  }
}
