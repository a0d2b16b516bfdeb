package ridgeproof.ledger.report;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import ridgeproof.report.words.Counted;

/**
 * How many submissions were accepted after how many days.
 *
 * @param bars of equal widths in days, from 0 to the longest time
 */
public record WaitingTimes(List<Bar> bars) {

  private static final int MAX_BARS = 15;
  private static final int[] WIDTHS = {1, 2, 7, 14, 30, 91, 365};

  /**
   * A bar.
   *
   * @param from days, the first that is counted
   * @param to days, the last
   */
  public record Bar(int from, int to, long count) {

    /** Such as {@code 3 days} or {@code 14 to 20 days}. */
    public String words() {
      return from == to ? Counted.of(to, "day") : from + " to " + to + " days";
    }
  }

  public WaitingTimes {
    bars = List.copyOf(bars);
  }

  /**
   * The bars of a count of days, in the narrowest width that gives at most {@value #MAX_BARS}.
   *
   * @param days how many were accepted, by days of waiting
   */
  static WaitingTimes of(TreeMap<Integer, Long> days) {
    if (days.isEmpty()) {
      return new WaitingTimes(List.of());
    }
    int width = width(days.lastKey());
    List<Bar> bars = new ArrayList<>();
    for (int from = 0; from <= days.lastKey(); from += width) {
      long count =
          days.subMap(from, from + width).values().stream().mapToLong(Long::longValue).sum();
      bars.add(new Bar(from, from + width - 1, count));
    }
    return new WaitingTimes(bars);
  }

  private static int width(int longest) {
    for (int width : WIDTHS) {
      if (longest / width < MAX_BARS) {
        return width;
      }
    }
    return longest / MAX_BARS + 1;
  }

  /** The count of the highest bar. */
  long most() {
    return bars.stream().mapToLong(Bar::count).max().orElse(0);
  }
}
