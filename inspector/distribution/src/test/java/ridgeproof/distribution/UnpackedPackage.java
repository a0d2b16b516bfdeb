package ridgeproof.distribution;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * A package as a user has it: unpacked in an empty folder. What is run there has no Maven and no
 * network, and only the commands that the launcher may use.
 *
 * @param home the folder that the zip holds
 * @param commands a folder with links to the commands that may be used
 */
record UnpackedPackage(Path home, Path commands) {

  /** All that the launchers use besides Java. */
  private static final List<String> COMMANDS =
      List.of("sh", "readlink", "dirname", "sed", "head", "awk", "mktemp", "mv", "rm");

  private static final int MINUTES = 5;

  /** What a command printed and ended with. */
  record Run(int status, String out, String error) {}

  static Path file(String name) {
    return Path.of(Objects.requireNonNull(System.getProperty("ridgeproof.packages"))).resolve(name);
  }

  static String version() {
    return Objects.requireNonNull(System.getProperty("ridgeproof.version"));
  }

  static Path anyJava() {
    return file("ridgeproof-" + version() + "-any-java.zip");
  }

  /** Unpacks a zip into an empty folder. */
  static UnpackedPackage of(Path zip, Path empty) throws IOException {
    try (ZipFile file = new ZipFile(zip.toFile())) {
      for (Enumeration<? extends ZipEntry> all = file.entries(); all.hasMoreElements(); ) {
        ZipEntry entry = all.nextElement();
        Path target = empty.resolve(entry.getName());
        if (entry.isDirectory()) {
          Files.createDirectories(target);
        } else {
          Files.createDirectories(target.getParent());
          try (InputStream in = file.getInputStream(entry)) {
            Files.copy(in, target);
          }
        }
      }
    }
    Path home = empty.resolve("ridgeproof-" + version());
    // The JDK does not keep the rights that a zip states; AnyJavaPackageTest checks them.
    for (String program : List.of("bin/ridgeproof", "bin/setup")) {
      home.resolve(program).toFile().setExecutable(true);
    }
    Path commands = Files.createDirectory(empty.resolve("commands"));
    for (String name : COMMANDS) {
      Files.createSymbolicLink(commands.resolve(name), found(name));
    }
    return new UnpackedPackage(home, commands);
  }

  private static Path found(String command) throws IOException {
    try (Stream<Path> places = Stream.of("/usr/bin", "/bin").map(Path::of)) {
      return places
          .map(place -> place.resolve(command))
          .filter(Files::isExecutable)
          .findFirst()
          .orElseThrow(() -> new IOException(command + " is not on this machine"));
    }
  }

  /** The Java that runs the tests. */
  static Path java() {
    return Path.of(System.getProperty("java.home"));
  }

  Run ridgeproof(Path java, String... arguments) throws IOException, InterruptedException {
    return run(java, home.resolve("bin/ridgeproof").toString(), arguments);
  }

  /** Runs a program with that Java, where it can reach nothing. */
  Run run(Path java, String program, String... arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(withoutNetwork());
    command.add(program);
    command.addAll(List.of(arguments));
    Path out = Files.createTempFile(commands.getParent(), "out", ".txt");
    Path error = Files.createTempFile(commands.getParent(), "error", ".txt");
    ProcessBuilder process = new ProcessBuilder(command).directory(home.toFile());
    process.environment().clear();
    process
        .environment()
        .putAll(
            Map.of(
                "PATH", commands.toString(),
                "JAVA_HOME", java.toString(),
                "HOME", commands.getParent().toString()));
    Process started = process.redirectOutput(out.toFile()).redirectError(error.toFile()).start();
    if (!started.waitFor(MINUTES, TimeUnit.MINUTES)) {
      started.destroyForcibly();
      throw new IOException(String.format(Locale.ROOT, "%s does not end", command));
    }
    return new Run(
        started.exitValue(),
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(error, StandardCharsets.UTF_8));
  }

  /** A network namespace of its own has no way out; where none may be made, there is no proxy. */
  private static List<String> withoutNetwork() throws IOException, InterruptedException {
    return mayUnshare("-n") ? List.of("/usr/bin/unshare", "-n") : List.of();
  }

  /** Whether this user may make a namespace of that kind. */
  static boolean mayUnshare(String kind) throws IOException, InterruptedException {
    if (!Files.isExecutable(Path.of("/usr/bin/unshare"))) {
      return false;
    }
    Process tried =
        new ProcessBuilder("/usr/bin/unshare", kind, "/bin/true")
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    return tried.waitFor() == 0;
  }
}
