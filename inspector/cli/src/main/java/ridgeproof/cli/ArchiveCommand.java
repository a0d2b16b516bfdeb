package ridgeproof.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Unmatched;
import ridgeproof.cli.io.CommandFailure;

/** Stands for the program for archives, which the launcher starts with Spark on its class path. */
@Command(
    name = "archive",
    description = {
      "Examines archives of any size on Apache Spark, on this machine or on a cluster.",
      "",
      "It is a program of its own, which ./ridgeproof archive builds and starts in the source tree."
          + " For a cluster, build it there with"
          + " mvn -P archive -DskipTests -pl inspector/archive -am package, and give"
          + " inspector/archive/target/archive-0.1.0-SNAPSHOT-spark.jar to spark-submit."
    },
    footer = {
      "",
      "Examples:",
      "  ./ridgeproof archive --input cards --output archive",
      "  ./ridgeproof archive report --archive archive --output report.html"
    })
final class ArchiveCommand implements Callable<Integer> {

  @Unmatched List<String> arguments;

  @Override
  public Integer call() {
    throw CommandFailure.inputOutput(
        "this installation does not include the program for archives; see: ridgeproof help archive");
  }
}
