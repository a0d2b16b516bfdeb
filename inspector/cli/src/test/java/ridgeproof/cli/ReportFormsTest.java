package ridgeproof.cli;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.cli.io.Console;

class ReportFormsTest {

  @TempDir Path folder;
  private Path first;
  private Path second;

  @BeforeEach
  void writeTwoTransactions() throws IOException {
    first =
        Files.write(
            folder.resolve("specimen-ada.an2"), SmallTransaction.bytes("20260302", "SPECIMEN,ADA"));
    second =
        Files.write(
            folder.resolve("specimen-bea.an2"), SmallTransaction.bytes("20260303", "SPECIMEN,BEA"));
  }

  @Test
  void aTicketNamesNeitherTheFileNorThePerson() {
    for (String format : List.of("text", "markdown", "html")) {
      CommandRun ticket = run("ticket", "--format", format, first.toString());
      assertEquals(0, ticket.status(), ticket.error());
      assertFalse(ticket.out().toLowerCase().contains("specimen"), ticket.out());
      assertEquals(ticket.out(), run("ticket", "--format", format, first.toString()).out());
    }
  }

  @Test
  void aTicketTellsTheTimeThatItIsGiven() {
    CommandRun ticket =
        run("ticket", "--generated-at", "2026-03-02T11:15:00+01:00", first.toString());
    assertTrue(ticket.out().contains("2026-03-02T10:15:00Z"), ticket.out());
    CommandRun wrong = run("ticket", "--generated-at", "yesterday", first.toString());
    assertEquals(64, wrong.status());
    assertTrue(wrong.error().contains("yesterday"), wrong.error());
  }

  @Test
  void aComparisonEndsWithZeroForSameAndOneForDifferent() {
    assertEquals(0, run("compare", first.toString(), first.toString()).status());
    CommandRun different = run("compare", first.toString(), second.toString());
    assertEquals(1, different.status());
    assertFalse(different.out().contains("SPECIMEN,"), different.out());
    assertTrue(different.out().contains("2.018 NAM"), different.out());
    assertTrue(
        run("compare", "--show-personal", first.toString(), second.toString())
            .out()
            .contains("\"SPECIMEN,ADA\" became \"SPECIMEN,BEA\""));
  }

  @Test
  void whatIsIgnoredDoesNotCount() {
    assertEquals(
        0, run("compare", "--ignore", "1.005,2.018", first.toString(), second.toString()).status());
    assertEquals(
        1, run("compare", "--ignore", "2.018", first.toString(), second.toString()).status());
    CommandRun wrong = run("compare", "--ignore", "name", first.toString(), second.toString());
    assertEquals(64, wrong.status());
  }

  @Test
  void aPageIsForOneFile() {
    CommandRun page = run("examine", "--format", "html", first.toString());
    assertEquals(run("examine", first.toString()).status(), page.status(), page.error());
    assertTrue(page.out().startsWith("<!DOCTYPE html>"), page.out());
    CommandRun folderPage = run("examine", "--format", "html", folder.toString());
    assertEquals(64, folderPage.status());
    assertTrue(folderPage.error().contains("one file"), folderPage.error());
  }

  @Test
  void aPdfIsForOneFileAndNotForATerminal() throws IOException {
    Path pdf = folder.resolve("report.pdf");
    String[] examine = {"examine", "--format", "pdf", "--output", pdf.toString(), first.toString()};
    CommandRun written = CommandRun.of(examine);
    assertEquals(run("examine", first.toString()).status(), written.status(), written.error());
    assertEquals("", written.out());
    assertTrue(new String(Files.readAllBytes(pdf), US_ASCII).startsWith("%PDF-1."));
    CommandRun.of(examine).isOneLineOf(74, "--overwrite");
    run("examine", "--format", "pdf", folder.toString()).isOneLineOf(64, "one file");
    onTerminal("examine", "--format", "pdf", first.toString()).isOneLineOf(64, "--output");
  }

  @Test
  void aPdfOnStandardOutputIsTheOneInAFile() throws IOException {
    Path pdf = folder.resolve("report.pdf");
    run("examine", "--format", "pdf", "--output", pdf.toString(), first.toString());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CommandRun.to(out, "examine", "--format", "pdf", first.toString());
    assertArrayEquals(Files.readAllBytes(pdf), out.toByteArray());
  }

  @Test
  void whatAPdfAloneHasIsRefusedForOtherForms() throws IOException {
    run("examine", "--paper", "letter", first.toString()).isOneLineOf(64, "--format pdf");
    run("examine", "--generated-at", "2026-03-02T10:15:00Z", first.toString())
        .isOneLineOf(64, "--format pdf");
    run("examine", "--format", "pdf", "--paper", "a3", first.toString()).isOneLineOf(64, "a3");
  }

  private static CommandRun onTerminal(String... arguments) {
    ByteArrayOutputStream error = new ByteArrayOutputStream();
    Console console =
        new Console(
            new PrintStream(new ByteArrayOutputStream()),
            new PrintStream(error),
            false,
            true,
            false);
    int status = RidgeproofCommand.commandLine(console).execute(arguments);
    return new CommandRun(status, "", error.toString());
  }

  @Test
  void aFolderMakesOneSheetAndOneLog() {
    CommandRun csv = run("examine", "--format", "csv", folder.toString());
    assertEquals(1, csv.out().lines().filter(line -> line.startsWith("file,sha256")).count());
    assertTrue(csv.out().contains("specimen-ada.an2,") && csv.out().contains("specimen-bea.an2,"));
    CommandRun sarif = run("examine", "--format", "sarif", folder.toString());
    assertEquals(1, sarif.out().lines().filter(line -> line.contains("\"runs\"")).count());
    assertTrue(sarif.out().contains("specimen-bea.an2"), sarif.out());
  }

  private static CommandRun run(String... arguments) {
    return CommandRun.of(arguments);
  }
}
