package ridgeproof.ledger.health;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import ridgeproof.ledger.PrintMeasure;

/** Stations against each other, and operators against each other. */
final class Comparisons {

  /** People of a group, and of the others. */
  private static final int MIN_PEOPLE = 20;

  private static final double MIN_SCALE_DIFFERENCE = 0.04;
  private static final double MIN_WIDTH_DIFFERENCE = 0.1;
  private static final double PERCENT = 100;

  private final Visits visits;
  private final double rate;

  Comparisons(Visits visits, double rate) {
    this.visits = visits;
    this.rate = rate;
  }

  /** A group that lies beside the others. */
  private record Odd<K>(K group, double own, double others, int people, double probability) {
    double difference() {
      return own / others - 1;
    }
  }

  List<HealthFinding> find() {
    List<HealthFinding> findings = new ArrayList<>();
    Map<Long, List<Double>> periods = groups(PrintMeasure.RIDGE_PERIOD, false, Visit::station);
    for (Odd<Long> odd : odd(periods, MIN_SCALE_DIFFERENCE, false, rate)) {
      findings.add(
          scale(odd, levels(PrintMeasure.RIDGE_PERIOD, odd.group(), periods, visits::nameOf)));
    }
    Map<String, List<Double>> widths = groups(PrintMeasure.WIDTH, true, Visit::operator);
    widths.remove("");
    // There may be more operators than stations, for each of which the rate is meant.
    double each = rate * visits.byStation().size() / Math.max(1, widths.size());
    for (Odd<String> odd : odd(widths, MIN_WIDTH_DIFFERENCE, true, each)) {
      findings.add(narrow(odd, levels(PrintMeasure.WIDTH, odd.group(), widths, hash -> hash)));
    }
    findings.addAll(dry());
    return findings;
  }

  /** One value for each person: the median over their prints. */
  private <K> Map<K, List<Double>> groups(
      PrintMeasure measure, boolean rolledOnly, Function<Visit, K> key) {
    Map<K, List<Double>> groups = new TreeMap<>();
    for (List<Visit> station : visits.byStation().values()) {
      for (Visit visit : station) {
        double[] values =
            visit.shots().stream()
                .filter(shot -> !rolledOnly || shot.rolled())
                .filter(shot -> shot.measures().containsKey(measure))
                .mapToDouble(shot -> shot.measures().get(measure))
                .toArray();
        if (values.length > 0) {
          groups
              .computeIfAbsent(key.apply(visit), k -> new ArrayList<>())
              .add(ChangePoint.median(values));
        }
      }
    }
    return groups;
  }

  /** The oddest group is named and left out, then the next, as long as one is odd enough. */
  private static <K> List<Odd<K>> odd(
      Map<K, List<Double>> groups, double least, boolean onlyBelow, double errorRate) {
    Map<K, List<Double>> left = new HashMap<>(groups);
    List<Odd<K>> found = new ArrayList<>();
    while (left.size() > 1) {
      Optional<Odd<K>> oddest = Optional.empty();
      for (K group : left.keySet()) {
        Optional<Odd<K>> odd = against(group, left);
        if (odd.isPresent()
            && (!onlyBelow || odd.get().difference() < 0)
            && (oddest.isEmpty()
                || Math.abs(odd.get().difference()) > Math.abs(oddest.get().difference()))) {
          oddest = odd;
        }
      }
      boolean telling =
          oddest.isPresent()
              && Math.abs(oddest.get().difference()) >= least
              && oddest.get().probability() <= errorRate;
      if (!telling) {
        return found;
      }
      found.add(oddest.get());
      left.remove(oddest.get().group());
    }
    return found;
  }

  private static <K> Optional<Odd<K>> against(K group, Map<K, List<Double>> groups) {
    double[] own = numbers(groups.get(group));
    List<Double> rest = new ArrayList<>();
    groups.forEach(
        (other, values) -> {
          if (!other.equals(group)) {
            rest.addAll(values);
          }
        });
    double[] others = numbers(rest);
    return own.length < MIN_PEOPLE || others.length < MIN_PEOPLE
        ? Optional.empty()
        : Optional.of(
            new Odd<>(
                group,
                ChangePoint.median(own),
                ChangePoint.median(others),
                own.length,
                RankSum.probability(own, others)));
  }

  private static double[] numbers(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static <K> GroupLevels levels(
      PrintMeasure measure, K first, Map<K, List<Double>> groups, Function<K, String> key) {
    List<GroupLevels.Group> levels = new ArrayList<>();
    levels.add(GroupLevels.Group.of(key.apply(first), numbers(groups.get(first))));
    groups.forEach(
        (group, values) -> {
          if (!group.equals(first)) {
            levels.add(GroupLevels.Group.of(key.apply(group), numbers(values)));
          }
        });
    return new GroupLevels(measure, levels);
  }

  private HealthFinding scale(Odd<Long> odd, GroupLevels levels) {
    return new HealthFinding(
        StationFault.RESOLUTION,
        visits.nameOf(odd.group()),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        String.format(
            Locale.ROOT,
            "distance of the ridges %.3f mm in the middle of %d people, %.3f mm at the other"
                + " stations (%+.0f %%)",
            odd.own(),
            odd.people(),
            odd.others(),
            PERCENT * odd.difference()),
        odd.probability(),
        List.of(),
        levels);
  }

  private static HealthFinding narrow(Odd<String> odd, GroupLevels levels) {
    return new HealthFinding(
        StationFault.NARROW_ROLLS,
        "",
        Optional.of(odd.group()),
        Optional.empty(),
        Optional.empty(),
        String.format(
            Locale.ROOT,
            "rolled prints %.1f mm wide in the middle of %d people, %.1f mm with the other"
                + " operators (%+.0f %%)",
            odd.own(),
            odd.people(),
            odd.others(),
            PERCENT * odd.difference()),
        odd.probability(),
        List.of(),
        levels);
  }

  /** Two shares in the same season, by the bound of Hoeffding on their difference. */
  private List<HealthFinding> dry() {
    List<HealthFinding> findings = new ArrayList<>();
    List<DrySeason> seasons = DrySeason.of(visits);
    for (DrySeason own : seasons) {
      int dry = 0;
      int people = 0;
      for (DrySeason other : seasons) {
        if (other.season().equals(own.season()) && !other.station().equals(own.station())) {
          dry += other.dry();
          people += other.people();
        }
      }
      if (own.people() >= MIN_PEOPLE && people >= MIN_PEOPLE) {
        double difference = (double) own.dry() / own.people() - (double) dry / people;
        double weight = 1 / (1.0 / own.people() + 1.0 / people);
        double probability =
            seasons.size() * Math.exp(-2 * weight * Math.max(0, difference) * difference);
        if (probability <= rate) {
          DrySeason others = new DrySeason("", own.season(), dry, people);
          findings.add(dry(new SeasonShares(own, others), probability));
        }
      }
    }
    return findings;
  }

  private static HealthFinding dry(SeasonShares shares, double probability) {
    DrySeason season = shares.own();
    return new HealthFinding(
        StationFault.DRY_PRINTS,
        season.station(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        String.format(
            Locale.ROOT,
            "%s: dry prints with %d of %d people, with %.0f %% at the other stations",
            season.season(),
            season.dry(),
            season.people(),
            PERCENT * shares.others().dry() / shares.others().people()),
        probability,
        List.of(),
        shares);
  }
}
