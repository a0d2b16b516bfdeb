package ridgeproof.archive.question;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.StructType;
import ridgeproof.archive.store.ArchiveTable;
import ridgeproof.ledger.report.LedgerReport;
import ridgeproof.ledger.response.Reasons;
import ridgeproof.spec.SpecTables;

/** Tables of an archive whose rows a test has written itself. */
final class KnownTables {

  static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  private final SparkSession spark =
      SparkSession.builder()
          .master("local[2]")
          .config("spark.ui.enabled", "false")
          .config("spark.sql.shuffle.partitions", "2")
          .config("spark.sql.session.timeZone", "UTC")
          .config("spark.sql.datetime.java8API.enabled", "true")
          .getOrCreate();

  private final List<Row> files = new ArrayList<>();
  private final List<Row> findings = new ArrayList<>();
  private final List<Row> fingers = new ArrayList<>();

  KnownTables() {
    // Another test of this process may have opened Spark with other settings.
    spark.conf().set("spark.sql.datetime.java8API.enabled", "true");
  }

  private static Row row(ArchiveTable table, Map<String, Object> values) {
    StructType schema = table.schema();
    Object[] all = new Object[schema.size()];
    values.forEach((name, value) -> all[schema.fieldIndex(name)] = value);
    return RowFactory.create(all);
  }

  void file(
      String hash, String control, LocalDate day, String verdict, String serial, boolean repeat) {
    files.add(
        row(
            ArchiveTable.FILES,
            Map.ofEntries(
                Map.entry("input", hash + files.size()), Map.entry("file_hash", hash),
                Map.entry("repeat", repeat), Map.entry("verdict", verdict),
                Map.entry("images", 1), Map.entry("control", control),
                Map.entry("make", "TIDEWATER"), Map.entry("model", "PIER"),
                Map.entry("serial", serial), Map.entry("depth", "ridges"),
                Map.entry("program", "1"), Map.entry("tables", "1"),
                Map.entry("examined", Instant.EPOCH), Map.entry("day", day))));
  }

  void finger(String hash, LocalDate day, int position, int score, String image, double contrast) {
    fingers.add(
        row(
            ArchiveTable.FINGERS,
            Map.ofEntries(
                Map.entry("file_hash", hash), Map.entry("record", 3),
                Map.entry("position", position), Map.entry("finger", position),
                Map.entry("rolled", true), Map.entry("score", score),
                Map.entry("image_hash", image), Map.entry("encoder", "WSQ"),
                Map.entry("contrast", contrast), Map.entry("day", day))));
  }

  /** What questions are asked of. */
  void views() {
    view(ArchiveTable.FILES, files);
    view(ArchiveTable.FINDINGS, findings);
    view(ArchiveTable.FINGERS, fingers);
    view(ArchiveTable.QUARANTINE, List.of());
  }

  private void view(ArchiveTable table, List<Row> rows) {
    spark.createDataFrame(rows, table.schema()).createOrReplaceTempView(table.folder());
  }

  void finding(String hash, String rule) {
    findings.add(
        row(
            ArchiveTable.FINDINGS,
            Map.of("file_hash", hash, "rule", rule, "severity", "NOTE", "places", 2)));
  }

  /**
   * Two stations of 300 people; the contrast of the first falls by 30 gray levels in the middle.
   */
  void addStationThatDrifts() {
    Random random = new Random(11);
    for (int person = 0; person < 300; person++) {
      LocalDate day = DAY.plusDays(person / 2);
      for (String serial : List.of("1", "2")) {
        String hash = serial + "-" + person;
        file(hash, hash, day, "READY", serial, false);
        double fall = serial.equals("1") && person >= 150 ? 30 : 0;
        for (int position = 1; position <= 4; position++) {
          finger(hash, day, position, 70, hash + position, 120 - fall + random.nextGaussian() * 5);
        }
      }
    }
  }

  SparkSession spark() {
    return spark;
  }

  static LedgerReport.Names names() {
    SpecTables tables = SpecTables.open();
    return new LedgerReport.Names(Map.of(), new Reasons(tables), tables);
  }
}
