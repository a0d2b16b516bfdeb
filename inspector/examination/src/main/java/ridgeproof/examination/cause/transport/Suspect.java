package ridgeproof.examination.cause.transport;

import java.util.List;
import java.util.function.Function;
import ridgeproof.spec.FileSignature;
import ridgeproof.transaction.record.ByteSource;

/**
 * A file that may have been damaged.
 *
 * @param reading what a reader makes of it as it is
 * @param imagesDamaged whether bytes of an image break its own format
 * @param reader reads other bytes the same way
 * @param signatures how other kinds of files begin
 */
record Suspect(
    Reading reading,
    boolean imagesDamaged,
    Function<ByteSource, Reading> reader,
    List<FileSignature> signatures) {

  ByteSource source() {
    return reading.transaction().source();
  }

  Reading read(ByteSource other) {
    return reader.apply(other);
  }

  boolean hasSymptoms() {
    if (reading.transaction().isXml()) {
      return !reading.isWhole();
    }
    List<ByteSource> images =
        reading.transaction().records().stream().flatMap(record -> record.data().stream()).toList();
    return !reading.isWhole()
        || imagesDamaged
        || !images.isEmpty() && EighthBit.isSevenBit(source())
        || LineEnds.lacksLineEnds(images);
  }

  /** Whether undoing the damage leaves a whole file, which this one is not. */
  boolean isMendedBy(Reading other) {
    return !reading.isWhole() && other.isWhole();
  }

  /** The file once one damage is undone. */
  Suspect after(Reading undone) {
    return new Suspect(undone, false, reader, signatures);
  }
}
