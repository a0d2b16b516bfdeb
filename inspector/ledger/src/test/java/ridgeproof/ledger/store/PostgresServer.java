package ridgeproof.ledger.store;

import java.io.File;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A database server on a free port of this machine, with its data in a new folder.
 *
 * @param programs the folder of its programs
 * @param user the account that runs it, where that is not the one of the test
 */
record PostgresServer(Path programs, Optional<String> user, Path folder, int port) {

  private static final Path INSTALLED = Path.of("/usr/lib/postgresql");
  private static final String ACCOUNT = "postgres";
  private static final int MAX_MINUTES = 6;

  /** Starts it, once installed if need be; empty where that cannot be done. */
  static Optional<PostgresServer> start(Path logs) throws IOException, InterruptedException {
    Files.createDirectories(logs);
    Path log = logs.toAbsolutePath().resolve("postgresql.log");
    Optional<Path> programs = installed();
    if (programs.isEmpty() && isRoot() && Files.isExecutable(Path.of("/usr/bin/apt-get"))) {
      System.out.println("installing postgresql for the tests of the ledger; see " + log);
      String install = "apt-get install -y --no-install-recommends postgresql";
      run(List.of("sh", "-c", install + " || { apt-get update && " + install + "; }"), log);
      programs = installed();
    }
    if (programs.isEmpty()) {
      return Optional.empty();
    }
    // Short, since the path of a socket may not be long; and not below a folder of root alone.
    Path folder = Files.createTempDirectory(Path.of("/tmp"), "ridgeproof-pg");
    PostgresServer server =
        new PostgresServer(
            programs.get(), isRoot() ? Optional.of(ACCOUNT) : Optional.empty(), folder, freePort());
    if (server.user.isPresent()) {
      UserPrincipalLookupService users = folder.getFileSystem().getUserPrincipalLookupService();
      Files.setOwner(folder, users.lookupPrincipalByName(ACCOUNT));
    }
    return server.begin(log) ? Optional.of(server) : Optional.empty();
  }

  private static Optional<Path> installed() throws IOException {
    if (!Files.isDirectory(INSTALLED)) {
      return Optional.empty();
    }
    try (Stream<Path> versions = Files.list(INSTALLED)) {
      return versions
          .map(version -> version.resolve("bin"))
          .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
          .max(Comparator.naturalOrder());
    }
  }

  private static boolean isRoot() {
    return "root".equals(System.getProperty("user.name"));
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  private boolean begin(Path log) throws InterruptedException {
    String options =
        "-p " + port + " -c listen_addresses=127.0.0.1 -c unix_socket_directories=" + folder;
    return run(
            as("initdb", "-D", data(), "-U", ACCOUNT, "-A", "trust", "-E", "UTF8", "--locale=C"),
            log)
        && run(
            as("pg_ctl", "-D", data(), "-w", "-l", folder + "/log", "-o", options, "start"), log);
  }

  private String data() {
    return folder.resolve("data").toString();
  }

  String address(String database) {
    return "jdbc:postgresql://127.0.0.1:" + port + "/" + database + "?user=" + ACCOUNT;
  }

  void stop() throws IOException, InterruptedException {
    run(
        as("pg_ctl", "-D", data(), "-m", "immediate", "stop"),
        Files.createTempFile("pg-stop", ".log"));
    try (Stream<Path> files = Files.walk(folder)) {
      files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
    }
  }

  private List<String> as(String program, String... arguments) {
    List<String> command = new ArrayList<>();
    user.ifPresent(account -> command.addAll(List.of("runuser", "-u", account, "--")));
    command.add(programs.resolve(program).toString());
    command.addAll(List.of(arguments));
    return command;
  }

  private static boolean run(List<String> command, Path log) throws InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.directory(new File("/"));
    builder.environment().put("DEBIAN_FRONTEND", "noninteractive");
    builder.redirectInput(ProcessBuilder.Redirect.from(new File("/dev/null")));
    builder.redirectOutput(ProcessBuilder.Redirect.appendTo(log.toFile()));
    try {
      Process process = builder.start();
      if (process.waitFor(MAX_MINUTES, TimeUnit.MINUTES)) {
        return process.exitValue() == 0;
      }
      process.destroy();
      return false;
    } catch (IOException e) {
      return false;
    }
  }
}
