package ridgeproof.ledger.bookkeeping;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.finding.Finding;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.EntryFinding;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.Station;
import ridgeproof.ledger.response.Responses;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.consistency.CaptureOrigin;
import ridgeproof.spec.layout.Calendar;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;

/** Makes entries of reports, and leaves out everything that tells of a person. */
public final class Bookkeeper {

  private static final String TYPES = "transaction-types";
  private static final int CONTROL = 9;
  private static final int DATE = 5;
  private static final int MAX_FINDINGS = 200;
  private static final int TABLES_DIGITS = 12;
  private static final LocalDate EARLIEST = LocalDate.of(1990, 1, 1);

  private final KeyedHash hash;
  private final SpecTables tables;
  private final String program;
  private final boolean clearControl;
  private final List<FieldNumber> operatorFields;
  private final String tablesVersion;

  /**
   * @param program version of Ridgeproof
   * @param clearControl whether control numbers are kept in clear beside their hash
   * @param operatorFields that tell who captured; the first that says something decides
   */
  public Bookkeeper(
      KeyedHash hash,
      SpecTables tables,
      String program,
      boolean clearControl,
      List<FieldNumber> operatorFields) {
    this.hash = hash;
    this.tables = tables;
    this.program = program;
    this.clearControl = clearControl;
    this.operatorFields = List.copyOf(operatorFields);
    this.tablesVersion = SpecTables.version().substring(0, TABLES_DIGITS);
  }

  /**
   * The entry of one examination.
   *
   * @param fileHash SHA-256 of the file, hexadecimal
   */
  public Entry entry(String fileHash, FindingsReport report, Instant examined) {
    Transaction transaction = report.transaction();
    Optional<String> control = transaction.header().flatMap(header -> header.text(CONTROL));
    return new Entry(
        ThreadLocalRandom.current().nextLong(1, Long.MAX_VALUE),
        Instant.ofEpochMilli(examined.toEpochMilli()),
        day(transaction, examined),
        fileHash,
        control.map(hash::control),
        clearControl ? control.map(Bookkeeper::printable) : Optional.empty(),
        type(transaction),
        station(transaction),
        operator(transaction),
        report.verdict(),
        report.depth(),
        program,
        tablesVersion,
        findings(report),
        report.images().stream()
            .filter(image -> image.layout().frictionRidge())
            .map(image -> Prints.of(image, hash))
            .toList(),
        new Responses(tables, hash).of(transaction));
  }

  /** A type that no list has could be anything. */
  private String type(Transaction transaction) {
    return transaction
        .typeOfTransaction()
        .flatMap(type -> tables.codes(TYPES).find(type))
        .map(Code::code)
        .orElse("");
  }

  private static String printable(String text) {
    return text.replaceAll("\\p{Cntrl}", " ").strip();
  }

  /** A station with a wrong clock must not put its files into another century. */
  private static LocalDate day(Transaction transaction, Instant examined) {
    LocalDate today = examined.atZone(ZoneOffset.UTC).toLocalDate();
    return transaction
        .header()
        .flatMap(header -> header.text(DATE))
        .flatMap(Calendar::date)
        .filter(day -> !day.isBefore(EARLIEST) && !day.isAfter(today.plusDays(1)))
        .orElse(today);
  }

  private Station station(Transaction transaction) {
    for (CaptureOrigin origin : tables.captureOrigins()) {
      if (origin.kind() == CaptureOrigin.Kind.STATION) {
        Optional<Station> stated =
            said(transaction, origin.field())
                .map(field -> new Station(item(field, 1), item(field, 2), item(field, 3)))
                .filter(station -> !station.isUnknown());
        if (stated.isPresent()) {
          return stated.get();
        }
      }
    }
    return new Station("", "", "");
  }

  private Optional<String> operator(Transaction transaction) {
    return operatorFields.stream()
        .flatMap(number -> said(transaction, number).stream())
        .map(field -> field.text().strip())
        .filter(text -> !text.isEmpty())
        .findFirst()
        .map(hash::operator);
  }

  private static Optional<Field> said(Transaction transaction, FieldNumber number) {
    return transaction.recordsOfType(number.recordType()).stream()
        .map((LogicalRecord record) -> record.field(number))
        .flatMap(Optional::stream)
        .filter(field -> !field.isData())
        .findFirst();
  }

  private static String item(Field field, int item) {
    return field.subfields().get(0).text(item);
  }

  /** Each place by itself, consequences left out. */
  private static List<EntryFinding> findings(FindingsReport report) {
    return report.unexplained().stream()
        .flatMap(finding -> Stream.concat(Stream.of(finding), finding.repeats().stream()))
        .limit(MAX_FINDINGS)
        .map(Bookkeeper::finding)
        .toList();
  }

  private static EntryFinding finding(Finding finding) {
    return new EntryFinding(
        finding.ruleId(),
        finding.severity(),
        Prints.known(finding.location().position()),
        finding.location().field().map(FieldNumber::toString).orElse(""));
  }
}
