package ridgeproof.examination.cause.transport;

import java.util.Locale;
import java.util.Optional;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;

/** Zeros, blanks, line ends or end-of-file characters behind the transaction. */
final class Padding {

  private static final int END_OF_FILE = 0x1A;

  /** An image may end in a few zeros, so that fewer are no padding where a length is wrong. */
  private static final int CERTAIN_ZEROS = 16;

  private Padding() {}

  static Optional<TransportDamage> of(Suspect suspect) {
    ByteSource source = suspect.source();
    if (suspect.reading().isWhole() || !suspect.reading().hasRecords()) {
      return Optional.empty();
    }
    return blanks(source)
        .flatMap(end -> of(suspect, end, " of spaces, line ends, or end-of-file characters"))
        .or(() -> zeros(suspect).flatMap(end -> of(suspect, end, " of zeros")));
  }

  private static Optional<TransportDamage> of(Suspect suspect, int end, String kind) {
    ByteSource source = suspect.source();
    Reading undone = suspect.read(source.slice(0, end));
    int more = source.length() - end;
    return suspect.isMendedBy(undone)
        ? Optional.of(
            new TransportDamage(
                "RP-STR-041",
                Location.file().at(new ByteRange(source.origin() + end, more)),
                Observed.of(
                    String.format(
                        Locale.ROOT, "%,d %s%s", more, more == 1 ? "byte" : "bytes", kind)),
                "the file ends with the last record",
                Optional.of(undone),
                true,
                TransportDamage.Reach.NO_IMAGE,
                Optional.empty()))
        : Optional.empty();
  }

  private static Optional<Integer> blanks(ByteSource source) {
    int end = source.length();
    while (end > 0 && isBlank(source.byteAt(end - 1))) {
      end--;
    }
    return end < source.length() ? Optional.of(end) : Optional.empty();
  }

  /** Where the zeros begin; behind the last record, where an image may end in zeros itself. */
  private static Optional<Integer> zeros(Suspect suspect) {
    ByteSource source = suspect.source();
    int end = source.length();
    while (end > 0 && source.byteAt(end - 1) == 0) {
      end--;
    }
    int zerosFrom = end;
    Optional<Integer> behind =
        suspect.reading().findings().stream()
            .filter(finding -> finding.ruleId().equals("RP-STR-013"))
            .flatMap(finding -> finding.location().bytes().stream())
            .map(range -> range.offset() - source.origin())
            .filter(start -> start >= zerosFrom)
            .findFirst();
    return behind.isPresent() || source.length() - end < CERTAIN_ZEROS
        ? behind
        : Optional.of(zerosFrom);
  }

  private static boolean isBlank(int value) {
    return value == ' ' || value == '\t' || value == '\r' || value == '\n' || value == END_OF_FILE;
  }
}
