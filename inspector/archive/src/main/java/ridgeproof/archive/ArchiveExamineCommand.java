package ridgeproof.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.Path;
import org.apache.spark.api.java.JavaSparkContext;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ridgeproof.archive.examining.ExaminationPlan;
import ridgeproof.archive.input.InputListing;
import ridgeproof.archive.local.ArchiveFileSystem;
import ridgeproof.archive.store.ArchiveError;
import ridgeproof.archive.store.ArchiveStore;
import ridgeproof.archive.store.ArchiveTable;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.Version;
import ridgeproof.cli.ledger.LedgerKey;
import ridgeproof.cli.option.ExaminationMixin;
import ridgeproof.cli.option.LimitOptions;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.report.words.Counted;
import ridgeproof.spec.SpecTables;

@Command(
    name = "ridgeproof archive",
    mixinStandardHelpOptions = true,
    description = {
      "Examines an archive of transaction files on Apache Spark and writes what was found as Parquet"
          + " tables by day: files, findings, fingers, and quarantine. A run that was stopped and"
          + " started again continues where it was; files that the archive holds are skipped.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  ridgeproof archive --input cards --output archive",
      "  ridgeproof archive report --archive archive --output report.html",
      "",
      "Exit status: 0, 64 invalid usage, 70 internal error, 74 input or output error."
    })
final class ArchiveExamineCommand implements Callable<Integer> {

  @ArgGroup Source source;

  /** What is examined. */
  static final class Source {

    @Option(
        names = "--input",
        paramLabel = "ADDRESS",
        description = "a file or folder, on this machine or on a Hadoop file system; repeatable")
    List<String> inputs;

    @Option(
        names = "--list",
        paramLabel = "ADDRESS",
        description = "a text file with the address of a file or folder on each line")
    String list;

    @Option(
        names = "--parquet",
        paramLabel = "ADDRESS",
        description = "a Parquet file, or a folder of them, with the files in a binary column")
    String table;

    List<String> named() {
      return inputs == null ? List.of(table) : inputs;
    }
  }

  @Option(
      names = "--column",
      paramLabel = "NAME",
      defaultValue = "content",
      description = "--parquet: the binary column (default: content)")
  String column;

  @Option(
      names = "--id-column",
      paramLabel = "NAME",
      description =
          "--parquet: a column that tells rows apart (default: rows with the same bytes are one)")
  String idColumn;

  @Option(
      names = "--output",
      paramLabel = "ADDRESS",
      description = "the folder of the archive; it is created if needed")
  String output;

  @Option(
      names = "--key",
      paramLabel = "FILE",
      description = {
        "the secret by which control numbers, images, and addresses are hashed; created if needed",
        "(default: beside a local output folder, with .key added to its name)"
      })
  java.nio.file.Path key;

  @Option(
      names = "--platen",
      description =
          "also measure the platen beside the prints: spots, uneven light, and traces of earlier"
              + " prints")
  boolean platen;

  @Option(
      names = "--batch-files",
      paramLabel = "N",
      defaultValue = "20000",
      description = "files that are committed together (default: 20000)")
  long batchFiles;

  @Option(
      names = "--batch-gigabytes",
      paramLabel = "N",
      defaultValue = "64",
      description = "bytes that are committed together, in billions (default: 64)")
  long batchGigabytes;

  @Mixin ExaminationMixin choices;

  @Mixin LimitOptions limits;

  private static final long GIGA = 1_000_000_000L;

  private final Console console;

  ArchiveExamineCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    // A subcommand has no use for them, so that they cannot be required of every call.
    if (source == null || output == null) {
      throw CommandFailure.usage("--output and one of --input, --list, --parquet are required");
    }
    SpecTables tables = SpecTables.open();
    ExaminationOptions options = choices.options(limits, tables);
    JavaSparkContext spark = ArchiveSession.context();
    try {
      Configuration hadoop = spark.hadoopConfiguration();
      Path root = qualified(new Path(output), hadoop);
      Iterator<Path> addresses = addresses(hadoop, root);
      ExaminationPlan plan =
          new ExaminationPlan(
              options.depth(),
              profileText(tables),
              options.today().toEpochDay(),
              ExaminationPlan.Limits.of(limits.reading(), limits.decoding()),
              platen,
              LedgerKey.readOrMake(keyFile(root), !ArchiveStore.exists(root, hadoop)),
              Version.number());
      ArchiveStore store = ArchiveStore.openToWrite(root, settings(plan), hadoop);
      try (RunProgress progress = new RunProgress(console, spark.sc().longAccumulator("files"))) {
        ArchiveRun run = new ArchiveRun(spark, store, plan, progress);
        InputListing listing = new InputListing(addresses, hadoop);
        long bytes = batchGigabytes * GIGA;
        tell(
            source.table == null
                ? run.examineFiles(listing, batchFiles, bytes)
                : run.examineTable(listing, bytes, columns()));
      }
      return ExitStatus.OK;
    } catch (ArchiveError e) {
      throw CommandFailure.inputOutput(output + ": " + e.getMessage());
    }
  }

  private List<String> columns() {
    return idColumn == null ? List.of(column) : List.of(column, idColumn);
  }

  private void tell(ArchiveRun.Outcome outcome) {
    console.print(
        Counted.of(outcome.examined(), "file")
            + " examined, "
            + Counted.of(outcome.quarantined(), "file")
            + " in quarantine, "
            + Counted.of(outcome.alreadyThere(), "file")
            + " skipped as already in the archive");
  }

  /** What the rows of one archive share, so that questions on it compare like with like. */
  private static String settings(ExaminationPlan plan) {
    return String.join(
        "\n",
        "schema " + ArchiveTable.SCHEMA_VERSION,
        "depth " + plan.depth().name().toLowerCase(Locale.ROOT),
        "platen " + (plan.platen() ? "yes" : "no"),
        "key " + plan.hash().verifier(),
        "");
  }

  private Iterator<Path> addresses(Configuration hadoop, Path root) throws IOException {
    List<String> named =
        source.list == null ? source.named() : lines(new Path(source.list), hadoop);
    List<Path> paths = new ArrayList<>();
    for (String name : named) {
      Path path = qualified(new Path(name), hadoop);
      if ((root + "/").startsWith(path + "/")) {
        throw CommandFailure.usage("--output is inside --input " + name);
      }
      if (source.list == null && !ArchiveFileSystem.of(path, hadoop).exists(path)) {
        throw CommandFailure.inputOutput(name + ": not found");
      }
      paths.add(path);
    }
    return paths.iterator();
  }

  private static List<String> lines(Path list, Configuration hadoop) throws IOException {
    try (var in = ArchiveFileSystem.open(list, hadoop)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .map(String::strip)
          .filter(line -> !line.isEmpty())
          .distinct()
          .toList();
    }
  }

  private static Path qualified(Path path, Configuration hadoop) throws IOException {
    return ArchiveFileSystem.of(path, hadoop).makeQualified(path);
  }

  private java.nio.file.Path keyFile(Path root) {
    if (key != null) {
      return key;
    }
    if (!ArchiveFileSystem.isLocal(root)) {
      throw CommandFailure.usage("--output on another file system needs --key FILE");
    }
    java.nio.file.Path folder = ArchiveFileSystem.local(root);
    return folder.resolveSibling(folder.getFileName() + ".key");
  }

  /** The name of a submission, or the text of an agency's file, which workers cannot read. */
  private String profileText(SpecTables tables) throws IOException {
    String profile = choices.profile;
    boolean built = profile == null || tables.profileNamed(profile).isPresent();
    return built ? profile : Files.readString(java.nio.file.Path.of(profile));
  }
}
