package ridgeproof.ledger.report;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

  private static final Verdict[] VERDICTS = Verdict.values();
  private static final List<Optional<ResponseOutcome>> OUTCOMES =
      Stream.of(ResponseOutcome.values()).map(Optional::of).toList();

  /**
   * Of a response the number that it answers, of a submission its own, and numbers for words:
   * whatever crosses from the database as text costs many times what a number does.
   */
  private static final String ATTEMPTS =
      "SELECT id, day, station, "
          + ordinalOf("outcome", ResponseOutcome.values())
          + ", CASE WHEN outcome IS NULL THEN control ELSE refers END"
          + ", CASE WHEN outcome IS NULL THEN SUBSTR(file_hash, 1, 16) END"
          + ", CASE WHEN outcome IS NULL THEN operator END, "
          + ordinalOf("verdict", VERDICTS)
          + " FROM entry ORDER BY day, examined, id";

  private static String ordinalOf(String column, Enum<?>[] values) {
    return Stream.of(values)
        .map(value -> " WHEN '" + value.name() + "' THEN " + value.ordinal())
        .collect(Collectors.joining("", "CASE " + column, " ELSE -1 END"));
  }

  static Cases load(LedgerQueries queries) {
    Map<Long, Station> stations = new HashMap<>();
    queries.forEach(
        "SELECT id, make, model, serial FROM station",
        row ->
            stations.put(
                row.getLong(1), new Station(row.getString(2), row.getString(3), row.getString(4))));
    List<Attempt> attempts = new ArrayList<>();
    queries.forEach(ATTEMPTS, row -> attempts.add(attempt(row)));
    return of(stations, attempts);
  }

  private static Attempt attempt(ResultSet row) throws SQLException {
    int outcome = row.getInt(4);
    String key = textOf(row.getString(5));
    boolean answers = outcome >= 0;
    return new Attempt(
        row.getLong(1),
        row.getLong(2),
        answers ? "" : textOf(row.getString(6)),
        answers ? "" : key,
        row.getLong(3),
        answers ? "" : textOf(row.getString(7)),
        VERDICTS[row.getInt(8)],
        answers ? Optional.of(key) : Optional.empty(),
        answers ? OUTCOMES.get(outcome) : Optional.empty());
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
