package ridgeproof.report.summary;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.examination.Verdict;
import ridgeproof.report.FileAccount;
import ridgeproof.report.NotExamined;
import ridgeproof.report.Wording;
import ridgeproof.report.catalogue.RuleListing;
import ridgeproof.report.page.PageHead;
import ridgeproof.report.summary.OriginCounts.Origin;
import ridgeproof.report.summary.SummaryPage.FileRow;
import ridgeproof.report.summary.SummaryPage.OriginRow;
import ridgeproof.report.summary.SummaryPage.OriginTable;
import ridgeproof.report.summary.SummaryPage.PositionRow;
import ridgeproof.report.summary.SummaryPage.RuleRow;
import ridgeproof.report.summary.SummaryPage.Share;
import ridgeproof.report.summary.SummaryPage.VerdictRow;
import ridgeproof.report.summary.Tally.RuleCount;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.Severity;

/** What the summary of many files says. */
record SummaryContents(
    Tally all,
    PositionCounts positions,
    List<OriginCounts> origins,
    List<FolderSummary.FileRow> files,
    List<NotExamined> others,
    boolean showPersonal) {

  private static final int MOST_RULES = 20;
  private static final int MOST_RULES_OF_ORIGIN = 3;

  SummaryPage page() {
    List<RuleCount> rules = all.commonest();
    return new SummaryPage(
        PageHead.titled(title() + " \u2013 Ridgeproof", "summary.css"),
        share(all.files(Verdict.READY), all.files()).words(),
        lead(),
        new FileAccount(all.files(), others).sentence(),
        others,
        Stream.of(Verdict.values()).map(this::verdict).toList(),
        rules.stream().limit(MOST_RULES).map(this::rule).toList(),
        Math.max(0, rules.size() - MOST_RULES),
        positions.commonest().stream()
            .map(
                count ->
                    new PositionRow(
                        count.code(),
                        count.name(),
                        share(count.doubtful(), all.files()),
                        share(count.missing(), all.files())))
            .toList(),
        showPersonal,
        origins.stream().map(this::table).toList(),
        files.stream().map(SummaryContents::file).toList(),
        Wording.CAUTIONS);
  }

  private String title() {
    return "Summary of " + files(all.files());
  }

  private String lead() {
    return number(all.files(Verdict.READY))
        + " of "
        + files(all.files())
        + (all.files(Verdict.READY) == 1 ? " is" : " are")
        + " READY. The bureau decides what it accepts.";
  }

  private VerdictRow verdict(Verdict verdict) {
    return new VerdictRow(
        verdict.name(),
        style(verdict.name()),
        Wording.of(verdict),
        share(all.files(verdict), all.files()));
  }

  private RuleRow rule(RuleCount count) {
    return new RuleRow(
        count.rule().id(),
        count.severity().name(),
        style(count.severity().name()),
        count.rule().title(),
        remedy(count),
        share(count.files(), all.files()));
  }

  /** A remedy that hangs on what one file's finding requires says nothing of many. */
  private static String remedy(RuleCount count) {
    String remedy = count.rule().remedy();
    return remedy.contains("{required}") ? "" : RuleListing.spoken(remedy);
  }

  private OriginTable table(OriginCounts counts) {
    String kind = counts.kind().label();
    String fields =
        counts.fields().stream().map(FieldNumber::toString).collect(Collectors.joining(", "));
    return new OriginTable(
        "by-" + kind,
        "By " + kind,
        "Taken from "
            + (counts.fields().size() == 1
                ? "field "
                : "the first of these fields that has a value: ")
            + fields,
        kind.substring(0, 1).toUpperCase(Locale.ROOT) + kind.substring(1),
        counts.origins(showPersonal).stream().map(this::origin).toList());
  }

  private OriginRow origin(Origin origin) {
    Tally tally = origin.tally();
    return new OriginRow(
        origin.name(),
        origin.verbatim(),
        share(tally.files(Verdict.READY), tally.files()),
        Stream.of(Verdict.REVIEW, Verdict.HOLD, Verdict.UNREADABLE)
            .filter(verdict -> tally.files(verdict) > 0)
            .map(verdict -> number(tally.files(verdict)) + " " + verdict)
            .collect(Collectors.joining(", ")),
        tally.commonest().stream()
            .limit(MOST_RULES_OF_ORIGIN)
            .map(
                count ->
                    count.rule().id()
                        + " "
                        + count.rule().title()
                        + " ("
                        + files(count.files())
                        + ")")
            .toList());
  }

  private static FileRow file(FolderSummary.FileRow row) {
    List<String> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      int count = row.findings().get(severity.ordinal());
      if (count > 0) {
        counts.add(count + " " + severity);
      }
    }
    return new FileRow(
        row.name(),
        row.page(),
        row.verdict().name(),
        style(row.verdict().name()),
        counts.isEmpty() ? "no findings" : String.join(", ", counts));
  }

  private static Share share(int part, int whole) {
    double percent = whole == 0 ? 0 : 100.0 * part / whole;
    return new Share(number(part) + " of " + number(whole), words(part, whole, percent), percent);
  }

  /** Rounded, but never up to all or down to none. */
  private static String words(int part, int whole, double percent) {
    if (part > 0 && percent < 1) {
      return "< 1 %";
    }
    if (part < whole && percent > 99) {
      return "> 99 %";
    }
    return Math.round(percent) + " %";
  }

  private static String files(int count) {
    return number(count) + (count == 1 ? " file" : " files");
  }

  private static String number(int count) {
    return String.format(Locale.ROOT, "%,d", count);
  }

  private static String style(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
