package ridgeproof.ledger.report;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import ridgeproof.examination.Verdict;
import ridgeproof.ledger.store.LedgerQueries;

/**
 * What the bureau said against the verdict before sending.
 *
 * @param accepted share accepted of the submissions with each verdict that were answered
 * @param misses READY and rejected, by reason, the most frequent first
 * @param falseAlarms by rule: of the submissions that were answered although this rule held them,
 *     how many were accepted; the most frequent first
 * @param rejections all rejections by reason, then by finger (0 where none is named)
 */
public record Agreement(
    Map<Verdict, Share> accepted,
    Map<String, Long> misses,
    Map<String, Share> falseAlarms,
    Map<String, Map<Integer, Long>> rejections) {

  static Agreement of(Cases cases, LedgerQueries queries) {
    Map<Verdict, Share> accepted = new EnumMap<>(Verdict.class);
    Map<Long, Sending> rejected = new HashMap<>();
    Map<Long, Sending> held = new HashMap<>();
    for (Sending sending : cases.sendings()) {
      Verdict verdict = sending.submission().verdict();
      accepted.merge(verdict, share(sending.accepted()), Agreement::sum);
      if (!sending.accepted()) {
        rejected.put(sending.response().id(), sending);
      }
      if (verdict == Verdict.HOLD) {
        held.put(sending.submission().id(), sending);
      }
    }
    Map<String, Long> misses = new TreeMap<>();
    Map<String, Map<Integer, Long>> rejections = new TreeMap<>();
    countReasons(rejected, misses, rejections, queries);
    return new Agreement(accepted, mostFirst(misses), falseAlarms(held, queries), rejections);
  }

  private static Share share(boolean yes) {
    return new Share(yes ? 1 : 0, 1);
  }

  private static Share sum(Share one, Share other) {
    return new Share(one.of() + other.of(), one.all() + other.all());
  }

  /** A response may give several reasons; each counts once for a response. */
  private static void countReasons(
      Map<Long, Sending> rejected,
      Map<String, Long> misses,
      Map<String, Map<Integer, Long>> rejections,
      LedgerQueries queries) {
    Set<String> seen = new HashSet<>();
    queries.forEach(
        "SELECT entry, reason, finger FROM message",
        row -> {
          Sending sending = rejected.get(row.getLong(1));
          if (sending == null) {
            return;
          }
          String reason = row.getString(2);
          rejections
              .computeIfAbsent(reason, key -> new TreeMap<>())
              .merge(row.getInt(3), 1L, Long::sum);
          if (sending.submission().verdict() == Verdict.READY
              && seen.add(sending.response().id() + " " + reason)) {
            misses.merge(reason, 1L, Long::sum);
          }
        });
  }

  private static Map<String, Share> falseAlarms(Map<Long, Sending> held, LedgerQueries queries) {
    Map<String, Share> shares = new TreeMap<>();
    Set<String> seen = new HashSet<>();
    queries.forEachOf(
        "SELECT entry, rule FROM finding WHERE severity = 'BLOCKING' AND entry",
        List.copyOf(held.keySet()),
        row -> {
          Sending sending = held.get(row.getLong(1));
          if (sending != null && seen.add(row.getLong(1) + row.getString(2))) {
            shares.merge(row.getString(2), share(sending.accepted()), Agreement::sum);
          }
        });
    Map<String, Share> ordered = new LinkedHashMap<>();
    shares.entrySet().stream()
        .filter(entry -> entry.getValue().of() > 0)
        .sorted(Comparator.comparingLong(entry -> -entry.getValue().of()))
        .forEach(entry -> ordered.put(entry.getKey(), entry.getValue()));
    return ordered;
  }

  private static Map<String, Long> mostFirst(Map<String, Long> counts) {
    Map<String, Long> ordered = new LinkedHashMap<>();
    counts.entrySet().stream()
        .sorted(Comparator.comparingLong(entry -> -entry.getValue()))
        .forEach(entry -> ordered.put(entry.getKey(), entry.getValue()));
    return ordered;
  }

  /** The verdicts that occur, the best first. */
  public List<Verdict> verdicts() {
    return List.copyOf(accepted.keySet());
  }
}
