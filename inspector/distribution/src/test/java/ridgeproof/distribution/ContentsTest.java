package ridgeproof.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a package has to hold. */
class ContentsTest {

  private static FileSystem zip;
  private static Path home;

  @BeforeAll
  static void open() throws IOException {
    zip =
        FileSystems.newFileSystem(
            UnpackedPackage.anyJava(), Map.of("enablePosixFileAttributes", true));
    home = zip.getPath("ridgeproof-" + UnpackedPackage.version());
  }

  @AfterAll
  static void close() throws IOException {
    zip.close();
  }

  private static List<String> names(Path folder) {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString().replace("/", "")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The libraries of others, as name-version. */
  private static Set<String> libraries() {
    return names(home.resolve("app/lib")).stream()
        .filter(name -> !name.endsWith("-SNAPSHOT.jar"))
        .map(name -> name.replaceFirst("\\.jar$", ""))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void everyPackageHasItsChecksum() throws Exception {
    List<Path> packages;
    try (Stream<Path> all = Files.list(UnpackedPackage.anyJava().getParent())) {
      packages = all.filter(file -> file.toString().matches(".*\\.(zip|deb)")).toList();
    }
    assertTrue(packages.size() >= 2, packages.toString());
    for (Path file : packages) {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
        in.transferTo(java.io.OutputStream.nullOutputStream());
      }
      String stated = Files.readString(Path.of(file + ".sha256")).strip();
      assertEquals(HexFormat.of().formatHex(digest.digest()) + " *" + file.getFileName(), stated);
    }
  }

  @Test
  void programsMayBeRunAndNothingElse() throws IOException {
    for (String program : List.of("bin/ridgeproof", "bin/setup")) {
      assertEquals(
          "rwxr-xr-x",
          PosixFilePermissions.toString(Files.getPosixFilePermissions(home.resolve(program))),
          program);
    }
    assertEquals(
        "rw-r--r--",
        PosixFilePermissions.toString(
            Files.getPosixFilePermissions(home.resolve("app/ridgeproof.jar"))));
    String windows = Files.readString(home.resolve("bin/ridgeproof.cmd"));
    assertEquals(windows.lines().count(), windows.split("\r\n", -1).length - 1L);
  }

  @Test
  void everyCommandHasAManualPageAndIsCompleted() throws IOException {
    String completion =
        Files.readString(home.resolve("share/bash-completion/completions/ridgeproof"));
    List<String> pages = names(home.resolve("share/man/man1"));
    for (String command : List.of("examine", "ticket", "compare", "desk", "gate", "ledger")) {
      assertTrue(pages.contains("ridgeproof-" + command + ".1"), pages.toString());
      assertTrue(completion.contains(command), command);
    }
    String page = Files.readString(home.resolve("share/man/man1/ridgeproof.1"));
    assertTrue(page.contains("Source: ridgeproof " + UnpackedPackage.version()), page);
    assertTrue(completion.contains("--second-decoder"), "an option is missing");
  }

  @Test
  void everyLibraryIsListedWithItsLicenseAndHasItsText() throws IOException {
    List<String> lines = Files.readAllLines(home.resolve("licenses/THIRD-PARTY.txt"));
    List<String> texts = names(home.resolve("licenses"));
    assertTrue(libraries().size() > 50, libraries().toString());
    for (String library : libraries()) {
      List<String> listed =
          lines.stream()
              .filter(line -> line.contains(":" + library.replaceFirst("-(?=\\d)", ":") + " - "))
              .toList();
      assertEquals(1, listed.size(), library + " in " + lines);
      assertFalse(listed.get(0).contains("Unknown"), listed.get(0));
      assertTrue(
          texts.contains(library) || hasSharedText(listed.get(0)),
          "no license text: " + listed.get(0));
    }
    assertTrue(Files.readString(home.resolve("LICENSE")).contains("Apache License"));
  }

  /** Those that carry no text: Apache 2.0, or one of the two texts that name their authors. */
  private static boolean hasSharedText(String line) throws IOException {
    if (line.contains("Apache")) {
      return true;
    }
    String texts =
        Files.readString(home.resolve("licenses/BSD-3-Clause.txt"))
            + Files.readString(home.resolve("licenses/MIT.txt"));
    return Stream.of("TwelveMonkeys", "JLine", "progressbar")
        .anyMatch(name -> line.contains(name) && texts.contains(name));
  }

  @Test
  void everyLibraryIsInTheBillOfMaterials() throws IOException {
    String bill = Files.readString(home.resolve("sbom.json"));
    assertTrue(bill.contains("\"bomFormat\" : \"CycloneDX\""), "no CycloneDX");
    for (String library : libraries()) {
      String coordinates = library.replaceFirst("-(?=\\d)", "@");
      assertTrue(bill.contains("/" + coordinates + "?type=jar"), coordinates);
    }
  }

  @Test
  void aStartLinksNoLambdaOfOurs() throws IOException {
    int classes = 0;
    for (Path jar : List.of(home.resolve("app/ridgeproof.jar"), ownLibrary("examination"))) {
      try (ZipInputStream entries = new ZipInputStream(Files.newInputStream(jar))) {
        for (ZipEntry entry = entries.getNextEntry();
            entry != null;
            entry = entries.getNextEntry()) {
          if (entry.getName().endsWith(".class")) {
            String code = new String(entries.readAllBytes(), StandardCharsets.ISO_8859_1);
            assertFalse(code.contains("java/lang/invoke/LambdaMetafactory"), entry.getName());
            classes++;
          }
        }
      }
    }
    assertTrue(classes > 500, classes + " classes");
  }

  private static Path ownLibrary(String module) throws IOException {
    try (Stream<Path> all = Files.list(home.resolve("app/lib"))) {
      return all.filter(path -> path.getFileName().toString().startsWith(module + "-"))
          .findFirst()
          .orElseThrow();
    }
  }
}
