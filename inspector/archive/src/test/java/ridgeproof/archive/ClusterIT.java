package ridgeproof.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.archive.store.ArchiveTable;

/**
 * The jar on a standalone cluster of a master and two workers, each a process: one worker is killed
 * in the middle, and the rows are those of a run in one process.
 */
class ClusterIT {

  private static final Path TARGET = Path.of("target").toAbsolutePath();
  private static final Path JAR = TARGET.resolve("archive-0.1.0-SNAPSHOT-spark.jar");
  private static final int COPIES = 40;

  /** Libraries that Spark does not have, which the jar has to bring. */
  private static final List<String> OWN =
      List.of("/gg/jte/", "/info/picocli/", "/org/xerial/", "/com/machinezoo/", "/jnbis/", "/jai-");

  private static final int MIN_TASKS_BEFORE = 3;

  /** Of both workers; so many tasks can be under way. */
  private static final int CORES = 2;

  private static final int MINUTES = 15;

  @TempDir Path folder;

  private final List<Process> processes = new ArrayList<>();

  @AfterEach
  void end() {
    processes.forEach(ClusterIT::kill);
  }

  @Test
  void aWorkerThatIsKilledInTheMiddleLosesAndDoublesNothing()
      throws IOException, InterruptedException {
    Path input = input();
    Path single = folder.resolve("single");
    ArchiveCalls.examine(input, single);

    Path home = sparkHome();
    int port = freePort();
    String master = "spark://127.0.0.1:" + port;
    start(
        home,
        "master",
        "org.apache.spark.deploy.master.Master",
        "--host",
        "127.0.0.1",
        "--port",
        String.valueOf(port),
        "--webui-port",
        "0");
    Process first = worker(home, "first", master);
    worker(home, "second", master);
    Path archive = folder.resolve("cluster");
    Process driver = submit(home, master, input, archive);
    waitForTasks(driver, archive.resolve("_staging/00000001/results"));
    kill(first);
    assertTrue(driver.waitFor(MINUTES, TimeUnit.MINUTES), "the job ends");
    assertEquals(0, driver.exitValue(), log("driver"));
    assertTrue(log("driver").contains("0 files in quarantine"), log("driver"));
    assertTrue(log("master").contains("Removing worker"), "a worker was lost");
    Map<ArchiveTable, List<String>> wanted = ArchiveCalls.rows(single);
    assertTrue(wanted.get(ArchiveTable.FILES).size() >= COPIES);
    assertEquals(wanted, ArchiveCalls.rows(archive));
  }

  /** Files of different contents: copies with another control number. */
  private Path input() throws IOException {
    Path input = Files.createDirectories(folder.resolve("input"));
    byte[] card = Files.readAllBytes(Path.of("../../docs/examples/clean-flats.an2"));
    String text = new String(card, StandardCharsets.ISO_8859_1);
    int at = text.indexOf("1.009:") + "1.009:".length();
    for (int i = 0; i < COPIES; i++) {
      byte[] copy = card.clone();
      copy[at] = (byte) ('A' + i % 26);
      copy[at + 1] = (byte) ('A' + i / 26);
      Files.write(input.resolve("card-" + i + ".an2"), copy);
    }
    return input;
  }

  /** What a worker starts executors from: a folder with the jars of Spark. */
  private Path sparkHome() throws IOException {
    Path jars = Files.createDirectories(folder.resolve("spark/jars"));
    for (String jar : Files.readString(TARGET.resolve("spark.classpath")).strip().split(":")) {
      Path link = jars.resolve(Path.of(jar).getFileName());
      if (OWN.stream().noneMatch(jar::contains) && !Files.exists(link)) {
        Files.createSymbolicLink(link, Path.of(jar));
      }
    }
    return jars.getParent();
  }

  private Process worker(Path home, String name, String master) throws IOException {
    return start(
        home,
        name,
        "org.apache.spark.deploy.worker.Worker",
        "--host",
        "127.0.0.1",
        "--cores",
        "1",
        "--memory",
        "1g",
        "--webui-port",
        "0",
        "--work-dir",
        folder.resolve("work-" + name).toString(),
        master);
  }

  private Process submit(Path home, String master, Path input, Path archive) throws IOException {
    return start(
        home,
        "driver",
        "org.apache.spark.deploy.SparkSubmit",
        "--master",
        master,
        "--class",
        ArchiveProgram.class.getName(),
        "--driver-memory",
        "512m",
        "--conf",
        "spark.executor.memory=700m",
        "--conf",
        "spark.driver.host=127.0.0.1",
        "--conf",
        "spark.ui.enabled=false",
        JAR.toString(),
        "--input",
        input.toString(),
        "--output",
        archive.toString(),
        "--key",
        folder.resolve("single.key").toString(),
        "--depth",
        "structure",
        "--as-of",
        ArchiveCalls.DAY);
  }

  private Process start(Path home, String name, String main, String... arguments)
      throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "@src/main/jvm/spark.options",
                "-Xmx512m",
                "-cp",
                home.resolve("jars") + "/*",
                main));
    command.addAll(List.of(arguments));
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve(name + ".log").toFile());
    builder.environment().put("SPARK_HOME", home.toString());
    builder.environment().put("SPARK_SCALA_VERSION", "2.13");
    builder.environment().put("SPARK_LOCAL_IP", "127.0.0.1");
    Process process = builder.start();
    processes.add(process);
    return process;
  }

  /** Until some tasks have ended and others have not. */
  private void waitForTasks(Process driver, Path results) throws IOException, InterruptedException {
    while (true) {
      assertTrue(driver.isAlive(), log("driver"));
      if (Files.isDirectory(results)) {
        try (Stream<Path> begun = Files.list(results)) {
          long files =
              begun.filter(path -> path.getFileName().toString().startsWith("part-")).count();
          if (files >= MIN_TASKS_BEFORE + CORES) {
            return;
          }
        }
      }
      Thread.sleep(20);
    }
  }

  private String log(String name) throws IOException {
    return Files.readString(folder.resolve(name + ".log"));
  }

  /** With what it has started: the executors of a worker are processes of their own. */
  private static void kill(Process process) {
    process.descendants().forEach(ProcessHandle::destroyForcibly);
    process.destroyForcibly();
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }
}
