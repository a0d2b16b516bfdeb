package ridgeproof.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.distribution.UnpackedPackage.Run;

/** The zip for any Java runs where there is nothing but Java. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class AnyJavaPackageTest {

  private static final String FAULTY = "examples/date-turned-round.an2";
  private static final String CLEAN = "examples/clean-flats.an2";
  private static final int HOLD = 2;
  private static final int NO_JAVA = 70;

  @TempDir static Path folder;
  private static UnpackedPackage unpacked;

  @BeforeAll
  static void unpack() throws IOException {
    unpacked = UnpackedPackage.of(UnpackedPackage.anyJava(), folder);
  }

  private static Path archive() {
    return unpacked.home().resolve("app/classes.jsa");
  }

  private static Run examine(Path java, String file) throws Exception {
    return unpacked.ridgeproof(java, "examine", "--as-of", "2026-11-01", file);
  }

  private static void isHold(Run run) {
    assertEquals(HOLD, run.status(), run.error());
    assertTrue(run.out().startsWith("HOLD  date-turned-round.an2"), run.out());
    assertTrue(run.out().contains("[BLOCKING] RP-FLD-008"), run.out());
    assertEquals("", run.error());
  }

  @Test
  @Order(1)
  void theFirstRunTellsItsVersionAndKeepsItsClassesReady() throws Exception {
    assertFalse(Files.exists(archive()), "a package holds no archive of another machine");
    Run run = unpacked.ridgeproof(UnpackedPackage.java(), "--version");
    assertEquals(0, run.status(), run.error());
    assertTrue(run.out().startsWith("ridgeproof " + UnpackedPackage.version()), run.out());
    assertEquals("", run.error());
    assertTrue(Files.size(archive()) > 1_000_000, "no archive was made");
    Run mapped =
        unpacked.run(
            UnpackedPackage.java(),
            UnpackedPackage.java().resolve("bin/java").toString(),
            "-Xshare:on",
            "-XX:+UseSerialGC",
            "-XX:SharedArchiveFile=" + archive(),
            "-cp",
            unpacked.home().resolve("app/ridgeproof.jar").toString(),
            "-version");
    assertEquals(0, mapped.status(), mapped.error());
  }

  @Test
  @Order(2)
  void itExaminesAFileAndComesToItsVerdict() throws Exception {
    isHold(examine(UnpackedPackage.java(), FAULTY));
    Run clean = examine(UnpackedPackage.java(), CLEAN);
    assertEquals(0, clean.status(), clean.error());
    assertTrue(clean.out().startsWith("READY  clean-flats.an2"), clean.out());
  }

  @Test
  @Order(3)
  void theArchiveIsMadeOnceForAJava() throws Exception {
    Object made = Files.getLastModifiedTime(archive());
    isHold(examine(UnpackedPackage.java(), FAULTY));
    assertEquals(made, Files.getLastModifiedTime(archive()));
  }

  /** Each JDK from 17 on that this machine has gives the same report, and no warning. */
  @Test
  @Order(4)
  void everyJavaOfThisMachineGivesTheSameReport() throws Exception {
    String expected = examine(UnpackedPackage.java(), FAULTY).out();
    for (Path java : javas()) {
      Run run = examine(java, FAULTY);
      isHold(run);
      assertEquals(expected, run.out(), java.toString());
      Path linked = unpacked.home().resolve("app/classes.aot");
      assertEquals(version(java) >= 25, Files.exists(linked), java.toString());
      assertEquals(version(java) < 25, Files.exists(archive()), java.toString());
      Run again = examine(java, FAULTY);
      assertEquals(expected, again.out(), java.toString());
      assertEquals("", again.error(), java.toString());
      for (String format : List.of("html", "json", "pdf")) {
        Path report = folder.resolve("report-" + java.getFileName() + "." + format);
        Run formatted =
            unpacked.ridgeproof(
                java, "examine", "--format", format, "--output", report.toString(), CLEAN);
        assertEquals(0, formatted.status(), formatted.error());
        assertEquals("", formatted.error(), java + ", " + format);
        assertTrue(Files.size(report) > 0);
      }
    }
  }

  private static List<Path> javas() throws IOException {
    Path all = Path.of("/usr/lib/jvm");
    if (!Files.isDirectory(all)) {
      return List.of(UnpackedPackage.java());
    }
    try (Stream<Path> folders = Files.list(all)) {
      return folders
          .filter(java -> Files.isExecutable(java.resolve("bin/java")))
          .filter(java -> !Files.isSymbolicLink(java))
          .filter(AnyJavaPackageTest::isNewEnough)
          .sorted()
          .toList();
    }
  }

  private static boolean isNewEnough(Path java) {
    return version(java) >= 17;
  }

  private static int version(Path java) {
    try (Stream<String> lines = Files.lines(java.resolve("release"))) {
      return lines
          .filter(line -> line.startsWith("JAVA_VERSION="))
          .mapToInt(line -> Integer.parseInt(line.replaceAll("\\D*(\\d+).*", "$1")))
          .findFirst()
          .orElse(0);
    } catch (IOException e) {
      return 0;
    }
  }

  /** The example of the page in the package, on the libraries in the package. */
  @Test
  void aProgramOfAVendorChecksAFileWithTheLibraries(@TempDir Path program) throws Exception {
    String page = Files.readString(unpacked.home().resolve("docs/library.md"));
    Path source = program.resolve("CheckBeforeSending.java");
    Files.writeString(source, page.replaceFirst("(?s).*?```java\n(.*?)```.*", "$1"));
    Run run =
        unpacked.run(
            UnpackedPackage.java(),
            UnpackedPackage.java().resolve("bin/java").toString(),
            "-cp",
            "app/lib/*",
            source.toString(),
            FAULTY);
    assertEquals(0, run.status(), run.error());
    assertTrue(run.out().startsWith("HOLD\nBLOCKING RP-FLD-008, record 2"), run.out());
  }

  @Test
  void aFolderThatCannotBeWrittenToOnlyStartsSlower(@TempDir Path other) throws Exception {
    assumeTrue(UnpackedPackage.mayUnshare("-m"), "needs the right to mount a folder");
    UnpackedPackage fresh = UnpackedPackage.of(UnpackedPackage.anyJava(), other);
    Path script =
        Files.writeString(
            other.resolve("read-only.sh"),
            "/bin/mount --bind -o ro \"$1\" \"$1\" && exec \"$1/bin/ridgeproof\" examine \"$1/"
                + FAULTY
                + "\"\n");
    isHold(
        fresh.run(
            UnpackedPackage.java(),
            "/usr/bin/unshare",
            "-m",
            "/bin/sh",
            script.toString(),
            fresh.home().toString()));
    assertFalse(Files.exists(fresh.home().resolve("app/classes.jsa")));
  }

  @Test
  void aJavaThatIsTooOldIsRefused(@TempDir Path old) throws Exception {
    Path java = Files.createDirectory(old.resolve("bin")).resolve("java");
    Files.writeString(java, "#!/bin/sh\necho 'openjdk version \"11.0.2\" 2019-01-15' >&2\n");
    java.toFile().setExecutable(true);
    Run run = unpacked.ridgeproof(old, "--version");
    assertEquals(NO_JAVA, run.status());
    assertEquals(
        "ridgeproof: Java 17 or newer is needed: install a runtime, or set JAVA_HOME to one\n",
        run.error());
  }
}
