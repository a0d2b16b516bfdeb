package ridgeproof.transaction.xml;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.transaction.record.ByteSource;

/** A parser sees no long image, and each of its offsets leads back to a byte of the file. */
class ElidingReaderTest {

  private static final String IMAGE = "A".repeat(1_024);

  private static ByteSource source(String text) {
    return ByteSource.of(text.getBytes(ISO_8859_1));
  }

  private static ElidingReader reader(String text, int begin) {
    ByteSource source = source(text);
    return new ElidingReader(source, new Base64Runs(source), begin);
  }

  /** Reads all, so many characters at a time. */
  private static String read(ElidingReader reader, int count) {
    StringBuilder text = new StringBuilder();
    char[] buffer = new char[count + 2];
    for (int n = reader.read(buffer, 1, count); n >= 0; n = reader.read(buffer, 1, count)) {
      text.append(buffer, 1, n);
    }
    assertEquals('\0', buffer[0]);
    assertEquals('\0', buffer[count + 1]);
    return text.toString();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 7, 100})
  void aLongRunBehindATagIsLeftOut(int count) {
    String text = "--<a>" + IMAGE + "</a>" + IMAGE + "\n <b>" + "A".repeat(1_023) + "</b>";
    ElidingReader reader = reader(text, 2);
    String seen = "<a></a><b>" + "A".repeat(1_023) + "</b>";
    assertEquals(seen, read(reader, count));
    assertEquals(2, reader.start(0));
    assertEquals(4, reader.start(2));
    assertEquals(5 + 1_024, reader.start(3));
    assertEquals(6 + 1_024, reader.start(4));
    assertEquals(9 + 2_048 + 2, reader.start(7));
    assertEquals(10 + 2_048 + 2, reader.start(8));
    assertEquals(text.length(), reader.start(seen.length()));
    assertEquals(text.length(), reader.start(seen.length() + 9));
    assertEquals(5, reader.end(3));
    assertEquals(6 + 1_024, reader.end(4));
    assertEquals(9 + 1_024, reader.end(7));
    assertEquals(10 + 2_048 + 2, reader.end(8));
  }

  @Test
  void runsThatAreNotBehindATagAreRead() {
    String text = IMAGE + "<a>-" + IMAGE + "<";
    assertEquals(text, read(reader(text, 0), 5_000));
  }

  @Test
  void blanksCountAmongTheRun() {
    assertEquals("<a></a>", read(reader("<a>\n " + IMAGE.substring(2) + "</a>", 0), 50));
    assertEquals("<a></a>", read(reader("<a>" + " ".repeat(1_024) + "</a>", 0), 50));
  }

  @Test
  void aFileMayHoldAnyNumberOfImages() {
    String one = "<a>" + IMAGE + "</a>";
    ElidingReader reader = reader(one.repeat(40), 0);
    assertEquals("<a></a>".repeat(40), read(reader, 10));
    for (int i = 0; i < 40; i++) {
      assertEquals(i * one.length() + 3, reader.end(i * 7 + 3));
      assertEquals(i * one.length() + 3 + 1_024, reader.start(i * 7 + 3));
      assertEquals(i * one.length() + 6 + 1_024, reader.start(i * 7 + 6));
    }
  }

  @Test
  void theEndIsToldWhereMoreIsAskedFor() {
    ElidingReader reader = reader("<a>", 0);
    char[] buffer = new char[3];
    assertEquals(0, reader.read(buffer, 0, 0));
    assertEquals(3, reader.read(buffer, 0, 3));
    assertEquals(0, reader.read(buffer, 0, 0));
    assertEquals(-1, reader.read(buffer, 0, 1));
    assertEquals("<a>", new String(buffer));
  }

  @Test
  void eachByteIsACharacterOfItsNumber() {
    assertEquals("\u00E4\u00FF", read(reader("\u00E4\u00FF", 0), 2));
  }

  @Test
  void aLongRunIsLookedAtOnce() {
    Base64Runs runs = new Base64Runs(source("<a>" + IMAGE + "</a>"));
    Base64Run run = runs.at(3);
    assertEquals(new Base64Run(3, 1_027, 1_024, 0, -1), run);
    assertSame(run, runs.at(3));
    assertSame(run, runs.within(3, 1_027));
    assertEquals(new Base64Run(3, 1_026, 1_023, 0, -1), runs.within(3, 1_026));
    Base64Run shorter = runs.at(4);
    assertEquals(new Base64Run(4, 1_027, 1_023, 0, -1), shorter);
    assertNotSame(shorter, runs.at(4));
    assertEquals(new Base64Run(1_027, 1_027, 0, 0, -1), runs.at(1_027));
  }
}
