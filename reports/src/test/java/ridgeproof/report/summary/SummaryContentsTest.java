package ridgeproof.report.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.Depth;
import ridgeproof.report.FileAccount;
import ridgeproof.report.FileFacts;
import ridgeproof.report.NotExamined;
import ridgeproof.report.PilotCard;
import ridgeproof.report.Reports;
import ridgeproof.report.summary.FolderSummary.FileRow;
import ridgeproof.report.summary.SummaryPage.FileTable;
import ridgeproof.report.summary.SummaryPage.RuleRow;
import ridgeproof.report.summary.SummaryPage.Share;

/** What the summary of many files says, value by value. */
class SummaryContentsTest {

  private static final FindingsReport HOLD = report(PilotCard.ascii().without(4).bytes());
  private static final FindingsReport UNREADABLE = report(new byte[] {1, 2, 3});

  private static FindingsReport report(byte[] bytes) {
    return Reports.examine(bytes, Depth.STRUCTURE);
  }

  private static FindingsReport withoutFindings(FindingsReport report) {
    return new FindingsReport(
        report.transaction(),
        report.tables(),
        report.depth(),
        report.asOf(),
        report.images(),
        report.profile(),
        report.profileNamed(),
        report.relaxed(),
        List.of(),
        List.of(),
        List.of(),
        report.sequence(),
        Verdict.READY);
  }

  private static FileRow file(
      String name, Verdict verdict, List<Integer> findings, String day, int station, String rule) {
    return new FileRow(
        name,
        verdict,
        findings,
        name + ".html",
        Optional.of(day).filter(text -> !text.isEmpty()).map(LocalDate::parse),
        station < 0 ? OptionalInt.empty() : OptionalInt.of(station),
        rule.isEmpty() ? List.of() : List.of(rule));
  }

  private static final List<FileRow> FILES =
      List.of(
          file("e", Verdict.HOLD, List.of(1, 0, 0, 9), "2026-03-03", 1, "RP-TXN-004"),
          file("d", Verdict.HOLD, List.of(1, 2, 0, 0), "", 0, "RP-TXN-004"),
          file("c", Verdict.READY, List.of(0, 0, 1, 2), "2026-03-01", -1, ""),
          file("b", Verdict.HOLD, List.of(1, 0, 0, 9), "2026-03-02", 0, ""),
          file("a", Verdict.READY, List.of(0, 0, 0, 0), "2026-03-02", 1, ""));

  private static final List<String> STATIONS = List.of("station A", "station B");

  private static SummaryPage page(
      Tally all, List<FileRow> files, List<String> stations, OriginCounts... origins) {
    return new SummaryContents(
            all,
            new PositionCounts(Reports.TABLES),
            List.of(origins),
            stations,
            files,
            List.of(new NotExamined("notes.txt", "not a transaction")),
            false)
        .page();
  }

  private static SummaryPage page() {
    return page(tally(2, 1), FILES, STATIONS);
  }

  private static Tally tally(int hold, int unreadable) {
    Tally tally = new Tally();
    for (int i = 0; i < hold; i++) {
      tally.add(HOLD);
    }
    for (int i = 0; i < unreadable; i++) {
      tally.add(UNREADABLE);
    }
    return tally;
  }

  private static List<String> names(String key) {
    FileTable table =
        page().files().stream().filter(t -> t.key().equals("order-" + key)).findFirst().get();
    return table.rows().stream().map(SummaryPage.FileRow::name).toList();
  }

  /** By verdict, then by the number of findings of each severity, then by name. */
  @Test
  void filesAreListedInEachOrder() {
    assertEquals(
        List.of(
            "order-worst worst first",
            "order-name file name",
            "order-day newest capture first",
            "order-station station"),
        page().files().stream().map(table -> table.key() + " " + table.order()).toList());
    assertEquals(List.of("d", "b", "e", "c", "a"), names("worst"));
    assertEquals(List.of("a", "b", "c", "d", "e"), names("name"));
    assertEquals(List.of("e", "b", "a", "c", "d"), names("day"));
    assertEquals(List.of("d", "b", "e", "a", "c"), names("station"));
  }

