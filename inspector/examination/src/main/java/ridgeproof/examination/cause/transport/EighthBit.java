package ridgeproof.examination.cause.transport;

import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.finding.Finding;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Field;

/** A channel for 7-bit text took the highest bit of each byte. */
final class EighthBit {

  /** WSQ, JPEG, PNG, JPEG 2000 in a file and bare, each without the highest bits. */
  private static final int[][] BEGINNINGS = {
    {0x7F, 0x20, 0x7F},
    {0x7F, 0x58, 0x7F},
    {0x09, 'P', 'N', 'G'},
    {0, 0, 0, 0x0C, 'j', 'P', ' ', ' ', 0x0D, 0x0A, 0x07},
    {0x7F, 0x4F, 0x7F, 0x51}
  };

  /** A record of one finger has 0xFF for the five other positions that it could name. */
  private static final int UNUSED_POSITIONS = 5;

  private static final int ENOUGH_PIXELS = 10_000;
  private static final int FAR_APART = 96;

  /**
   * In a dark picture that was not folded hardly one pixel in ten thousand is so far from the next.
   */
  private static final double FOLDED_SHARE = 0.005;

  private static final int FIRST_BINARY = 3;
  private static final int LAST_BINARY = 7;
  private static final Set<Integer> BINARY = Set.of(3, 4, 5, 6, 7, 8);

  private EighthBit() {}

  static Optional<TransportDamage> of(Suspect suspect) {
    Reading reading = suspect.reading();
    if (!isSevenBit(suspect.source()) || !hasStrippedImage(reading)) {
      return Optional.empty();
    }
    boolean allRead = reading.isWhole();
    return Optional.of(
        TransportDamage.lasting(
            "RP-STR-032",
            "no byte above 0x7F, not even in images",
            "every byte as the station wrote it",
            Consequences.where(finding -> follows(finding, allRead))));
  }

  /** Whether no byte has its highest bit; in a file with images the answer comes soon. */
  static boolean isSevenBit(ByteSource source) {
    for (int i = 0; i < source.length(); i++) {
      if (source.byteAt(i) > 0x7F) {
        return false;
      }
    }
    return true;
  }

  private static boolean follows(Finding finding, boolean allRead) {
    return !allRead && Transport.missesRecords(finding)
        || Transport.looksAtPixels(finding)
        || BINARY.contains(finding.location().recordType().orElse(0));
  }

  /** Whether an image begins or looks as one without its bits, or unused positions do. */
  private static boolean hasStrippedImage(Reading reading) {
    Transaction transaction = reading.transaction();
    boolean strippedPositions =
        !reading.isWhole()
            && transaction
                .header()
                .flatMap(header -> header.field(3))
                .map(EighthBit::announcesBinary)
                .orElse(false)
            && hasStrippedPositions(transaction.source());
    return strippedPositions
        || transaction.records().stream()
            .flatMap(record -> record.data().stream())
            .anyMatch(image -> isStripped(image) || isFolded(image));
  }

  private static boolean hasStrippedPositions(ByteSource source) {
    int run = 0;
    for (int i = 0; i < source.length() && run < UNUSED_POSITIONS; i++) {
      run = source.byteAt(i) == 0x7F ? run + 1 : 0;
    }
    return run == UNUSED_POSITIONS;
  }

  /** Records of these types have 0xFF for each finger position that they do not use. */
  private static boolean announcesBinary(Field contents) {
    return contents.subfields().stream()
        .skip(1)
        .map(entry -> entry.text(1))
        .anyMatch(type -> type.length() == 1 && isBinary(type.charAt(0) - '0'));
  }

  private static boolean isBinary(int type) {
    return type >= FIRST_BINARY && type < LAST_BINARY;
  }

  /**
   * Whether gray levels run up to 127 and go on at 0, as uncompressed ones do without their highest
   * bit: neighbours are then far apart wherever the gray crosses the middle.
   */
  private static boolean isFolded(ByteSource image) {
    int jumps = 0;
    int highest = 0;
    for (int i = 1; i < image.length(); i++) {
      jumps += Math.abs(image.byteAt(i) - image.byteAt(i - 1)) >= FAR_APART ? 1 : 0;
      highest = Math.max(highest, image.byteAt(i));
    }
    return image.length() >= ENOUGH_PIXELS
        && highest == 0x7F
        && jumps > image.length() * FOLDED_SHARE;
  }

  private static boolean isStripped(ByteSource image) {
    for (int[] beginning : BEGINNINGS) {
      if (image.startsWith(0, beginning)) {
        return true;
      }
    }
    return false;
  }
}
