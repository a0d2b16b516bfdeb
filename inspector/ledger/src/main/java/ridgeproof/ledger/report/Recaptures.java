package ridgeproof.ledger.report;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import ridgeproof.ledger.store.LedgerQueries;

/**
 * How often it helped to capture a finger again.
 *
 * @param all of the images with a finding that were captured again, those without a finding then
 * @param byRule the same by the rule that had asked for it, when that rule no longer reports
 */
public record Recaptures(Share all, Map<String, Share> byRule) {

  static Recaptures of(Cases cases, LedgerQueries queries) {
    Map<Long, Map<Integer, String>> images = new HashMap<>();
    List<Long> several =
        cases.submissions().values().stream()
            .filter(attempts -> attempts.size() > 1)
            .flatMap(attempts -> attempts.stream().map(Attempt::id))
            .toList();
    queries.forEachOf(
        "SELECT entry, position, image FROM print WHERE entry",
        several,
        row ->
            images
                .computeIfAbsent(row.getLong(1), entry -> new HashMap<>())
                .put(row.getInt(2), row.getString(3)));
    Map<Long, Map<Integer, Set<String>>> findings = new HashMap<>();
    queries.forEachOf(
        "SELECT entry, finger, rule FROM finding WHERE finger IS NOT NULL"
            + " AND severity IN ('BLOCKING', 'LIKELY') AND entry",
        several,
        row ->
            findings
                .computeIfAbsent(row.getLong(1), entry -> new HashMap<>())
                .computeIfAbsent(row.getInt(2), finger -> new HashSet<>())
                .add(row.getString(3)));
    long[] helped = new long[2];
    Map<String, Share> byRule = new TreeMap<>();
    for (List<Attempt> attempts : cases.submissions().values()) {
      for (int i = 1; i < attempts.size(); i++) {
        long before = attempts.get(i - 1).id();
        long after = attempts.get(i).id();
        findings
            .getOrDefault(before, Map.of())
            .forEach(
                (finger, rules) -> {
                  String old = images.getOrDefault(before, Map.of()).get(finger);
                  String now = images.getOrDefault(after, Map.of()).get(finger);
                  if (old != null && now != null && !old.equals(now)) {
                    Set<String> left =
                        findings.getOrDefault(after, Map.of()).getOrDefault(finger, Set.of());
                    helped[0] += left.isEmpty() ? 1 : 0;
                    helped[1]++;
                    for (String rule : rules) {
                      Share one = new Share(left.contains(rule) ? 0 : 1, 1);
                      byRule.merge(rule, one, Share::plus);
                    }
                  }
                });
      }
    }
    return new Recaptures(new Share(helped[0], helped[1]), byRule);
  }
}
