package ridgeproof.archive.question;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import ridgeproof.ledger.health.StationHealth;

/**
 * The answers to every question.
 *
 * @param inputs files that came
 * @param examined files with different contents
 * @param quarantined files without a result
 */
public record ArchiveAnswers(
    long inputs,
    long examined,
    long quarantined,
    Map<Question, List<Row>> answers,
    StationHealth health) {

  /**
   * Asks all questions.
   *
   * @param spark in which the tables of the archive are views
   * @param lastDay later days are left out of the health of stations
   */
  public static ArchiveAnswers of(SparkSession spark, LocalDate lastDay) {
    Map<Question, List<Row>> answers = new EnumMap<>(Question.class);
    for (Question question : Question.values()) {
      if (question != Question.LAST_PEOPLE) {
        answers.put(question, spark.sql(question.sql()).collectAsList());
      }
    }
    return new ArchiveAnswers(
        count(spark, "files"),
        count(spark, "files WHERE NOT repeat"),
        count(spark, "quarantine"),
        answers,
        StationDrift.of(spark.sql(Question.LAST_PEOPLE.sql()).toLocalIterator(), lastDay));
  }

  private static long count(SparkSession spark, String what) {
    return spark.sql("SELECT count(*) FROM " + what).first().getLong(0);
  }

  public List<Row> of(Question question) {
    return answers.get(question);
  }
}
