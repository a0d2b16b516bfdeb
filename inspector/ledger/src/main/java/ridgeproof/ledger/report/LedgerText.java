package ridgeproof.ledger.report;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import ridgeproof.examination.Verdict;
import ridgeproof.ledger.health.DrySeason;
import ridgeproof.ledger.health.HealthFinding;
import ridgeproof.ledger.health.StationHealth;
import ridgeproof.report.words.Counted;

/** The report as plain text. */
public final class LedgerText {

  private static final double MIDDLE = 0.5;
  private static final double NINE_TENTHS = 0.9;
  private static final int MAX_BAR = 40;

  private final LedgerReport report;
  private final StringBuilder out = new StringBuilder();

  private LedgerText(LedgerReport report) {
    this.report = report;
  }

  /** Renders the report. */
  public static String render(LedgerReport report) {
    return new LedgerText(report).text();
  }

  private String text() {
    line("Ledger report");
    line(
        "%d entries; %d submissions, %d of them answered.",
        report.entries(), report.submissions(), report.answered());
    if (report.unmatched() > 0) {
      line("%d responses refer to no submission in the ledger.", report.unmatched());
    }
    if (report.silent() > 0) {
      line("%d examinations have no control number and cannot be tied.", report.silent());
    }
    line("In brackets: 95 %% intervals (Wilson).");
    agreement();
    acceptance();
    rejections();
    recaptures();
    health();
    return out.toString();
  }

  private void agreement() {
    heading("What the bureau said against what we said");
    for (Verdict verdict : report.agreement().verdicts()) {
      line("  %-10s accepted %s", verdict, report.agreement().accepted().get(verdict).words());
    }
    if (report.agreement().accepted().isEmpty()) {
      line("  No submission has been answered yet.");
    }
    heading("Our misses: READY and rejected");
    report
        .agreement()
        .misses()
        .forEach(
            (reason, count) -> line("  %5d  %s", count, report.names().reasons().words(reason)));
    none(report.agreement().misses());
    heading("Our false alarms: HOLD by this rule, sent all the same, and accepted");
    report
        .agreement()
        .falseAlarms()
        .forEach((rule, share) -> line("  %s: %s", report.names().rule(rule), share.words()));
    none(report.agreement().falseAlarms());
  }

  private void acceptance() {
    Acceptance acceptance = report.acceptance();
    heading("Accepted at first sending");
    line("  all: %s", acceptance.all().words());
    heading("By station");
    acceptance.byStation().forEach((name, share) -> line("  %s: %s", name, share.words()));
    heading("By operator");
    acceptance.byOperator().forEach((name, share) -> line("  %s: %s", name, share.words()));
    heading("By week");
    acceptance.byWeek().forEach((week, share) -> line("  week of %s: %s", week, share.words()));
    heading("Time to acceptance");
    line("  %s", waiting(acceptance));
    WaitingTimes times = acceptance.waiting();
    for (WaitingTimes.Bar bar : times.bars()) {
      String length = "#".repeat((int) Math.round((double) MAX_BAR * bar.count() / times.most()));
      line(
          "  %s",
          String.format(Locale.ROOT, "%-14s %6d %s", bar.words(), bar.count(), length)
              .stripTrailing());
    }
  }

  /** How long acceptance took, in a sentence. */
  static String waiting(Acceptance acceptance) {
    if (acceptance.accepted() == 0) {
      return "Nothing was accepted yet.";
    }
    String counted = Counted.of(acceptance.accepted(), "accepted submission");
    return acceptance.hasTellingTimes()
        ? String.format(
            Locale.ROOT,
            "Of %s, half took at most %s and nine of ten at most %s.",
            counted,
            Counted.of(acceptance.daysOf(MIDDLE), "day"),
            Counted.of(acceptance.daysOf(NINE_TENTHS), "day"))
        : counted + ": fewer than " + Share.MIN_CASES + " cases, no shares.";
  }

  private void rejections() {
    heading("Rejections by reason and finger");
    report
        .agreement()
        .rejections()
        .forEach(
            (reason, fingers) -> {
              long all = fingers.values().stream().mapToLong(Long::longValue).sum();
              line("  %5d  %s", all, report.names().reasons().words(reason));
              fingers.forEach(
                  (finger, count) ->
                      line("         %5d  %s", count, report.names().finger(finger)));
            });
    none(report.agreement().rejections());
  }

  private void recaptures() {
    heading("How often a recapture helped");
    Recaptures recaptures = report.recaptures();
    line(
        "  without a finding after the recapture: %s",
        recaptures.all().all() == 0
            ? "no image with a finding was captured again"
            : recaptures.all().words());
    recaptures
        .byRule()
        .forEach(
            (rule, share) ->
                line("  %s no longer found: %s", report.names().rule(rule), share.words()));
  }

  private void health() {
    heading("Health of the stations");
    StationHealth health = report.health();
    health.people().forEach((station, people) -> line("  %s: the last %d people", station, people));
    line(
        "  All findings below together are false in at most %.0f of 100 reports.",
        100 * StationHealth.ERROR_RATE);
    for (HealthFinding finding : health.findings()) {
      line("");
      line("  %s: %s%s", who(finding), finding.fault().title(), dates(finding));
      line("    found: %s", finding.observed());
      if (!finding.alsoChanged().isEmpty()) {
        line(
            "    at the same time: %s",
            String.join("; ", finding.alsoChanged().stream().map(fault -> fault.title()).toList()));
      }
      line("    do: %s", finding.fault().remedy());
    }
    if (health.findings().isEmpty()) {
      line("  No finding.");
    }
    if (!health.seasons().isEmpty()) {
      heading("People with dry prints, by season");
      for (DrySeason season : health.seasons()) {
        line(
            "  %s, %s: %s",
            season.station(), season.season(), new Share(season.dry(), season.people()).words());
      }
    }
  }

  private String who(HealthFinding finding) {
    return finding.operator().map(report.names()::operator).orElse(finding.station());
  }

  /** Such as {@code , since 2025-03-11}. */
  static String dates(HealthFinding finding) {
    String since = finding.since().map((LocalDate day) -> ", since " + day).orElse("");
    return since + finding.until().map(day -> ", last seen " + day).orElse("");
  }

  private void none(Map<?, ?> map) {
    if (map.isEmpty()) {
      line("  None.");
    }
  }

  private void heading(String title) {
    line("");
    line("%s", title);
  }

  private void line(String format, Object... values) {
    out.append(String.format(Locale.ROOT, format, values)).append('\n');
  }
}
