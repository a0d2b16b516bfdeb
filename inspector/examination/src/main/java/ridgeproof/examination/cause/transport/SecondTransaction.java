package ridgeproof.examination.cause.transport;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.LogicalRecord;

/** Two whole transactions, one behind the other, in one file. */
final class SecondTransaction {

  private static final int CONTENTS = 3;

  private SecondTransaction() {}

  static Optional<TransportDamage> of(Suspect suspect) {
    List<LogicalRecord> headers = suspect.reading().transaction().recordsOfType(1);
    if (headers.size() < 2) {
      return Optional.empty();
    }
    ByteSource source = suspect.source();
    LogicalRecord second = headers.get(1);
    int start = second.range().offset() - source.origin();
    Reading first = suspect.read(source.slice(0, start));
    Reading rest = suspect.read(source.from(start));
    boolean whole = rest.transaction().header().flatMap(h -> h.field(CONTENTS)).isPresent();
    if (!whole || first.breaks() >= suspect.reading().breaks()) {
      return Optional.empty();
    }
    Set<Integer> behind =
        suspect.reading().transaction().records().stream()
            .map(LogicalRecord::ordinal)
            .filter(ordinal -> ordinal >= second.ordinal())
            .collect(Collectors.toSet());
    return Optional.of(
        new TransportDamage(
            "RP-STR-040",
            Location.file().at(new ByteRange(second.range().offset(), source.length() - start)),
            Observed.of(
                headers.size()
                    + " Type-1 records; the second begins at byte "
                    + second.range().offset()),
            "one transaction per file",
            Optional.of(first),
            true,
            TransportDamage.Reach.only(behind),
            Optional.empty()));
  }
}
