package ridgeproof.examination.cause.transport;

import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToLongFunction;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.finding.Finding;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * Line ends were translated, as by a transfer or an archive in text mode. In images the bytes of
 * line ends are data: translating them shifts or breaks all that follows.
 */
final class LineEnds {

  private static final String RULE = "RP-STR-030";
  private static final String REQUIRED = "every byte as the station wrote it";
  private static final int CR = '\r';
  private static final int LF = '\n';

  /** By chance a file with as many expected pairs has none once in a hundred thousand. */
  private static final double CERTAIN_PAIRS = 12;

  /** The same once in a thousand, which is enough where several records lack a byte or two. */
  private static final double LIKELY_PAIRS = 7;

  /** A byte that is this frequent does not miss by chance where others of its kind are there. */
  private static final int FREQUENT = 40;

  /** How much commoner the byte is that another one was translated to. */
  private static final double DOUBLED = 1.3;

  private LineEnds() {}

  static Optional<TransportDamage> of(Suspect suspect) {
    if (!suspect.reading().hasRecords()) {
      return Optional.empty();
    }
    Census census = Census.of(suspect.source());
    if (!suspect.reading().isWhole()) {
      Optional<TransportDamage> found =
          lengthened(suspect, census).or(() -> shortened(suspect, census));
      if (found.isPresent()) {
        return found;
      }
    }
    return replaced(suspect, census);
  }

  private static Optional<TransportDamage> lengthened(Suspect suspect, Census census) {
    if (census.pairs() == 0) {
      return Optional.empty();
    }
    Optional<TransportDamage> found = Optional.empty();
    if (census.loneLineFeeds() == 0) {
      found = lengthened(suspect, census, LF, "line feed (0x0A)");
    }
    return found.isEmpty() && census.loneReturns() == 0
        ? lengthened(suspect, census, CR, "carriage return (0x0D)")
        : found;
  }

  private static Optional<TransportDamage> lengthened(
      Suspect suspect, Census census, int original, String name) {
    String observed = count(census.pairs(), "CR LF (0x0D 0x0A)") + " and no lone " + name;
    Reading undone = suspect.read(single(suspect.source(), original));
    if (suspect.isMendedBy(undone)) {
      return Optional.of(TransportDamage.undone(RULE, observed, REQUIRED, undone, true));
    }
    return filled(suspect, undone, record -> ends(record, original))
        .map(reading -> TransportDamage.undone(RULE, observed, REQUIRED, reading, false));
  }

  /** Pairs became one byte: no pair is left, and images lack what pairs would have had. */
  private static Optional<TransportDamage> shortened(Suspect suspect, Census census) {
    if (census.pairs() > 0) {
      return Optional.empty();
    }
    int kept = census.returns() == 0 || census.lineFeeds() > 0 ? LF : CR;
    Shortage shortage = Shortage.of(suspect.reading().transaction(), record -> ends(record, kept));
    boolean oneKind =
        census.lineFeeds() == 0 && census.returns() >= FREQUENT
            || census.returns() == 0 && census.lineFeeds() >= FREQUENT;
    boolean many = shortage.records() > 1 && !shortage.isUniform();
    if (!shortage.isExplicable() && (oneKind || census.pairsByChance() >= LIKELY_PAIRS)) {
      return Refilled.of(suspect)
          .filter(refilled -> refilled.records() > 1)
          .map(r -> TransportDamage.undone(RULE, lacking(r.bytes()), REQUIRED, r.reading(), false));
    }
    if (shortage.bytes() == 0 || !oneKind && !many && census.pairsByChance() < CERTAIN_PAIRS) {
      return Optional.empty();
    }
    return filled(suspect, suspect.reading(), record -> ends(record, kept))
        .map(
            reading ->
                TransportDamage.undone(RULE, lacking(shortage.bytes()), REQUIRED, reading, false));
  }

  private static String lacking(long bytes) {
    return "no CR LF (0x0D 0x0A); images lack " + count(bytes, "byte");
  }

  private static Optional<Reading> filled(
      Suspect suspect, Reading reading, ToLongFunction<LogicalRecord> most) {
    return Shortage.of(reading.transaction(), most)
        .filled()
        .map(suspect::read)
        .filter(suspect::isMendedBy);
  }

  /** One kind of line end became the other: lengths still fit, but the images are broken. */
  private static Optional<TransportDamage> replaced(Suspect suspect, Census census) {
    List<ByteSource> images =
        suspect.reading().transaction().records().stream()
            .flatMap(record -> record.data().stream())
            .toList();
    boolean damaged = suspect.imagesDamaged() || !suspect.reading().isWhole();
    if (images.isEmpty() || !damaged && !lacksLineEnds(images)) {
      return Optional.empty();
    }
    if (census.lineFeeds() == 0 && isDoubled(census, CR)) {
      return Optional.of(replaced("no line feed (0x0A) and " + count(census.returns(), "0x0D")));
    }
    if (census.returns() == 0 && isDoubled(census, LF)) {
      return Optional.of(
          replaced("no carriage return (0x0D) and " + count(census.lineFeeds(), "0x0A")));
    }
    return Optional.empty();
  }

  /**
   * Whether compressed images, in which each byte is about as frequent as its neighbors, have none
   * of one line end. Of raw images that would say little: they have gray levels that never occur.
   */
  static boolean lacksLineEnds(List<ByteSource> images) {
    List<ByteSource> compressed =
        images.stream()
            .filter(image -> image.startsWith(0, 0xFF, 0xA0) || image.startsWith(0, 0xFF, 0xD8))
            .toList();
    // Nearly every sound image has both within its first bytes; counting reads all of them.
    if (holds(compressed, LF) && holds(compressed, CR)) {
      return false;
    }
    List<Census> counted = compressed.stream().map(Census::of).toList();
    return Math.min(sum(counted, 0x0B), sum(counted, 0x0E)) >= FREQUENT;
  }

  private static boolean holds(List<ByteSource> images, int value) {
    return images.stream().anyMatch(image -> image.indexOf(value, 0) >= 0);
  }

  private static long sum(List<Census> images, int value) {
    return images.stream().mapToLong(image -> image.count(value)).sum();
  }

  private static TransportDamage replaced(String observed) {
    return TransportDamage.lasting(
        RULE, observed, REQUIRED, Consequences.where(LineEnds::showsBrokenImages));
  }

  private static boolean showsBrokenImages(Finding finding) {
    return Reading.isBroken(finding) || Transport.looksAtPixels(finding);
  }

  /** Whether the byte is as common as two of its neighbours, none of which is a line end. */
  private static boolean isDoubled(Census census, int value) {
    double usual = (census.count(0x0B) + census.count(0x0C) + census.count(0x0E)) / 3.0;
    return usual >= FREQUENT && census.count(value) > usual * DOUBLED;
  }

  private static long ends(LogicalRecord record, int value) {
    return Census.of(record).count(value);
  }

  private static ByteSource single(ByteSource source, int original) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(source.length());
    for (int i = 0; i < source.length(); i++) {
      int value = source.byteAt(i);
      if (value == CR && source.has(i + 1, 1) && source.byteAt(i + 1) == LF) {
        out.write(original);
        i++;
      } else {
        out.write(value);
      }
    }
    return ByteSource.of(out.toByteArray());
  }

  private static String count(long number, String what) {
    String plural = number == 1 || what.startsWith("0x") || what.startsWith("CR") ? "" : "s";
    return String.format(Locale.ROOT, "%,d %s%s", number, what, plural);
  }
}
