package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderReportsTest {

  private static final Pattern PAGE = Pattern.compile("href=\"([^\"#][^\"]*)\"");

  @TempDir Path folder;
  private Path in;
  private Path out;

  @BeforeEach
  void makeAFolder() throws IOException {
    in = Files.createDirectories(folder.resolve("in"));
    out = folder.resolve("new/out");
  }

  private Path write(String name) throws IOException {
    Path file = in.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.write(file, SmallTransaction.numbered("PILOT-" + name.hashCode()));
  }

  private CommandRun pages(String... more) {
    return CommandRun.of(
        Stream.concat(
                Stream.of("examine", "--format", "html", "--output-dir", out.toString()),
                Stream.of(more))
            .toArray(String[]::new));
  }

  private static TreeSet<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  private List<String> links() throws IOException {
    return PAGE.matcher(Files.readString(out.resolve("index.html")))
        .results()
        .map((MatchResult link) -> link.group(1))
        .distinct() // a file is listed in several orders, and with each rule that it met
        .toList();
  }

  @Test
  void eachFileHasAPageAndTheSummaryLeadsToIt() throws IOException {
    for (int i = 0; i < 300; i++) {
      write("card-%03d.an2".formatted(i));
    }
    CommandRun outcome = pages(in.toString());
    assertEquals(0, outcome.status(), outcome.error());
    assertEquals("", outcome.out());
    assertEquals(
        List.of(),
        outcome.error().lines().filter(l -> !l.matches(".*: \\d+ of 300 files")).toList());
    assertEquals(301, names(out).size());
    assertEquals(300, links().size());
    for (String link : links()) {
      String page = Files.readString(out.resolve(link));
      assertTrue(page.contains(">" + link.replace(".html", "") + "<"), link);
    }
    assertTrue(Files.readString(out.resolve("index.html")).contains("300 of 300 files are READY"));
  }

  @Test
  void filesOfTheSameNameHaveAPageEach() throws IOException {
    for (String name : List.of("a/card.an2", "b/card.an2", "c/CARD.an2", "index", "card.an2-2")) {
      write(name);
    }
    assertEquals(0, pages(in.toString()).status());
    assertEquals(5, links().stream().map(String::toLowerCase).distinct().count());
    assertEquals(6, names(out).size());
    for (String link : links()) {
      assertTrue(Files.exists(out.resolve(link)), link);
    }
  }

  @Test
  void aHostileNameMakesNoLinkOfItsOwn() throws IOException {
    for (String name :
        List.of(
            "javascript:alert(7)",
            "\"><script>alert(7)<",
            "..an2",
            "-rf",
            "%2e%2e",
            "a b\nc",
            "\u202egnp.exe",
            "x".repeat(200))) {
      write(name);
    }
    assertEquals(0, pages(in.toString()).status());
    assertEquals(8, links().size());
    for (String link : links()) {
      assertTrue(link.matches("[A-Za-z0-9_][A-Za-z0-9._-]{0,110}\\.html"), link);
      assertTrue(Files.exists(out.resolve(link)), link);
    }
    assertFalse(Files.readString(out.resolve("index.html")).contains("<script"));
  }

  @Test
  void aFileThatCannotBeOpenedDoesNotKeepTheOthersFromBeingExamined() throws IOException {
    Path first = write("first.an2");
    Path last = write("last.an2");
    String gone = in.resolve("gone.an2").toString();
    CommandRun pages = pages(first.toString(), gone, last.toString());
    pages.isOneLineOf(74, "gone.an2: no such file");
    assertEquals(List.of("first.an2.html", "last.an2.html"), links());
    String summary = Files.readString(out.resolve("index.html"));
    assertTrue(summary.contains("gone.an2") && summary.contains("2 of 2 files"), summary);
    for (String format : List.of("text", "json", "csv", "sarif")) {
      CommandRun joined =
          CommandRun.of("examine", "--format", format, first.toString(), gone, last.toString());
      joined.isOneLineOf(74, "gone.an2: no such file");
      assertTrue(joined.out().contains("first.an2") && joined.out().contains("last.an2"), format);
      // SARIF lists results of files that were read, and has no place for others.
      assertEquals(!format.equals("sarif"), joined.out().contains("gone.an2"), format);
    }
  }

  /** Five kinds of transactions, six of other files. */
  private void everyKindOfFile() throws IOException {
    write("sound.an2");
    write("sub/named-otherwise.dat");
    Files.write(in.resolve("empty.eft"), new byte[0]);
    Files.write(in.resolve("empty.dat"), new byte[0]);
    Files.writeString(in.resolve("mailed.txt"), "From: station\n\n1.001:99\u001D");
    Files.write(in.resolve("empty.log"), new byte[0]);
    Files.writeString(in.resolve("notes.txt"), "nothing of ours");
    Files.writeString(
        in.resolve("photo.bin"), "\u0089PNG\r\n\u001A\n", StandardCharsets.ISO_8859_1);
    Files.writeString(in.resolve(".state"), "x");
    Files.writeString(in.resolve("Thumbs.db"), "x");
    Files.createSymbolicLink(in.resolve("gone"), in.resolve("nowhere"));
  }

  @Test
  void everyFileOfAFolderIsExaminedOrListedWithWhyNot() throws IOException {
    everyKindOfFile();
    List<String> others =
        List.of(
            ".state: a hidden file: its name begins with a period",
            "Thumbs.db: a file that Windows keeps for itself",
            "empty.log: empty",
            "gone: a broken link",
            "notes.txt: not a transaction: looks like text",
            "photo.bin: not a transaction: looks like a PNG image");
    CommandRun text = CommandRun.of("examine", in.toString());
    assertEquals(3, text.status(), text.error());
    assertTrue(text.out().contains("11 files: 5 examined, 6 not examined.\n"), text.out());
    for (String other : others) {
      assertTrue(text.out().contains("\n  " + other + "\n"), other);
    }
    String csv = CommandRun.of("examine", "--format", "csv", in.toString()).out();
    for (String other : others) {
      String name = other.substring(0, other.indexOf(": "));
      assertTrue(csv.contains("\n" + name + ",,NOT EXAMINED,"), csv);
    }
    String json = CommandRun.of("examine", "--format", "json", in.toString()).out();
    assertEquals(5, json.split("\"ridgeproof-findings\"", -1).length - 1);
    assertEquals(6, json.split("\"ridgeproof-not-examined\"", -1).length - 1);
    assertTrue(json.startsWith("[{") && json.endsWith("}]\n"), json);
  }

  @Test
  void theSummaryAccountsForEveryFile() throws IOException {
    everyKindOfFile();
    assertEquals(3, pages(in.toString()).status());
    String summary = Files.readString(out.resolve("index.html"));
    assertTrue(summary.contains("11 files: 5 examined, 6 not examined."), summary);
    assertEquals(5, links().size());
    for (String name : List.of(".state", "Thumbs.db", "empty.log", "gone", "notes.txt")) {
      assertTrue(summary.contains(">" + name + "<"), name);
    }
  }

  @Test
  void anEmptyExportIsUnreadableAndNotDropped() throws IOException {
    write("sound.an2");
    Files.write(in.resolve("empty.an2"), new byte[0]);
    CommandRun outcome = CommandRun.of("examine", "--format", "csv", in.toString());
    assertEquals(3, outcome.status());
    assertTrue(outcome.out().contains("empty.an2,"), outcome.out());
    assertTrue(outcome.out().contains(",UNREADABLE,RP-STR-001,"), outcome.out());
  }

  @Test
  void whereNoFileCanBeOpenedNothingIsWritten() throws IOException {
    Path report = folder.resolve("report");
    for (String format : List.of("text", "json", "csv", "sarif", "html")) {
      CommandRun.of(
              "examine", "--format", format, "--output", report.toString(), in.resolve("x") + "")
          .isOneLineOf(74, "no such file");
      assertEquals(new TreeSet<>(List.of("in")), names(folder), format);
    }
  }

  @Test
  void pagesThatAreThereAreReplacedOnlyWhenAsked() throws IOException {
    write("card.an2");
    Files.createDirectories(out);
    Files.writeString(out.resolve("card.an2.html"), "mine");
    pages(in.toString()).isOneLineOf(74, "--overwrite");
    assertEquals("mine", Files.readString(out.resolve("card.an2.html")));
    assertEquals(1, names(out).size());
    assertEquals(0, pages("--overwrite", in.toString()).status());
    assertTrue(Files.readString(out.resolve("card.an2.html")).startsWith("<!DOCTYPE html>"));
    assertEquals(2, names(out).size());
  }

  @Test
  void anInputIsNeverTheTargetOfAPage() throws IOException {
    Path card = write("card");
    Path page = write("card.html");
    out = in;
    pages("--overwrite", card.toString(), page.toString())
        .isOneLineOf(64, "input files are never changed");
    assertArrayEquals(
        SmallTransaction.numbered("PILOT-" + "card.html".hashCode()), Files.readAllBytes(page));
    assertEquals(2, names(in).size());
  }

  @Test
  void theFolderOfPagesIsForPagesAlone() throws IOException {
    String card = write("card.an2").toString();
    CommandRun.of("examine", "--output-dir", out.toString(), card).isOneLineOf(64, "--format html");
    pages("--output", "x.html", card).isOneLineOf(64, "cannot be combined");
    CommandRun.of("examine", "--operator-field", "2.2102", card).isOneLineOf(64, "--output-dir");
    pages("--operator-field", "name", card).isOneLineOf(64, "name");
    assertFalse(Files.exists(out));
  }

  @Test
  void theOperatorIsTheFieldThatTheAgencyHasForIt() throws IOException {
    String text = new String(SmallTransaction.bytes(), StandardCharsets.US_ASCII);
    assertTrue(text.contains("2.037:PILOT LICENCE"), text);
    write("card.an2");
    assertEquals(0, pages("--operator-field", "2.037", in.toString()).status());
    String summary = Files.readString(out.resolve("index.html"));
    assertTrue(summary.contains("operator 1") && !summary.contains("PILOT LICENCE"), summary);
  }

  @Test
  void severalJsonReportsMakeAnArrayAlsoWhenWrittenToAFile() throws IOException {
    write("a.an2");
    write("b.an2");
    Path report = folder.resolve("report.json");
    CommandRun.of("examine", "--format", "json", "--output", report.toString(), in.toString());
    String json = Files.readString(report);
    assertTrue(json.startsWith("[{") && json.endsWith("}]\n"), json);
    assertEquals(2, json.split("\"ridgeproof-findings\"", -1).length - 1);
  }
}