  @Test
  void aFileIsListedWithAllThatItCanBePickedBy() {
    assertEquals(
        List.of(
            new SummaryPage.FileRow(
                "d",
                "d.html",
                "HOLD",
                "hold",
                "1 BLOCKING, 2 LIKELY",
                "",
                "station A",
                "RP-TXN-004 hold s0 w-BLOCKING"),
            new SummaryPage.FileRow(
                "b",
                "b.html",
                "HOLD",
                "hold",
                "1 BLOCKING, 9 NOTE",
                "2026-03-02",
                "station A",
                "hold s0 d20260302 w-BLOCKING"),
            new SummaryPage.FileRow(
                "e",
                "e.html",
                "HOLD",
                "hold",
                "1 BLOCKING, 9 NOTE",
                "2026-03-03",
                "station B",
                "RP-TXN-004 hold s1 d20260303 w-BLOCKING"),
            new SummaryPage.FileRow(
                "c",
                "c.html",
                "READY",
                "ready",
                "1 ADVICE, 2 NOTE",
                "2026-03-01",
                "",
                "ready d20260301 w-ADVICE"),
            new SummaryPage.FileRow(
                "a",
                "a.html",
                "READY",
                "ready",
                "no findings",
                "2026-03-02",
                "station B",
                "ready s1 d20260302")),
        page().files().get(0).rows());
  }

  @Test
  void filesOfOneDayAndStationHaveFewerOrders() {
    List<FileRow> two = FILES.subList(3, 4);
    assertEquals(1, page(tally(1, 0), two, List.of("station A")).files().size());
    List<FileRow> same = List.of(FILES.get(1), FILES.get(3));
    assertEquals(
        List.of("order-worst", "order-name"),
        page(tally(1, 0), same, List.of("station A")).files().stream()
            .map(FileTable::key)
            .toList());
  }

  @Test
  void onlyUpToTwoThousandFilesAreListedInSeveralOrders() {
    List<FileRow> many = new ArrayList<>();
    for (int i = 0; i < 2000; i++) {
      many.add(FILES.get(3));
    }
    assertEquals(3, page(tally(1, 0), many, STATIONS).files().size());
    many.add(FILES.get(3));
    assertEquals(1, page(tally(1, 0), many, STATIONS).files().size());
  }

  @Test
  void thePageSaysHowManyFilesAreReady() {
    SummaryPage page = page();
    assertEquals("0 %", page.share());
    assertEquals("0 of 3 files are READY. The bureau decides what it accepts.", page.lead());
    assertEquals("4 files: 3 examined, 1 not examined.", page.account());
  }

  @Test
  void ofOneFileThePageSaysWhetherItIsReady() {
    String decision = " READY. The bureau decides what it accepts.";
    Tally ready = new Tally();
    ready.add(withoutFindings(HOLD));
    assertEquals("The file is" + decision, page(ready, FILES, STATIONS).lead());
    assertEquals("The file is not" + decision, page(tally(1, 0), FILES, STATIONS).lead());
  }

  @ParameterizedTest(name = "{0} of {0} + {1}: {2}")
  @CsvSource({
    "1, 0, '1 of 1', 100 %",
    "2, 1, '2 of 3', 67 %",
    "1, 2, '1 of 3', 33 %",
    "99, 1, '99 of 100', 99 %",
    "100, 1, '100 of 101', > 99 %",
    "1, 99, '1 of 100', 1 %",
    "1, 100, '1 of 101', < 1 %",
    "0, 1, '0 of 1', 0 %",
    "1000, 200, '1,000 of 1,200', 83 %",
  })
  void aShareIsNeverRoundedToAllOrToNone(int hold, int others, String files, String words) {
    Share share =
        page(tally(hold, others), FILES, STATIONS).verdicts().stream()
            .filter(row -> row.verdict().equals("HOLD"))
            .findFirst()
            .orElseThrow()
            .share();
    assertEquals(files, share.files());
    assertEquals(words, share.words());
    assertEquals(100.0 * hold / (hold + others), share.percent(), 1e-9);
  }

  @Test
  void everyVerdictIsCounted() {
    assertEquals(
        List.of(
            "READY ready 0 of 3",
            "REVIEW review 0 of 3",
            "HOLD hold 2 of 3",
            "UNREADABLE unreadable 1 of 3"),
        page().verdicts().stream()
            .map(row -> row.verdict() + " " + row.style() + " " + row.share().files())
            .toList());
  }

  @Test
  void aRuleIsListedWithItsFiles() {
    RuleRow missing =
        page().rules().stream().filter(rule -> rule.id().equals("RP-TXN-004")).findFirst().get();
    assertEquals("BLOCKING", missing.severity());
    assertEquals("blocking", missing.style());
    assertEquals("Print is missing", missing.title());
    assertEquals("2 of 3", missing.share().files());
    assertEquals(
        List.of(new SummaryPage.Link("e", "e.html"), new SummaryPage.Link("d", "d.html")),
        missing.files());
    assertEquals(0, missing.furtherFiles());
  }

