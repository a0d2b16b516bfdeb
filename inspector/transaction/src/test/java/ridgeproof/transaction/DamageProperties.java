package ridgeproof.transaction;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.ByteRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class DamageProperties {

  private static final byte[] SOUND =
      TransactionSamples.write(
          List.of(
              TransactionSamples.header(),
              TransactionSamples.particulars(),
              TransactionSamples.fingerprint(1, 1),
              TransactionSamples.binaryFingerprint(2, 2),
              TransactionSamples.binaryFingerprint(3, 3)));

  @Property(tries = 2000)
  void anyBytesAreReadWithoutAnException(@ForAll @Size(max = 200) byte[] bytes) {
    Accounting.everyByteIsAccountedFor(TransactionSamples.read(bytes));
  }

  @Property(tries = 2000)
  void anyBytesAfterAnOpeningTagAreReadAndAccountedFor(@ForAll @Size(max = 200) byte[] bytes) {
    byte[] opening = TransactionSamples.ascii("1.001:");
    byte[] whole = Arrays.copyOf(opening, opening.length + bytes.length);
    System.arraycopy(bytes, 0, whole, opening.length, bytes.length);
    Accounting.everyByteIsAccountedFor(TransactionSamples.read(whole));
  }

  @Property(tries = 5000)
  void severalChangedBytesAreReadAndAccountedFor(
      @ForAll @Size(min = 1, max = 6) int[] places,
      @ForAll @ByteRange(min = Byte.MIN_VALUE) byte value) {
    byte[] damaged = SOUND.clone();
    for (int place : places) {
      damaged[Math.floorMod(place, damaged.length)] = value;
    }
    Accounting.everyByteIsAccountedFor(TransactionSamples.read(damaged));
  }

  @Property(tries = 2000)
  void aRunTakenOutIsReadAndAccountedFor(
      @ForAll @IntRange(min = 0, max = 500) int from,
      @ForAll @IntRange(min = 1, max = 100) int count) {
    int start = Math.min(from, SOUND.length);
    int end = Math.min(SOUND.length, start + count);
    byte[] damaged = Arrays.copyOf(SOUND, SOUND.length - (end - start));
    System.arraycopy(SOUND, end, damaged, start, SOUND.length - end);
    Accounting.everyByteIsAccountedFor(TransactionSamples.read(damaged));
  }
}
