package ridgeproof.archive.question;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.spark.sql.Row;
import ridgeproof.ledger.health.StationHealth;
import ridgeproof.ledger.report.LedgerPage;
import ridgeproof.ledger.report.LedgerPage.FaultNote;
import ridgeproof.ledger.report.LedgerPage.ShareRow;
import ridgeproof.ledger.report.LedgerReport;
import ridgeproof.ledger.report.Share;
import ridgeproof.ledger.report.WeekPlot;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.page.HtmlHead;
import ridgeproof.report.words.Counted;

/** What the template of the page is filled with; every text is inert already. */
public record ArchivePage(
    HtmlHead head,
    String stamp,
    String lead,
    List<String> notes,
    List<StationPart> stations,
    List<ShareRow> findings,
    String healthLead,
    List<FaultNote> faults,
    List<DevicePlot> devices,
    List<List<String>> filesAgain,
    List<List<String>> imagesAgain) {

  private static final int MAX_PLOTS = 40;
  private static final int HASH_DIGITS = 12;
  private static final double PERCENT = 100;

  /** A station with its share over all months and by month. */
  public record StationPart(ShareRow all, WeekPlot months) {}

  /** Renders the page. */
  public static String render(ArchiveAnswers answers, LedgerReport.Names names) {
    StringOutput text = new StringOutput();
    JtearchiveGenerated.render(new OwaspHtmlTemplateOutput(text), null, of(answers, names));
    return text.toString();
  }

  private static ArchivePage of(ArchiveAnswers answers, LedgerReport.Names names) {
    Map<String, Map<LocalDate, Share>> stations = stations(answers.of(Question.FIRST_TIME_READY));
    Share all =
        sum(stations.values().stream().flatMap(months -> months.values().stream()).toList());
    StationHealth health = answers.health();
    return new ArchivePage(
        HtmlHead.styled("Report on an archive", LedgerPage.style()),
        all.isTelling()
            ? String.format(Locale.ROOT, "%.0f %%", PERCENT * all.value())
            : all.of() + " of " + all.all(),
        all.words() + ".",
        notes(answers, stations.size()),
        stations.entrySet().stream().limit(MAX_PLOTS).map(ArchivePage::station).toList(),
        answers.of(Question.COMMONEST_FINDINGS).stream()
            .map(row -> finding(row, answers.examined(), names))
            .toList(),
        LedgerPage.healthLead(health),
        health.findings().stream().map(finding -> LedgerPage.fault(finding, names)).toList(),
        devices(answers.of(Question.QUALITY_BY_DEVICE)),
        answers.of(Question.FILES_SENT_AGAIN).stream().map(ArchivePage::fileAgain).toList(),
        answers.of(Question.IMAGES_UNDER_SEVERAL_CONTROL_NUMBERS).stream()
            .map(row -> imageAgain(row, names))
            .toList());
  }

  private static List<String> notes(ArchiveAnswers answers, int stations) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "The archive holds "
            + Counted.of(answers.inputs(), "file")
            + ", "
            + Counted.of(answers.examined(), "file")
            + " with different contents; in quarantine: "
            + Counted.of(answers.quarantined(), "file")
            + ".");
    notes.add("A person is a control number. In brackets: 95 % intervals (Wilson).");
    if (stations > MAX_PLOTS) {
      notes.add(
          "Drawn: the first "
              + MAX_PLOTS
              + " of "
              + Counted.of(stations, "station")
              + "; the text form lists all.");
    }
    return notes;
  }

  private static Map<String, Map<LocalDate, Share>> stations(List<Row> rows) {
    Map<String, Map<LocalDate, Share>> stations = new TreeMap<>();
    for (Row row : rows) {
      stations
          .computeIfAbsent(row.getAs("station"), station -> new TreeMap<>())
          .put(row.getAs("month"), new Share(row.getAs("ready"), row.getAs("people")));
    }
    return stations;
  }

  private static Share sum(List<Share> shares) {
    return new Share(
        shares.stream().mapToLong(Share::of).sum(), shares.stream().mapToLong(Share::all).sum());
  }

  private static StationPart station(Map.Entry<String, Map<LocalDate, Share>> station) {
    Map<LocalDate, Share> months = station.getValue();
    String name = TextSanitizer.of(station.getKey());
    return new StationPart(
        ShareRow.of(station.getKey(), sum(List.copyOf(months.values()))),
        WeekPlot.of(
            months,
            "month of ",
            "Share of READY at the first time over "
                + Counted.of(months.size(), "month")
                + ", "
                + name));
  }

  private static ShareRow finding(Row row, long examined, LedgerReport.Names names) {
    return ShareRow.of(
        names.rule(row.getAs("rule")) + " (" + row.getAs("severity") + ")",
        new Share(row.getAs("files"), examined));
  }

  private static List<DevicePlot> devices(List<Row> rows) {
    Map<String, Map<Integer, Long>> devices = new LinkedHashMap<>();
    for (Row row : rows) {
      devices
          .computeIfAbsent(row.getAs("device"), device -> new TreeMap<>())
          .put(row.<Number>getAs("score_from").intValue(), row.getAs("fingers"));
    }
    return devices.entrySet().stream()
        .limit(MAX_PLOTS)
        .map(device -> DevicePlot.of(TextSanitizer.of(device.getKey()), device.getValue()))
        .toList();
  }

  private static List<String> fileAgain(Row row) {
    return List.of(
        row.<String>getAs("file_hash").substring(0, HASH_DIGITS),
        String.valueOf(row.<Long>getAs("files")),
        days(row));
  }

  private static List<String> imageAgain(Row row, LedgerReport.Names names) {
    StringBuilder positions = new StringBuilder();
    for (String code : row.<String>getAs("positions").split(", ")) {
      positions
          .append(positions.isEmpty() ? "" : ", ")
          .append(TextSanitizer.of(names.finger(Integer.parseInt(code))));
    }
    return List.of(
        row.<String>getAs("image_hash").substring(0, HASH_DIGITS),
        positions.toString(),
        String.valueOf(row.<Long>getAs("control_numbers")),
        String.valueOf(row.<Long>getAs("files")),
        days(row));
  }

  private static String days(Row row) {
    LocalDate first = row.getAs("first_day");
    LocalDate last = row.getAs("last_day");
    return first.equals(last) ? first.toString() : first + " to " + last;
  }
}
