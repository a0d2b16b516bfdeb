package ridgeproof.examination.comparison;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * Pairs the records of two transactions: first those of the same type, IDC and position, then what
 * is left by type and position, then by type and IDC.
 */
final class RecordPairing {

  record Pair(LogicalRecord first, LogicalRecord second) {}

  private final SortedMap<Integer, LogicalRecord> removed = new TreeMap<>();
  private final SortedMap<Integer, LogicalRecord> added = new TreeMap<>();
  private final List<Pair> pairs = new ArrayList<>();

  RecordPairing(FindingsReport first, FindingsReport second) {
    first.transaction().records().forEach(record -> removed.put(record.ordinal(), record));
    second.transaction().records().forEach(record -> added.put(record.ordinal(), record));
    pairBy(first, second, (record, positions) -> record.idc() + " " + positions);
    pairBy(first, second, (record, positions) -> positions.isEmpty() ? "" : positions.toString());
    pairBy(first, second, (record, positions) -> record.idc().toString());
    pairs.sort(Comparator.comparingInt(pair -> pair.first().ordinal()));
  }

  /** In the order of the first transaction. */
  List<Pair> pairs() {
    return List.copyOf(pairs);
  }

  /** Records that only the first transaction has. */
  List<LogicalRecord> removed() {
    return List.copyOf(removed.values());
  }

  /** Records that only the second transaction has. */
  List<LogicalRecord> added() {
    return List.copyOf(added.values());
  }

  /**
   * The ordinals, in the first transaction, of records that stand elsewhere: those outside the
   * longest run that both have in one order.
   */
  Set<Integer> moved() {
    int[] longest = new int[pairs.size()];
    int[] before = new int[pairs.size()];
    int last = -1;
    for (int i = 0; i < pairs.size(); i++) {
      longest[i] = 1;
      before[i] = -1;
      for (int j = 0; j < i; j++) {
        boolean inOrder = pairs.get(j).second().ordinal() < pairs.get(i).second().ordinal();
        if (inOrder && longest[j] + 1 > longest[i]) {
          longest[i] = longest[j] + 1;
          before[i] = j;
        }
      }
      last = last < 0 || longest[i] > longest[last] ? i : last;
    }
    Set<Integer> moved = new HashSet<>();
    pairs.forEach(pair -> moved.add(pair.first().ordinal()));
    for (int i = last; i >= 0; i = before[i]) {
      moved.remove(pairs.get(i).first().ordinal());
    }
    return moved;
  }

  private interface Key {
    /** What two records have in common; empty where there is nothing to pair by. */
    String of(LogicalRecord record, List<Integer> positions);
  }

  private void pairBy(FindingsReport first, FindingsReport second, Key key) {
    Function<LogicalRecord, String> ofFirst = named(first, key);
    Function<LogicalRecord, String> ofSecond = named(second, key);
    Map<String, Queue<LogicalRecord>> waiting = new HashMap<>();
    for (LogicalRecord record : added.values()) {
      waiting.computeIfAbsent(ofSecond.apply(record), k -> new ArrayDeque<>()).add(record);
    }
    for (LogicalRecord record : List.copyOf(removed.values())) {
      String name = ofFirst.apply(record);
      Queue<LogicalRecord> candidates = waiting.get(name);
      if (!name.isEmpty() && candidates != null && !candidates.isEmpty()) {
        LogicalRecord found = candidates.remove();
        pairs.add(new Pair(record, found));
        removed.remove(record.ordinal());
        added.remove(found.ordinal());
      }
    }
  }

  private static Function<LogicalRecord, String> named(FindingsReport report, Key key) {
    Map<Integer, List<Integer>> positions = new HashMap<>();
    for (ExaminedImage image : report.images()) {
      positions.put(image.record().ordinal(), image.positions());
    }
    return record -> {
      String name = key.of(record, positions.getOrDefault(record.ordinal(), List.of()));
      return name.isEmpty() ? "" : record.type() + " " + name;
    };
  }
}
