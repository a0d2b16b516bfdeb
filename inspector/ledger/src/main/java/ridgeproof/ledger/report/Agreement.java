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
    ShareCounts<Verdict> accepted = new ShareCounts<>();
    Map<Long, Sending> rejected = new HashMap<>();
    Map<Long, Sending> held = new HashMap<>();
    for (Sending sending : cases.sendings()) {
      Verdict verdict = sending.submission().verdict();
      accepted.add(verdict, sending.accepted());
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
    Map<Verdict, Share> byVerdict = new EnumMap<>(Verdict.class);
    byVerdict.putAll(accepted.shares());
    return new Agreement(byVerdict, mostFirst(misses), falseAlarms(held, queries), rejections);
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
    Map<Long, Set<String>> seen = new HashMap<>();
    ShareCounts<String> tally = new ShareCounts<>();
    // All of them in one pass, which a database does faster than it looks up each that is held.
    queries.forEach(
        "SELECT entry, rule FROM finding WHERE severity = 'BLOCKING'",
        row -> {
          Sending sending = held.get(row.getLong(1));
          if (sending != null) {
            String rule = row.getString(2);
            if (seen.computeIfAbsent(row.getLong(1), entry -> new HashSet<>()).add(rule)) {
              tally.add(rule, sending.accepted());
            }
          }
        });
    Map<String, Share> shares = new TreeMap<>(tally.shares());
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
