package ridgeproof.ledger.health;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Dry prints of a station in three months.
 *
 * @param season such as {@code 2025 Dec to Feb}, named by the year in which it ends
 * @param dry people with at least one print that is too dry
 * @param people whose ridges were examined
 */
public record DrySeason(String station, String season, int dry, int people) {

  private static final List<String> NAMES =
      List.of("Dec to Feb", "Mar to May", "Jun to Aug", "Sep to Nov");
  private static final int MONTHS = 12;

  static List<DrySeason> of(Visits visits) {
    List<DrySeason> seasons = new ArrayList<>();
    visits
        .byStation()
        .forEach(
            (station, all) -> {
              Map<String, int[]> counts = new TreeMap<>();
              for (Visit visit : all) {
                if (visit.ridges()) {
                  int[] count = counts.computeIfAbsent(seasonOf(visit.day()), s -> new int[2]);
                  count[0] += visit.dryPrints() > 0 ? 1 : 0;
                  count[1]++;
                }
              }
              counts.forEach(
                  (season, count) ->
                      seasons.add(
                          new DrySeason(visits.nameOf(station), season, count[0], count[1])));
            });
    return seasons;
  }

  private static String seasonOf(long day) {
    LocalDate date = LocalDate.ofEpochDay(day);
    int quarter = date.getMonthValue() % MONTHS / 3;
    int year = date.getYear() + (date.getMonthValue() == MONTHS ? 1 : 0);
    return year + " " + NAMES.get(quarter);
  }
}