  @Test
  void ofARuleOneHundredFilesAreNamedAndTheOthersCounted() {
    List<FileRow> many = Stream.generate(() -> FILES.get(0)).limit(103).toList();
    RuleRow missing =
        page(tally(103, 0), many, STATIONS).rules().stream()
            .filter(rule -> rule.id().equals("RP-TXN-004"))
            .findFirst()
            .get();
    assertEquals(100, missing.files().size());
    assertEquals(3, missing.furtherFiles());
  }

  @Test
  void filesArePickedBySeverityRuleStationAndDay() {
    assertEquals(
        List.of(
            "by-severity Worst finding",
            "by-rule Rule",
            "by-station-name Station",
            "by-date Captured, day of"),
        page().filters().stream().map(filter -> filter.id() + " " + filter.label()).toList());
    assertEquals(
        List.of(
            "any any", "w-BLOCKING BLOCKING", "w-LIKELY LIKELY", "w-ADVICE ADVICE", "w-NOTE NOTE"),
        options(0));
    assertEquals(List.of("any any", "s0 station A", "s1 station B"), options(2));
    assertEquals(
        List.of("any any", "d20260301 2026-03-01", "d20260302 2026-03-02", "d20260303 2026-03-03"),
        options(3));
  }

  private static List<String> options(int filter) {
    return page().filters().get(filter).options().stream()
        .map(option -> option.value() + " " + option.label())
        .toList();
  }

  @Test
  void whatAllFilesHaveInCommonIsNoChoice() {
    assertEquals(List.of(), page(new Tally(), FILES.subList(3, 4), List.of("station A")).filters());
  }

  @Test
  void theStyleHidesTheRowsWithoutTheClassThatWasChosen() {
    SummaryPage.Filter filter =
        new SummaryPage.Filter(
            "by-rule",
            "Rule",
            List.of(
                new SummaryPage.Option("any", "any"), new SummaryPage.Option("RP-TXN-004", "")));
    assertEquals(
        "#files:has(#by-rule option[value=\"RP-TXN-004\"]:checked) tbody tr:not(.RP-TXN-004)"
            + " { display: none; }\n",
        SummaryFilters.style(List.of(filter)));
  }

  /** The worst verdict first, then the worst finding, then how often, then the name. */
  @Test
  void theTextNamesTheVerdictsTheRulesAndTheWorstFiles() {
    FolderDigest digest = new FolderDigest();
    byte[] bytes = {1};
    digest.add(Reports.facts(bytes), HOLD);
    digest.add(new FileFacts("b.an2", 1, ""), UNREADABLE);
    digest.add(new FileFacts("a.an2", 1, ""), UNREADABLE);
    String text = digest.text(new FileAccount(3, List.of(new NotExamined("notes.txt", "text"))));
    assertEquals(
        List.of(
            "SUMMARY",
            "",
            "4 files: 3 examined, 1 not examined.",
            "  notes.txt: text",
            "Verdicts: 1 HOLD, 2 UNREADABLE.",
            "",
            "Most frequent findings",
            "      2 files  RP-STR-002 File is not a transaction",
            "      1 file   RP-PTL-001 Required biographic field is missing",
            "      1 file   RP-TXN-004 Print is missing",
            "",
            "Worst files",
            "  UNREADABLE  a.an2: 1 BLOCKING, first RP-STR-002 File is not a transaction",
            "  UNREADABLE  b.an2: 1 BLOCKING, first RP-STR-002 File is not a transaction",
            "  HOLD        file.an2: 13 BLOCKING, first RP-TXN-004 Print is missing"),
        text.lines().toList());
  }

  @Test
  void theTextNamesTenFilesAndCountsTheOthers() {
    FolderDigest digest = new FolderDigest();
    for (int i = 0; i < 10; i++) {
      digest.add(new FileFacts("f" + i, 1, ""), UNREADABLE);
    }
    assertEquals(
        "  UNREADABLE  f9: 1 BLOCKING, first RP-STR-002 File is not a transaction", last(digest));
    digest.add(new FileFacts("g", 1, ""), UNREADABLE);
    digest.add(new FileFacts("h", 1, ""), UNREADABLE);
    assertEquals("  and 2 more", last(digest));
  }

  private static String last(FolderDigest digest) {
    List<String> lines = digest.text(new FileAccount(12, List.of())).lines().toList();
    return lines.get(lines.size() - 1);
  }
}
