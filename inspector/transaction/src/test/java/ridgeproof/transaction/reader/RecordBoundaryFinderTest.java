package ridgeproof.transaction.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ridgeproof.transaction.reader.RawTransaction.FS;
import static ridgeproof.transaction.reader.RawTransaction.GS;
import static ridgeproof.transaction.reader.RawTransaction.HEADER;
import static ridgeproof.transaction.reader.RawTransaction.bytes;
import static ridgeproof.transaction.reader.RawTransaction.compressed;
import static ridgeproof.transaction.reader.RawTransaction.number;
import static ridgeproof.transaction.reader.RawTransaction.print;
import static ridgeproof.transaction.reader.RawTransaction.source;
import static ridgeproof.transaction.reader.RawTransaction.withLength;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.transaction.TransactionSamples;

class RecordBoundaryFinderTest {

  /** In a file whose Type-1 record lists records of these types. */
  private static RecordBoundaryFinder in(String file, int... types) {
    RecordBoundaryFinder finder = new RecordBoundaryFinder(source(file), TransactionSamples.TABLES);
    List<TransactionContent.Entry> entries =
        IntStream.of(types).mapToObj(type -> new TransactionContent.Entry(type, 1)).toList();
    finder.expect(new TransactionContent(OptionalInt.of(types.length), entries), 500);
    return finder;
  }

  private static boolean fits(String file) {
    return in(file, 4).headerFits(0, 4);
  }

  @Test
  void aHeaderFitsUpToTheLengthOfTheFile() {
    assertTrue(fits(withLength(24, compressed(1, "pixels"))));
    assertFalse(fits(withLength(25, compressed(1, "pixels"))));
    assertFalse(in("ab" + withLength(25, compressed(1, "pixels")), 4).headerFits(2, 4));
    assertTrue(in("ab" + withLength(24, compressed(1, "pixels")), 4).headerFits(2, 4));
  }

  @Test
  void aHeaderFitsFromItsOwnLengthOn() {
    assertTrue(fits(withLength(18, compressed(1, "pixels"))));
    assertFalse(fits(withLength(17, compressed(1, "pixels"))));
    assertFalse(fits(withLength(4, compressed(1, "pixels"))));
  }

  @Test
  void aHeaderThatTheFileDoesNotHoldWholeDoesNotFit() {
    assertFalse(fits(number(4, 5)));
    assertFalse(fits(withLength(HEADER - 1, compressed(1, "").substring(0, HEADER - 1))));
    assertTrue(fits(compressed(1, "")));
  }

  @ParameterizedTest
  @CsvSource({"4, 99, 100", "5, 8, 9", "6, 14, 16", "12, 1, 2", "17, 6, 7"})
  void aHeaderFitsOnlyWithValuesThatTheLayoutAllows(int at, int allowed, int other) {
    String print = compressed(1, "pixels");
    assertTrue(fits(print.substring(0, at) + bytes(allowed) + print.substring(at + 1)));
    assertFalse(fits(print.substring(0, at) + bytes(other) + print.substring(at + 1)));
  }

  @Test
  void aHeaderOfNoPixelsDoesNotFit() {
    assertFalse(fits(print(1, 0, 2, "pixels")));
    assertFalse(fits(print(1, 3, 0, "pixels")));
    assertTrue(fits(print(1, 65535, 1, "pixels")));
  }

  @Test
  void aBinaryRecordLeadsToTheNextOneOrToTheEndOfTheFile() {
    String print = compressed(1, "image");
    assertEquals(OptionalInt.of(4), in(print, 4).binaryAt(0));
    assertEquals(OptionalInt.of(4), in("abc" + print, 4).binaryAt(3));
    assertEquals(OptionalInt.of(4), in(print + print, 4).binaryAt(0));
    assertEquals(OptionalInt.of(4), in(print + "14.001:30" + GS, 4, 14).binaryAt(0));
    assertEquals(OptionalInt.empty(), in(print + "?", 4).binaryAt(0));
    assertEquals(OptionalInt.empty(), in(print + print.substring(0, 4), 4).binaryAt(0));
  }

  @Test
  void onlyAListedBinaryTypeIsLookedFor() {
    assertEquals(OptionalInt.empty(), in(compressed(1, "image"), 14).binaryAt(0));
    assertFalse(in(compressed(1, "image"), 14).isBoundary(0));
    assertTrue(in(compressed(1, "image"), 14, 4).isBoundary(0));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1.001:9", "2.001:20", "9.001:300", "14.001:4", "19.001:55", "99.001:1"})
  void aTagAndALengthBeginARecord(String start) {
    assertEquals(OptionalInt.of(3), in("xyz" + start + GS, 2).next(0));
    assertEquals(OptionalInt.of(3), in("xyz" + start + GS, 2).next(3));
    assertEquals(OptionalInt.empty(), in("xyz" + start + GS + "abc", 2).next(7));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.001:9", "2.002:20", "2.001:", "2.001:12x", ":.001:9", "2.001.9"})
  void withoutATagAndALengthNoRecordBegins(String start) {
    assertEquals(OptionalInt.empty(), in("xyz" + start + GS, 2).next(0));
  }

  @Test
  void aLengthThatTheFileEndsInBeginsNoRecord() {
    assertEquals(OptionalInt.empty(), in("xyz2.001:20", 2).next(0));
    assertEquals(OptionalInt.empty(), in("xyz2.001:20" + FS, 2).next(0));
  }

  @Test
  void theSearchFindsEachStartWhateverWasAskedBefore() {
    RecordBoundaryFinder finder = in("ab2.001:20" + GS + "cd14.001:30" + GS + "ef", 2, 14);
    assertEquals(OptionalInt.of(13), finder.next(5));
    assertEquals(OptionalInt.of(13), finder.next(13));
    assertEquals(OptionalInt.of(2), finder.next(1));
    assertEquals(OptionalInt.of(2), finder.next(2));
    assertEquals(OptionalInt.of(13), finder.next(3));
    assertEquals(OptionalInt.empty(), finder.next(15));
    assertEquals(OptionalInt.of(2), finder.next(0));
  }

  @Test
  void aListedRecordBehindAMissingEndIsSeenEvenAfterADigit() {
    String start = "2.001:20" + GS;
    assertEquals(OptionalInt.of(2), in("7" + start, 2).afterMissingEnd(1));
    assertEquals(OptionalInt.empty(), in("7" + start, 2).taggedAt(1));
    assertEquals(OptionalInt.empty(), in("7" + start, 14).afterMissingEnd(1));
    assertEquals(OptionalInt.empty(), in(FS + start, 2).afterMissingEnd(1));
    assertEquals(OptionalInt.empty(), in(start, 2).afterMissingEnd(0));
    assertEquals(OptionalInt.empty(), in("72.00", 2).afterMissingEnd(1));
  }
}
