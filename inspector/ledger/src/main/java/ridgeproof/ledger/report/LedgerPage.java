package ridgeproof.ledger.report;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import ridgeproof.examination.Verdict;
import ridgeproof.ledger.health.HealthFinding;
import ridgeproof.ledger.health.StationHealth;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.page.HtmlHead;

/** What the template of the page is filled with; every text is inert already. */
public record LedgerPage(
    HtmlHead head,
    String stamp,
    String lead,
    List<String> notes,
    ShareTable agreement,
    List<CountRow> misses,
    ShareTable falseAlarms,
    WeekPlot weeks,
    List<ShareTable> groups,
    String waiting,
    WaitPlot waits,
    List<CountRow> reasons,
    List<CountRow> fingers,
    ShareTable recaptures,
    String healthLead,
    List<FaultNote> faults,
    ShareTable seasons) {

  private static final String STYLE = "ledger.css";
  private static final double PERCENT = 100;

  /** A share with its name; lengths where the whole is 100 long. */
  public record ShareRow(
      String name, String words, boolean telling, String length, String low, String high) {

    /** The row of a share; the name is made inert. */
    public static ShareRow of(String name, Share share) {
      return new ShareRow(
          TextSanitizer.of(name),
          share.words(),
          share.isTelling(),
          number(share.value()),
          number(share.interval().low()),
          number(share.interval().high()));
    }

    private static String number(double share) {
      return String.format(Locale.ROOT, "%.1f", PERCENT * share);
    }
  }

  /**
   * Shares of one kind.
   *
   * @param none what to say where there are none
   */
  public record ShareTable(
      String caption, String heading, String figure, List<ShareRow> rows, String none) {}

  /** How often something occurs. */
  public record CountRow(long count, String name) {}

  /**
   * A finding about a station or an operator.
   *
   * @param also what changed at the same time, else empty text
   */
  public record FaultNote(
      String title, String observed, String also, String remedy, FaultPicture picture) {}

  /** Renders the page. */
  public static String render(LedgerReport report) {
    StringOutput text = new StringOutput();
    JteledgerGenerated.render(new OwaspHtmlTemplateOutput(text), null, of(report));
    return text.toString();
  }

  private static LedgerPage of(LedgerReport report) {
    Agreement agreement = report.agreement();
    Acceptance acceptance = report.acceptance();
    LedgerReport.Names names = report.names();
    return new LedgerPage(
        HtmlHead.styled("Report on the ledger", style()),
        acceptance.all().isTelling()
            ? String.format(Locale.ROOT, "%.0f %%", PERCENT * acceptance.all().value())
            : acceptance.all().of() + " of " + acceptance.all().all(),
        lead(report),
        notes(report),
        table(
            "Submissions that were answered, by the verdict before sending",
            "Verdict",
            "Accepted",
            agreement.accepted(),
            Verdict::name,
            "No submission has been answered yet."),
        agreement.misses().entrySet().stream()
            .map(
                e ->
                    new CountRow(e.getValue(), TextSanitizer.of(names.reasons().words(e.getKey()))))
            .toList(),
        table(
            "Our false alarms: HOLD by this rule, sent all the same, and accepted",
            "Rule",
            "Accepted",
            agreement.falseAlarms(),
            names::rule,
            "Our false alarms: none."),
        WeekPlot.of(acceptance.byWeek()),
        List.of(
            table(
                "Accepted at first sending, by station",
                "Station",
                "Accepted",
                acceptance.byStation(),
                name -> name,
                "No submission has been answered yet."),
            table(
                "Accepted at first sending, by operator",
                "Operator",
                "Accepted",
                acceptance.byOperator(),
                name -> name,
                "No submission has been answered yet.")),
        LedgerText.waiting(acceptance),
        WaitPlot.of(acceptance.waiting()),
        reasons(agreement, names),
        fingers(agreement, names),
        recaptures(report),
        healthLead(report.health()),
        report.health().findings().stream().map(finding -> fault(finding, names)).toList(),
        seasons(report.health()));
  }

  /** The rules of CSS for what this page draws. */
  public static String style() {
    try (InputStream in = LedgerPage.class.getResourceAsStream(STYLE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String lead(LedgerReport report) {
    return String.format(
        Locale.ROOT,
        "%s. The ledger holds %d entries: %d submissions, %d of them answered.",
        report.acceptance().all().words(),
        report.entries(),
        report.submissions(),
        report.answered());
  }

  private static List<String> notes(LedgerReport report) {
    List<String> notes = new ArrayList<>();
    notes.add("In brackets: 95 % intervals (Wilson).");
    if (report.unmatched() > 0) {
      notes.add("Responses that refer to no submission in the ledger: " + report.unmatched() + ".");
    }
    if (report.silent() > 0) {
      notes.add(
          "Examinations without a control number, which cannot be tied: " + report.silent() + ".");
    }
    return notes;
  }

  private static <K> ShareTable table(
      String caption,
      String heading,
      String figure,
      Map<K, Share> shares,
      Function<K, String> name,
      String none) {
    List<ShareRow> rows =
        shares.entrySet().stream()
            .map(entry -> ShareRow.of(name.apply(entry.getKey()), entry.getValue()))
            .toList();
    return new ShareTable(caption, heading, figure, rows, none);
  }

  private static List<CountRow> reasons(Agreement agreement, LedgerReport.Names names) {
    List<CountRow> rows = new ArrayList<>();
    agreement
        .rejections()
        .forEach(
            (reason, fingers) ->
                rows.add(
                    new CountRow(
                        fingers.values().stream().mapToLong(Long::longValue).sum(),
                        TextSanitizer.of(names.reasons().words(reason)))));
    return rows;
  }

  private static List<CountRow> fingers(Agreement agreement, LedgerReport.Names names) {
    Map<Integer, Long> counts = new TreeMap<>();
    agreement
        .rejections()
        .values()
        .forEach(fingers -> fingers.forEach((finger, n) -> counts.merge(finger, n, Long::sum)));
    counts.remove(0);
    return counts.entrySet().stream()
        .map(entry -> new CountRow(entry.getValue(), names.finger(entry.getKey())))
        .toList();
  }

  private static ShareTable recaptures(LedgerReport report) {
    List<ShareRow> rows = new ArrayList<>();
    if (report.recaptures().all().all() > 0) {
      rows.add(ShareRow.of("no finding after the recapture", report.recaptures().all()));
    }
    report
        .recaptures()
        .byRule()
        .forEach((rule, share) -> rows.add(ShareRow.of(report.names().rule(rule), share)));
    return new ShareTable(
        "Images with a finding that were captured again under the same control number",
        "Finding",
        "No longer found",
        rows,
        "No image with a finding was captured again.");
  }

  /** What is to be known before the findings on stations. */
  public static String healthLead(StationHealth health) {
    String people =
        String.join(
            "; ",
            health.people().entrySet().stream()
                .map(entry -> TextSanitizer.of(entry.getKey()) + ", " + entry.getValue())
                .toList());
    return String.format(
            Locale.ROOT,
            "%s What is found here is found over many people. Without any fault, at most %.0f of 100"
                + " reports would have a finding. People looked at: %s.",
            health.findings().isEmpty() ? "No finding." : "",
            PERCENT * StationHealth.ERROR_RATE,
            people.isEmpty() ? "none" : people)
        .strip();
  }

  /** A finding on a station or an operator. */
  public static FaultNote fault(HealthFinding finding, LedgerReport.Names names) {
    String who = finding.operator().map(names::operator).orElse(finding.station());
    String also =
        finding.alsoChanged().isEmpty()
            ? ""
            : "At the same time: "
                + String.join("; ", finding.alsoChanged().stream().map(f -> f.title()).toList())
                + ".";
    return new FaultNote(
        TextSanitizer.of(who) + ": " + finding.fault().title() + LedgerText.dates(finding),
        "Found: " + TextSanitizer.of(finding.observed()) + ".",
        also,
        finding.fault().remedy(),
        FaultPicture.of(finding, names::operator));
  }

  private static ShareTable seasons(StationHealth health) {
    return new ShareTable(
        "People with dry prints, by season",
        "Station and season",
        "With a dry print",
        health.seasons().stream()
            .map(
                season ->
                    ShareRow.of(
                        season.station() + ", " + season.season(),
                        new Share(season.dry(), season.people())))
            .toList(),
        "Dry prints by season: ridges were not examined.");
  }
}
