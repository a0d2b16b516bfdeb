package ridgeproof.examination.cause.transport;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.xml.XmlTables;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.LogicalRecord;

/** Two whole transactions, one behind the other, in one file. */
final class SecondTransaction {

  private static final int CONTENTS = 3;
  private static final int MAX_DECLARATION = 256;
  private static final int MAX_ENVELOPE = 64 * 1024;
  private static final String PACKAGE_END =
      XmlTables.PACKAGE.substring(XmlTables.PACKAGE.indexOf(':') + 1) + ">";
  private static final Pattern DECLARATION = Pattern.compile("<\\?xml\\s[^<>]*>\\s*$");

  private SecondTransaction() {}

  static Optional<TransportDamage> of(Suspect suspect) {
    List<LogicalRecord> headers = suspect.reading().transaction().recordsOfType(1);
    if (headers.size() < 2) {
      return Optional.empty();
    }
    ByteSource source = suspect.source();
    LogicalRecord second = headers.get(1);
    int start = start(suspect, second) - source.origin();
    Reading first = suspect.read(without(source, start));
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
            Location.file().at(new ByteRange(source.origin() + start, source.length() - start)),
            Observed.of(
                headers.size()
                    + " Type-1 records; the second transaction begins at byte "
                    + (source.origin() + start)),
            "one transaction per file",
            Optional.of(first),
            true,
            TransportDamage.Reach.only(behind),
            Optional.empty()));
  }

  /** The file as far as the second transaction, and the end of an envelope of XML around both. */
  private static ByteSource without(ByteSource source, int start) {
    int from = Math.max(start, source.length() - MAX_ENVELOPE);
    String tail = source.latin1(from, source.length() - from);
    int end = tail.lastIndexOf(PACKAGE_END);
    String envelope = end < 0 ? "" : tail.substring(end + PACKAGE_END.length());
    if (envelope.isBlank()) {
      return source.slice(0, start);
    }
    ByteArrayOutputStream kept = new ByteArrayOutputStream(start + envelope.length());
    kept.writeBytes(source.slice(0, start).toArray());
    kept.writeBytes(envelope.getBytes(StandardCharsets.ISO_8859_1));
    return ByteSource.of(kept.toByteArray(), source.origin());
  }

  /** In XML a transaction begins with the element around its records, and with a declaration. */
  private static int start(Suspect suspect, LogicalRecord second) {
    int record = second.range().offset();
    int origin = suspect.source().origin();
    int start =
        suspect.reading().findings().stream()
            .filter(finding -> finding.ruleId().equals("RP-XML-015"))
            .flatMap(finding -> finding.location().bytes().stream())
            .mapToInt(ByteRange::offset)
            .filter(offset -> offset < record)
            .max()
            .orElse(record);
    int from = Math.max(0, start - origin - MAX_DECLARATION);
    String before = suspect.source().latin1(from, start - origin - from);
    Matcher declaration = DECLARATION.matcher(before);
    return declaration.find() ? origin + from + declaration.start() : start;
  }
}
