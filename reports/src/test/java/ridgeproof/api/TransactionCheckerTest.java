package ridgeproof.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.Depth;
import ridgeproof.spec.rule.Severity;

/** What other programs rely on. */
class TransactionCheckerTest {

  private static final Path EXAMPLES =
      Path.of("").toAbsolutePath().getParent().resolve("docs/examples");
  private static final TransactionChecker CHECKER =
      TransactionChecker.standard()
          .withDepth(CheckDepth.STRUCTURE)
          .withDate(LocalDate.of(2026, 11, 1));

  private static CheckedFile faulty() throws IOException {
    return CHECKER.check(EXAMPLES.resolve("date-turned-round.an2"));
  }

  @Test
  void aFileIsCheckedWithItsVerdictFindingsAndActions() throws IOException {
    CheckedFile file = faulty();
    assertEquals("date-turned-round.an2", file.name());
    assertEquals("224a2321f7cd12b1a308b73f541ad34d3759722401785c122e729884107957b1", file.sha256());
    assertEquals(FileVerdict.HOLD, file.verdict());
    assertEquals(1, file.findings().size());
    ReportedFinding finding = file.findings().get(0);
    assertEquals("RP-FLD-008", finding.id());
    assertEquals(FindingSeverity.BLOCKING, finding.severity());
    assertEquals("Invalid format", finding.title());
    assertEquals(
        new FindingPlace(
            OptionalInt.of(2),
            OptionalInt.of(2),
            OptionalInt.of(0),
            Optional.of("2.022"),
            OptionalInt.of(1),
            OptionalInt.of(1),
            OptionalInt.of(258),
            OptionalInt.of(8),
            "record 2, Type-2, IDC 00, field 2.022, subfield 1, item 1, at byte 258"),
        finding.place());
    assertEquals(Optional.empty(), finding.finger());
    assertEquals(1, finding.count());
    assertEquals(1, file.actions().size());
    assertTrue(file.actions().get(0).contains("Date of birth (2.022)"), file.actions().get(0));
  }

  @Test
  void bytesAreCheckedLikeTheirFile() throws IOException {
    byte[] bytes = Files.readAllBytes(EXAMPLES.resolve("date-turned-round.an2"));
    assertEquals(faulty(), CHECKER.check("date-turned-round.an2", bytes));
  }

  @Test
  void aFindingOnAPrintNamesItsFinger() throws IOException {
    String card =
        new String(
            Files.readAllBytes(EXAMPLES.resolve("clean-flats.an2")),
            java.nio.charset.StandardCharsets.ISO_8859_1);
    // The scale units of the first print: 1 is pixels per inch, 7 is no code.
    byte[] changed =
        card.replaceFirst("14\\.008:1\u001D", "14.008:7\u001D")
            .getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
    List<ReportedFinding> findings =
        CHECKER.check("changed.an2", changed).findings().stream()
            .filter(finding -> finding.place().field().equals(Optional.of("14.008")))
            .toList();
    assertEquals(1, findings.size());
    assertEquals(
        Optional.of(new PrintPosition(13, "plain right four fingers")), findings.get(0).finger());
  }

  @Test
  void jsonIsTheWholeReport() throws IOException {
    String json = faulty().json();
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      while (parser.nextToken() != null) {
        parser.getText();
      }
    }
    assertTrue(json.contains("\"verdict\" : \"HOLD\""), json);
    assertTrue(json.contains("\"rule\" : \"RP-FLD-008\""), json);
  }

  @Test
  void personalDataIsMaskedUnlessItIsAskedFor() throws IOException {
    byte[] bytes = Files.readAllBytes(EXAMPLES.resolve("date-turned-round.an2"));
    CheckedFile masked = CHECKER.check("x.an2", bytes);
    CheckedFile shown = CHECKER.withPersonalData(true).check("x.an2", bytes);
    String born = shown.findings().get(0).found();
    assertEquals("\"04171988\"", born);
    assertFalse(masked.toString().contains("04171988"), masked.toString());
    assertTrue(shown.json().contains("04171988"));
  }

  @Test
  void aProfileDecidesWhichPrintsAreNeeded() throws IOException {
    CheckedFile rolled =
        CHECKER.withProfile("rolled-card").check(EXAMPLES.resolve("clean-flats.an2"));
    assertEquals(FileVerdict.HOLD, rolled.verdict());
    assertTrue(rolled.findings().stream().anyMatch(finding -> finding.id().equals("RP-TXN-004")));
    CheckedFile agency =
        CHECKER
            .withAgencyProfile("name = \"office\"\ntitle = \"Office\"\nbase = \"rolled-card\"\n")
            .check(EXAMPLES.resolve("clean-flats.an2"));
    assertEquals(FileVerdict.HOLD, agency.verdict());
    IllegalArgumentException unknown =
        assertThrows(IllegalArgumentException.class, () -> CHECKER.withProfile("pilots"));
    assertTrue(unknown.getMessage().contains("available: rolled-card"), unknown.getMessage());
    IllegalArgumentException unusable =
        assertThrows(IllegalArgumentException.class, () -> CHECKER.withAgencyProfile("name = "));
    assertTrue(unusable.getMessage().startsWith("profile:1:"), unusable.getMessage());
  }

  @Test
  void damageIsAFindingAndAMissingFileIsNot() {
    assertEquals(FileVerdict.UNREADABLE, CHECKER.check("empty.an2", new byte[0]).verdict());
    assertThrows(NoSuchFileException.class, () -> CHECKER.check(EXAMPLES.resolve("none.an2")));
  }

  /** Names that the library shows are those that the examination has. */
  @Test
  void everyConstantHasItsCounterpart() {
    assertEquals(names(Verdict.values()), names(FileVerdict.values()));
    assertEquals(names(Severity.values()), names(FindingSeverity.values()));
    assertEquals(names(Depth.values()), names(CheckDepth.values()));
  }

  private static List<String> names(Enum<?>[] constants) {
    return java.util.Arrays.stream(constants).map(Enum::name).toList();
  }
}
