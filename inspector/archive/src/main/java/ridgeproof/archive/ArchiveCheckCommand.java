package ridgeproof.archive;

import static org.apache.spark.sql.functions.coalesce;
import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.explode;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.upper;
import static org.apache.spark.sql.functions.when;

import java.util.concurrent.Callable;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import ridgeproof.archive.store.ArchiveTable;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.report.words.Counted;

@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = {
      "Compares an archive with reports that ridgeproof examine --format json wrote on the same files"
          + " at the same depth and day: the verdict of each file, and every finding with its place.",
      ""
    },
    footer = {
      "",
      "Exit status: 0 if they agree, 1 if they differ, 64 invalid usage, 74 input or output error."
    })
final class ArchiveCheckCommand implements Callable<Integer> {

  private static final int DIFFERENT = 1;
  private static final int MAX_TOLD = 10;

  /** About two files of one call of examine, which the examination of a file cannot find. */
  private static final String SAME_CONTROL_NUMBER = "RP-TXN-060";

  private static final StructType LOCATION =
      new StructType()
          .add("record", DataTypes.IntegerType)
          .add("recordType", DataTypes.IntegerType)
          .add("field", DataTypes.StringType)
          .add("subfield", DataTypes.IntegerType)
          .add("item", DataTypes.IntegerType)
          .add("position", DataTypes.IntegerType)
          .add("offset", DataTypes.LongType)
          .add("length", DataTypes.LongType);

  private static final StructType REPORT =
      new StructType()
          .add("file", new StructType().add("sha256", DataTypes.StringType))
          .add("verdict", DataTypes.StringType)
          .add("depth", DataTypes.StringType)
          .add(
              "findings",
              DataTypes.createArrayType(
                  new StructType()
                      .add("rule", DataTypes.StringType)
                      .add("severity", DataTypes.StringType)
                      .add("location", LOCATION)
                      .add("count", DataTypes.IntegerType)
                      .add("explains", DataTypes.IntegerType)));

  @Option(names = "--archive", paramLabel = "ADDRESS", required = true, description = "the archive")
  String archive;

  @Option(
      names = "--reports",
      paramLabel = "ADDRESS",
      required = true,
      description = "what examine wrote")
  String reports;

  private final Console console;

  ArchiveCheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    SparkSession spark = ArchiveSession.open();
    Dataset<Row> told =
        spark
            .read()
            .schema(REPORT)
            .option("multiLine", true)
            .json(reports)
            .where("file is not null")
            .dropDuplicates("file")
            .cache();
    long files = told.count();
    if (files == 0) {
      throw CommandFailure.inputOutput(reports + ": holds no report");
    }
    ArchiveTables tables = ArchiveTables.of(spark, archive);
    Dataset<Row> rows =
        tables.of(ArchiveTable.FILES).where("not repeat").select("file_hash", "verdict", "depth");
    Dataset<Row> wanted = told.select(col("file.sha256"), col("verdict"), col("depth"));
    Dataset<Row> findings = tables.of(ArchiveTable.FINDINGS).drop("number", "positions", "day");
    Dataset<Row> wantedFindings = findings(told);
    long differences = different(rows, wanted) + different(findings, wantedFindings);
    console.print(
        Counted.of(files, "file")
            + " and "
            + Counted.of(wantedFindings.count(), "finding")
            + " compared, "
            + Counted.of(differences, "difference"));
    return differences == 0 ? ExitStatus.OK : DIFFERENT;
  }

  private static Dataset<Row> findings(Dataset<Row> told) {
    Column place = col("f.location");
    return told.select(col("file.sha256").as("sha256"), explode(col("findings")).as("f"))
        .where(col("f.rule").notEqual(SAME_CONTROL_NUMBER))
        .select(
            col("sha256"),
            col("f.rule"),
            upper(col("f.severity")),
            place.getField("record"),
            place.getField("recordType"),
            place.getField("field"),
            place.getField("subfield"),
            place.getField("item"),
            when(
                place.getField("position").leq(ArchiveTable.MAX_POSITION),
                place.getField("position")),
            place.getField("offset"),
            place.getField("length"),
            coalesce(col("f.count"), lit(1)),
            col("f.explains"));
  }

  private long different(Dataset<Row> archived, Dataset<Row> reported) {
    return differing("only in the archive", archived.exceptAll(reported))
        + differing("only in the reports", reported.exceptAll(archived));
  }

  private long differing(String where, Dataset<Row> rows) {
    rows.limit(MAX_TOLD).collectAsList().forEach(row -> console.print(where + ": " + row));
    return rows.count();
  }
}
