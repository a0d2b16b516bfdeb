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
  private static final String MINUTIAE_COUNTED = "RP-TXN-027";
  private static final int DESCRIPTIVE = 2;

  private CutOff() {}

  static Optional<TransportDamage> of(Suspect suspect) {
    Transaction transaction = suspect.reading().transaction();
    Optional<Finding> end =
        suspect.reading().findings().stream()
            .filter(finding -> finding.ruleId().equals(ENDS_WITHIN))
            .findFirst();
    if (end.isEmpty() || transaction.records().isEmpty()) {
      return Optional.empty();
    }
    List<LogicalRecord> records = transaction.records();
    LogicalRecord last = records.get(records.size() - 1);
    Announced announced = Announced.of(transaction);
    String observed =
        String.format(
            Locale.ROOT,
            "%,d bytes; %d %s complete%s",
            suspect.source().length(),
            records.size() - 1,
            records.size() == 2 ? "record is" : "records are",
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
            TransportDamage.Reach.only(Set.of(last.ordinal())),
            Optional.of(consequences(last, announced))));
  }

  /** What is in the last record, and what records that were cut away would have held. */
  private static Consequences consequences(LogicalRecord last, Announced announced) {
    Consequences ofLast =
        Consequences.where(finding -> Transport.looksAtPixels(finding) || isOfTheEnd(finding, last))
            .inRecords(Set.of(last.ordinal()));
    Consequences ofList =
        announced.unread().isEmpty()
            ? Consequences.none()
            : Consequences.ofRules("RP-STR-014", "RP-TXN-001", "RP-TXN-002", "RP-TXN-015");
    Consequences ofPrints =
        announced.images() ? Consequences.where(Transport::missesPrints) : Consequences.none();
    Consequences ofText =
        announced.unread().contains(DESCRIPTIVE)
            ? Consequences.ofRules("RP-PTL-001", "RP-PTL-002", "RP-PTL-003")
            : Consequences.none();
    return ofLast.or(ofList).or(ofPrints).or(ofText);
  }

  /** Whether it speaks of the record as a whole, of its last field, or of one that is not there. */
  private static boolean isOfTheEnd(Finding finding, LogicalRecord last) {
    int fields = last.fields().size();
    return finding
            .location()
            .field()
            .flatMap(last::field)
            .map(field -> field.equals(last.fields().get(fields - 1)))
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

    static Announced of(Transaction transaction) {
      List<LogicalRecord> records = transaction.records();
      Optional<Field> contents = records.get(0).field(3);
      List<Integer> types =
          contents.stream()
              .flatMap(field -> entries(field))
              .flatMap(entry -> WholeNumber.parse(entry.text(1)).stream().boxed())
              .toList();
      OptionalInt total = types.isEmpty() ? OptionalInt.empty() : OptionalInt.of(types.size());
      return new Announced(total, types.stream().skip(Math.max(0, records.size() - 2L)).toList());
    }

    private static Stream<Subfield> entries(Field contents) {
      return contents.subfields().stream().skip(1);
    }

    /** Whether images were among what was cut away. */
    boolean images() {
      return unread.stream().anyMatch(type -> type > DESCRIPTIVE);
    }
  }
}
