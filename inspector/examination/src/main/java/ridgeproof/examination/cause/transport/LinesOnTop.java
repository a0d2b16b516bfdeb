package ridgeproof.examination.cause.transport;

import java.util.Optional;
import java.util.regex.Pattern;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.finding.Quantity;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;

/** Text before the transaction: the header of a mail or of a transfer, a byte order mark. */
final class LinesOnTop {

  private static final Pattern HEADER = Pattern.compile("(From |HTTP/|[A-Za-z][A-Za-z0-9-]*: ).*");

  private LinesOnTop() {}

  static Optional<TransportDamage> of(Suspect suspect) {
    ByteSource source = suspect.source();
    Optional<ByteRange> before =
        suspect.reading().findings().stream()
            .filter(finding -> finding.ruleId().equals("RP-STR-003"))
            .findFirst()
            .map(Finding::location)
            .flatMap(Location::bytes);
    if (before.isEmpty() || before.get().offset() != source.origin()) {
      return Optional.empty();
    }
    int bytes = before.get().length();
    return kind(source.slice(0, bytes))
        .map(
            kind ->
                new TransportDamage(
                    "RP-STR-038",
                    Location.file().at(before.get()),
                    Observed.of(Quantity.of(bytes, "byte") + ": " + kind),
                    Wrapping.REQUIRED,
                    Optional.of(suspect.read(source.from(bytes))),
                    true,
                    TransportDamage.Reach.NO_IMAGE,
                    Optional.empty()));
  }

  /** What the bytes are; empty for what is no text. */
  private static Optional<String> kind(ByteSource top) {
    if (top.startsWith(0, 0xEF, 0xBB, 0xBF) && top.length() == 3) {
      return Optional.of("a byte-order mark");
    }
    for (int i = 0; i < top.length(); i++) {
      int value = top.byteAt(i);
      if (value < ' ' && value != '\t' && value != '\r' && value != '\n' || value > '~') {
        return Optional.empty();
      }
    }
    String text = top.latin1(0, top.length());
    if (text.isBlank()) {
      return Optional.of("blank lines");
    }
    String first = text.strip().lines().findFirst().orElse("");
    return Optional.of(
        HEADER.matcher(first).matches() ? "a mail or transfer header" : "lines of text");
  }
}
