package ridgeproof.archive.examining;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import ridgeproof.archive.examining.FileResult.InputFacts;
import ridgeproof.archive.store.ArchiveTable;
import ridgeproof.examination.FindingsReport;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.EntryPrint;
import ridgeproof.ledger.PlatenNote;
import ridgeproof.ledger.PrintMeasure;
import ridgeproof.ledger.bookkeeping.Bookkeeper;
import ridgeproof.spec.rule.Severity;

/**
 * Makes rows of a report, of what the ledger keeps of it and of the places of its findings alone,
 * so that nothing in them tells of a person.
 */
final class ReportRows {

  /** In the order of the columns. */
  private static final List<PrintMeasure> MEASURES =
      List.of(
          PrintMeasure.GROUND,
          PrintMeasure.CONTRAST,
          PrintMeasure.RIDGE_PERIOD,
          PrintMeasure.WIDTH,
          PrintMeasure.UNEVENNESS,
          PrintMeasure.GHOST,
          PrintMeasure.COMPRESSION);

  private final Bookkeeper bookkeeper;
  private final Instant examined;

  /**
   * @param examined the same for all rows of a batch, so that a task that is run twice writes the
   *     same
   */
  ReportRows(Bookkeeper bookkeeper, Instant examined) {
    this.bookkeeper = bookkeeper;
    this.examined = examined;
  }

  FileResult of(InputFacts input, FindingsReport report) {
    Entry entry = bookkeeper.entry(input.fileHash(), report, examined);
    LocalDate day = entry.day();
    return FileResult.examined(
        file(input, report, entry, day), findings(input, report, day), fingers(input, entry, day));
  }

  private Row file(InputFacts input, FindingsReport report, Entry entry, LocalDate day) {
    return RowFactory.create(
        input.hash(),
        input.fileHash(),
        input.bytes(),
        input.modified(),
        false,
        entry.verdict().name(),
        count(report, Severity.BLOCKING),
        count(report, Severity.LIKELY),
        count(report, Severity.ADVICE),
        count(report, Severity.NOTE),
        report.transaction().records().size(),
        report.images().size(),
        entry.type().isEmpty() ? null : entry.type(),
        report.transaction().isXml(),
        report.transaction().header().isPresent() ? report.transaction().version() : null,
        entry.control().orElse(null),
        entry.operator().orElse(null),
        entry.station().make(),
        entry.station().model(),
        entry.station().serial(),
        entry.depth().name().toLowerCase(Locale.ROOT),
        report.profile().map(profile -> profile.name()).orElse(null),
        entry.program(),
        entry.tables(),
        examined,
        day);
  }

  private static int count(FindingsReport report, Severity severity) {
    return report.findings().stream()
        .filter(finding -> finding.severity() == severity)
        .mapToInt(Finding::count)
        .sum();
  }

  private static List<Row> findings(InputFacts input, FindingsReport report, LocalDate day) {
    List<Row> rows = new ArrayList<>();
    for (Finding finding : report.findings()) {
      Location place = finding.location();
      rows.add(
          RowFactory.create(
              input.fileHash(),
              rows.size() + 1,
              finding.ruleId(),
              finding.severity().name(),
              boxed(place.record()),
              boxed(place.recordType()),
              place.field().map(Object::toString).orElse(null),
              boxed(place.subfield()),
              boxed(place.item()),
              known(place.position()),
              place.bytes().map(range -> (long) range.offset()).orElse(null),
              place.bytes().map(range -> (long) range.length()).orElse(null),
              finding.count(),
              positions(finding),
              boxed(finding.explains()),
              day));
    }
    return rows;
  }

  /** Of every place of a repeated finding. */
  private static Integer[] positions(Finding finding) {
    return Stream.concat(Stream.of(finding), finding.repeats().stream())
        .map(place -> known(place.location().position()))
        .filter(Objects::nonNull)
        .distinct()
        .sorted()
        .toArray(Integer[]::new);
  }

  private static List<Row> fingers(InputFacts input, Entry entry, LocalDate day) {
    List<Row> rows = new ArrayList<>();
    for (EntryPrint print : entry.prints()) {
      Map<Integer, Integer> scores = new TreeMap<>(print.scores());
      if (scores.isEmpty()) {
        rows.add(finger(input, print, null, null, day));
      }
      scores.forEach((finger, score) -> rows.add(finger(input, print, finger, score, day)));
    }
    return rows;
  }

  private static Row finger(
      InputFacts input, EntryPrint print, Integer finger, Integer score, LocalDate day) {
    List<Object> values = new ArrayList<>();
    values.add(input.fileHash());
    values.add(print.record());
    values.add(print.position());
    values.add(finger);
    values.add(print.rolled());
    values.add(score);
    values.add(print.image().isEmpty() ? null : print.image());
    values.add(print.encoder());
    MEASURES.forEach(measure -> values.add(print.measures().get(measure)));
    values.add(print.platen().map(PlatenNote::text).orElse(null));
    values.add(day);
    return RowFactory.create(values.toArray());
  }

  private static Integer boxed(OptionalInt value) {
    return value.isPresent() ? value.getAsInt() : null;
  }

  private static Integer known(OptionalInt position) {
    return position.isPresent()
            && position.getAsInt() >= 0
            && position.getAsInt() <= ArchiveTable.MAX_POSITION
        ? position.getAsInt()
        : null;
  }
}
