package ridgeproof.ledger.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.examination.Verdict;
import ridgeproof.ledger.ResponseOutcome;
import ridgeproof.ledger.Station;
import ridgeproof.ledger.store.LedgerQueries;

/**
 * The submissions of a ledger by control number, each with the responses that answer it. The order
 * in which they were examined does not matter.
 *
 * @param submissions by control number, in order of their days; a file that was examined again
 *     stands there once, as last examined
 * @param sendings every submission that was answered, in order
 * @param unmatched responses that answer nothing in the ledger
 * @param silent submissions without a control number
 */
record Cases(
    Map<Long, Station> stations,
    Map<String, List<Attempt>> submissions,
    List<Sending> sendings,
    int unmatched,
    int silent) {

  private static final Comparator<Attempt> IN_TIME =
      Comparator.comparingLong(Attempt::day)
          .thenComparingLong(Attempt::examined)
          .thenComparingLong(Attempt::id);

  static Cases load(LedgerQueries queries) {
    Map<Long, Station> stations = new HashMap<>();
    queries.forEach(
        "SELECT id, make, model, serial FROM station",
        row ->
            stations.put(
                row.getLong(1), new Station(row.getString(2), row.getString(3), row.getString(4))));
    Map<String, Verdict> verdicts = new HashMap<>();
    for (Verdict verdict : Verdict.values()) {
      verdicts.put(verdict.name(), verdict);
    }
    List<Attempt> attempts = new ArrayList<>();
    queries.forEach(
        "SELECT id, day, examined, SUBSTR(file_hash, 1, 16), control, station, operator, verdict, refers, outcome"
            + " FROM entry",
        row ->
            attempts.add(
                new Attempt(
                    row.getLong(1),
                    row.getLong(2),
                    row.getLong(3),
                    row.getString(4),
                    textOf(row.getString(5)),
                    row.getLong(6),
                    textOf(row.getString(7)),
                    verdicts.get(row.getString(8)),
                    Optional.ofNullable(row.getString(9)),
                    outcome(row.getString(10)))));
    attempts.sort(IN_TIME);
    return of(stations, attempts);
  }

  private static Optional<ResponseOutcome> outcome(String column) {
    return column == null ? Optional.empty() : Optional.of(ResponseOutcome.valueOf(column));
  }

  private static String textOf(String column) {
    return column == null ? "" : column;
  }

  static Cases of(Map<Long, Station> stations, List<Attempt> attempts) {
    Map<String, List<Attempt>> submissions = new LinkedHashMap<>();
    Map<String, List<Attempt>> responses = new HashMap<>();
    int silent = 0;
    for (Attempt attempt : attempts) {
      if (attempt.outcome().isPresent()) {
        add(responses, attempt.refers().orElse(""), attempt);
      } else if (attempt.control().isEmpty()) {
        silent++;
      } else {
        List<Attempt> same =
            submissions.computeIfAbsent(attempt.control(), control -> new ArrayList<>(1));
        same.removeIf(
            earlier ->
                earlier.fileHash().equals(attempt.fileHash()) && earlier.day() == attempt.day());
        same.add(attempt);
      }
    }
    List<Sending> sendings = new ArrayList<>();
    int matched = 0;
    for (Map.Entry<String, List<Attempt>> entry : submissions.entrySet()) {
      List<Attempt> answers = responses.getOrDefault(entry.getKey(), List.of());
      matched += answers.size();
      tie(entry.getValue(), answers, sendings);
    }
    int all = responses.values().stream().mapToInt(List::size).sum();
    return new Cases(stations, submissions, sendings, all - matched, silent);
  }

  private static void add(Map<String, List<Attempt>> map, String key, Attempt attempt) {
    map.computeIfAbsent(key, control -> new ArrayList<>(1)).add(attempt);
  }

  /** A response answers the last submission before it; a second answer to the same one is none. */
  private static void tie(List<Attempt> sent, List<Attempt> answers, List<Sending> sendings) {
    List<Attempt> answered = new ArrayList<>();
    for (Attempt answer : answers) {
      Attempt submission = sent.get(0);
      for (Attempt candidate : sent) {
        if (candidate.day() <= answer.day()) {
          submission = candidate;
        }
      }
      if (!answered.contains(submission)) {
        sendings.add(new Sending(submission, answer, answered.isEmpty()));
        answered.add(submission);
      }
    }
  }
}
