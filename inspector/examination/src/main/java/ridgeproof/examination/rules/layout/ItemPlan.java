package ridgeproof.examination.rules.layout;

import java.util.ArrayList;
import java.util.List;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.transaction.record.Subfield;

/**
 * Where the items of a subfield stand: first those that come once, then the group that repeats, as
 * the points of a polygon do.
 *
 * @param rows in the order of their numbers
 * @param repeated how many rows at the end repeat as a group; 0 for none
 * @param rounds how often the group may come
 */
record ItemPlan(List<FieldRow> rows, int repeated, int rounds) {

  /**
   * One place of a subfield.
   *
   * @param number of the item in the subfield, from 1
   * @param round of the group, from 1; 1 also for items that come once
   */
  record Place(FieldRow row, int number, int round) {}

  static ItemPlan of(List<FieldRow> rows) {
    int repeated = (int) rows.stream().filter(ItemPlan::repeats).count();
    int rounds = rows.stream().mapToInt(row -> row.maxOccurs().orElse(1)).max().orElse(1);
    return new ItemPlan(rows, repeated, rounds);
  }

  private static boolean repeats(FieldRow row) {
    return row.maxOccurs().orElse(1) > 1;
  }

  /** The highest number that an item may have. */
  int most() {
    return last() + repeated * (rounds - 1);
  }

  /** Every place that a subfield of so many items could fill, and at least each row's first. */
  List<Place> places(int size) {
    List<Place> places = new ArrayList<>();
    rows.forEach(row -> places.add(new Place(row, row.item().getAsInt(), 1)));
    for (int round = 2; round <= rounds && start(round) <= size; round++) {
      for (int i = 0; i < repeated; i++) {
        places.add(new Place(rows.get(rows.size() - repeated + i), start(round) + i, round));
      }
    }
    return places;
  }

  /** Whether a further round of the group says anything. */
  boolean says(Subfield subfield, int round) {
    for (int i = 0; i < repeated; i++) {
      if (!subfield.text(start(round) + i).isEmpty()) {
        return true;
      }
    }
    return false;
  }

  private int start(int round) {
    return last() + 1 + repeated * (round - 2);
  }

  private int last() {
    return rows.get(rows.size() - 1).item().getAsInt();
  }
}
