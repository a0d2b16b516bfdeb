package ridgeproof.examination.cause.transport;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.record.WholeNumber;

/** The end of the file is missing: a copy or transfer that was interrupted. */
final class CutOff {

  private static final String ENDS_WITHIN = "RP-STR-012";
  private static final String BREAKS = "RP-XML-001";
  private static final String MINUTIAE_COUNTED = "RP-TXN-027";
  private static final int DESCRIPTIVE = 2;

  private CutOff() {}

  static Optional<TransportDamage> of(Suspect suspect) {
    Transaction transaction = suspect.reading().transaction();
    Optional<Finding> end =
        suspect.reading().findings().stream()
            .filter(finding -> endsWithin(finding, suspect))
            .findFirst();
    if (end.isEmpty() || transaction.records().isEmpty()) {
      return Optional.empty();
    }
    List<LogicalRecord> records = transaction.records();
    LogicalRecord last = records.get(records.size() - 1);
    // XML may also end between two records.
    boolean complete = last.range().end() < suspect.source().range().end();
    int whole = complete ? records.size() : records.size() - 1;
    Announced announced = Announced.of(transaction, whole);
    String observed =
        String.format(
            Locale.ROOT,
            "%,d bytes; %d %s complete%s",
            suspect.source().length(),
            whole,
            whole == 1 ? "record is" : "records are",
            announced.total().isPresent()
                ? " of " + (announced.total().getAsInt() + 1) + " listed"
                : "");
    return Optional.of(
        new TransportDamage(
            "RP-STR-039",
            end.get().location().bytes().map(Location.file()::at).orElse(Location.file()),
            Observed.of(observed),
            "the complete file",
            Optional.empty(),
            false,
            TransportDamage.Reach.only(complete ? Set.of() : Set.of(last.ordinal())),
            Optional.of(
                consequences(announced)
                    .or(complete ? Consequences.none() : ofLast(last))
                    .or(Consequences.where(finding -> endsWithin(finding, suspect))))));
  }

  /** Whether it says that the file ends within a record, or within an element of XML. */
  private static boolean endsWithin(Finding finding, Suspect suspect) {
    return finding.ruleId().equals(ENDS_WITHIN)
        || finding.ruleId().equals(BREAKS)
            && finding
                .location()
                .bytes()
                .map(bytes -> bytes.offset() >= suspect.source().range().end())
                .orElse(false);
  }

  /** What is in a last record that is not complete. */
  private static Consequences ofLast(LogicalRecord last) {
    return Consequences.where(
            finding -> Transport.looksAtPixels(finding) || isOfTheEnd(finding, last))
        .inRecords(Set.of(last.ordinal()));
  }

  /** What records that were cut away would have held. */
  private static Consequences consequences(Announced announced) {
    Consequences ofList =
        announced.unread().isEmpty()
            ? Consequences.none()
            : Consequences.ofRules("RP-STR-014", "RP-TXN-001", "RP-TXN-002", "RP-TXN-015");
    Consequences ofPrints =
        announced.images() ? Consequences.where(Transport::missesPrints) : Consequences.none();
    Consequences ofText =
        announced.text()
            ? Consequences.ofRules("RP-PTL-001", "RP-PTL-002", "RP-PTL-003")
            : Consequences.none();
    return ofList.or(ofPrints).or(ofText);
  }

  /** Whether it speaks of the record as a whole, of its last field, or of one that is not there. */
  private static boolean isOfTheEnd(Finding finding, LogicalRecord last) {
    int end = last.fields().stream().mapToInt(field -> field.range().end()).max().orElse(0);
    return finding
            .location()
            .field()
            .flatMap(last::field)
            .map(field -> field.range().end() == end)
            .orElse(true)
        || finding.ruleId().equals(MINUTIAE_COUNTED);
  }

  /**
   * What field 1.003 lists.
   *
   * @param total records after the first
   * @param unread the types of those that were not read, or not to their end
   */
  private record Announced(OptionalInt total, List<Integer> unread) {

    static Announced of(Transaction transaction, int whole) {
      List<LogicalRecord> records = transaction.records();
      Optional<Field> contents = records.get(0).field(3);
      List<Integer> types =
          contents.stream()
              .flatMap(field -> entries(field))
              .flatMap(entry -> WholeNumber.parse(entry.text(1)).stream().boxed())
              .toList();
      OptionalInt total = types.isEmpty() ? OptionalInt.empty() : OptionalInt.of(types.size());
      return new Announced(total, types.stream().skip(Math.max(0, whole - 1L)).toList());
    }

    private static Stream<Subfield> entries(Field contents) {
      return contents.subfields().stream().skip(1);
    }

    /** Whether biographic data was among what was cut away, which a lost list leaves open. */
    boolean text() {
      return total.isEmpty() || unread.contains(DESCRIPTIVE);
    }

    /** Whether images were among what was cut away. */
    boolean images() {
      return total.isEmpty() || unread.stream().anyMatch(type -> type > DESCRIPTIVE);
    }
  }
}
