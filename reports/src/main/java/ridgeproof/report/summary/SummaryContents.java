package ridgeproof.report.summary;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.examination.Verdict;
import ridgeproof.report.FileAccount;
import ridgeproof.report.NotExamined;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.catalogue.RuleListing;
import ridgeproof.report.page.HtmlHead;
import ridgeproof.report.summary.OriginCounts.Origin;
import ridgeproof.report.summary.SummaryPage.FileRow;
import ridgeproof.report.summary.SummaryPage.FileTable;
import ridgeproof.report.summary.SummaryPage.Link;
import ridgeproof.report.summary.SummaryPage.OriginRow;
import ridgeproof.report.summary.SummaryPage.OriginTable;
import ridgeproof.report.summary.SummaryPage.PositionRow;
import ridgeproof.report.summary.SummaryPage.RuleRow;
import ridgeproof.report.summary.SummaryPage.Share;
import ridgeproof.report.summary.SummaryPage.VerdictRow;
import ridgeproof.report.summary.Tally.RuleCount;
import ridgeproof.report.words.Counted;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.Severity;

/** What the summary of many files says. */
record SummaryContents(
    Tally all,
    PositionCounts positions,
    List<OriginCounts> origins,
    List<String> stations,
    List<FolderSummary.FileRow> files,
    List<NotExamined> others,
    boolean showPersonal) {

  private static final int MAX_RULES = 20;
  private static final int MAX_FILES_OF_RULE = 100;

  /** Beyond these the list would be repeated too often. */
  private static final int MAX_SORTED = 2000;

  private static final int MAX_RULES_OF_ORIGIN = 3;

  SummaryPage page() {
    List<RuleCount> rules = all.commonest();
    Trend trend = Trend.of(files);
    List<SummaryPage.Filter> filters = SummaryFilters.of(rules, stations, trend, files.size() > 1);
    return new SummaryPage(
        HtmlHead.titled(
            title() + " \u2013 Ridgeproof", "summary.css", SummaryFilters.style(filters)),
        share(all.files(Verdict.READY), all.files()).words(),
        lead(),
        new FileAccount(all.files(), others).sentence(),
        others,
        Stream.of(Verdict.values()).map(this::verdict).toList(),
        rules.stream().limit(MAX_RULES).map(this::rule).toList(),
        Math.max(0, rules.size() - MAX_RULES),
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
        trend,
        filters,
        tables(trend),
        ReportPhrases.CAUTIONS);
  }

  private String title() {
    return "Summary of " + files(all.files());
  }

  private String lead() {
    int ready = all.files(Verdict.READY);
    String share =
        all.files() == 1
            ? "The file is " + (ready == 1 ? "" : "not ")
            : number(ready) + " of " + files(all.files()) + (ready == 1 ? " is " : " are ");
    return share + "READY. The bureau decides what it accepts.";
  }

  private VerdictRow verdict(Verdict verdict) {
    return new VerdictRow(
        verdict.name(),
        style(verdict.name()),
        ReportPhrases.of(verdict),
        share(all.files(verdict), all.files()));
  }

  private RuleRow rule(RuleCount count) {
    return new RuleRow(
        count.rule().id(),
        count.severity().name(),
        style(count.severity().name()),
        count.rule().title(),
        remedy(count),
        share(count.files(), all.files()),
        filesOf(count).limit(MAX_FILES_OF_RULE).map(f -> new Link(f.name(), f.page())).toList(),
        (int) Math.max(0, filesOf(count).count() - MAX_FILES_OF_RULE));
  }

  private Stream<FolderSummary.FileRow> filesOf(RuleCount count) {
    return files.stream().filter(file -> file.rules().contains(count.rule().id()));
  }

  /** The files in each order that a reader may want; of very many files only the worst first. */
  private List<FileTable> tables(Trend trend) {
    Comparator<FolderSummary.FileRow> worst =
        Comparator.comparing(FolderSummary.FileRow::verdict).reversed();
    for (Severity severity : Severity.values()) {
      worst =
          worst.thenComparing(
              Comparator.comparing(
                  (FolderSummary.FileRow f) -> -f.findings().get(severity.ordinal())));
    }
    Comparator<FolderSummary.FileRow> byName = Comparator.comparing(FolderSummary.FileRow::name);
    worst = worst.thenComparing(byName);
    List<FileTable> tables = new ArrayList<>();
    tables.add(table("worst", "worst first", worst, trend));
    if (files.size() > 1 && files.size() <= MAX_SORTED) {
      tables.add(table("name", "file name", byName, trend));
      if (trend.hasSeveralBars()) {
        Comparator<FolderSummary.FileRow> byDay =
            Comparator.comparing(f -> f.day().orElse(LocalDate.MIN));
        tables.add(table("day", "newest capture first", byDay.reversed(), trend));
      }
      if (stations.size() > 1) {
        Comparator<FolderSummary.FileRow> byStation =
            Comparator.comparing(f -> f.station().orElse(Integer.MAX_VALUE));
        tables.add(table("station", "station", byStation.thenComparing(worst), trend));
      }
    }
    return List.copyOf(tables);
  }

  private FileTable table(
      String key, String order, Comparator<FolderSummary.FileRow> by, Trend trend) {
    return new FileTable(
        "order-" + key, order, files.stream().sorted(by).map(row -> file(row, trend)).toList());
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
            .limit(MAX_RULES_OF_ORIGIN)
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

  private FileRow file(FolderSummary.FileRow row, Trend trend) {
    List<String> counts = new ArrayList<>();
    List<String> classes = new ArrayList<>(row.rules());
    classes.add(style(row.verdict().name()));
    row.station().ifPresent(station -> classes.add("s" + station));
    row.day().ifPresent(day -> classes.add(trend.keyOf(day)));
    for (Severity severity : Severity.values()) {
      int count = row.findings().get(severity.ordinal());
      if (count > 0) {
        if (counts.isEmpty()) {
          classes.add("w-" + severity);
        }
        counts.add(count + " " + severity);
      }
    }
    return new FileRow(
        row.name(),
        row.page(),
        row.verdict().name(),
        style(row.verdict().name()),
        counts.isEmpty() ? "no findings" : String.join(", ", counts),
        row.day().map(LocalDate::toString).orElse(""),
        row.station().isPresent() ? stations.get(row.station().getAsInt()) : "",
        String.join(" ", classes));
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
    return Counted.of(count, "file");
  }

  private static String number(int count) {
    return String.format(Locale.ROOT, "%,d", count);
  }

  private static String style(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
