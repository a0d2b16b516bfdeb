package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing is dropped or computed in silence, and no input is written to. */
class ConvertCommandTest {

  @TempDir Path folder;

  private Path traditional;
  private Path xml;
  private Path back;

  @BeforeEach
  void write() throws IOException {
    traditional = Files.write(folder.resolve("card.an2"), SmallTransaction.bytes());
    xml = folder.resolve("card.xml");
    back = folder.resolve("back.an2");
  }

  private static CommandRun convert(Path file, String encoding, Path target) {
    return CommandRun.of(
        "convert", file.toString(), "--to", encoding, "--output", target.toString());
  }

  private static String text(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.ISO_8859_1);
  }

  private Path written(String text) throws IOException {
    return Files.write(folder.resolve("changed"), text.getBytes(StandardCharsets.ISO_8859_1));
  }

  private static void assertSays(CommandRun run, String... lines) {
    assertEquals(1, run.status(), run.error());
    assertEquals(
        List.of(lines),
        run.error()
            .lines()
            .map(line -> line.replace("ridgeproof: not carried over as it is: ", ""))
            .toList());
  }

  @Test
  void aSoundFileComesBackByteForByteAndNothingIsSaid() throws IOException {
    CommandRun there = convert(traditional, "xml", xml);
    assertEquals(0, there.status(), there.error());
    CommandRun andBack = convert(xml, "traditional", back);
    assertEquals(0, andBack.status(), andBack.error());
    assertEquals("", there.error() + andBack.error());
    assertArrayEquals(Files.readAllBytes(traditional), Files.readAllBytes(back));
  }

  @Test
  void theSameEncodingIsWrittenAnew() throws IOException {
    assertEquals(0, convert(traditional, "traditional", back).status());
    assertArrayEquals(Files.readAllBytes(traditional), Files.readAllBytes(back));
    assertEquals(0, convert(traditional, "xml", xml).status());
    Path again = folder.resolve("again.xml");
    assertEquals(0, convert(xml, "xml", again).status());
    assertArrayEquals(Files.readAllBytes(xml), Files.readAllBytes(again));
  }

  @Test
  void aLengthThatIsComputedAnewIsSaid() throws IOException {
    String changed = text(traditional).replaceFirst("2\\.001:(\\d)\\d\\d", "2.001:$100");
    String said = "record 2 (Type-2), field 2.001: a length that is not that of the record";
    assertSays(convert(written(changed), "xml", xml), said);
    assertSays(convert(written(changed), "traditional", back), said);
  }

  @Test
  void aListOfRecordsThatIsComputedAnewIsSaid() throws IOException {
    convert(traditional, "xml", xml);
    String changed =
        text(xml).replaceFirst("ContentRecordQuantity>\\d<", "ContentRecordQuantity>7<");
    assertSays(
        convert(written(changed), "traditional", back),
        "record 1 (Type-1), field 1.003: a list that is not that of the records");
  }

  @Test
  void whatNoFieldIsKnownForIsSaidWithoutItsValue() throws IOException {
    convert(traditional, "xml", xml);
    String changed = text(xml).replaceFirst("<nc:Date>", "<nc:Remark>MOORING</nc:Remark><nc:Date>");
    for (String encoding : List.of("traditional", "xml")) {
      CommandRun run = convert(written(changed), encoding, folder.resolve(encoding));
      assertSays(run, "record 1 (Type-1): elements that no field is known for");
      assertFalse(run.error().contains("MOORING"));
    }
  }

  @Test
  void bytesBehindTheLastRecordAreSaid() throws IOException {
    String changed = text(traditional) + "MOORING";
    for (String encoding : List.of("traditional", "xml")) {
      assertSays(
          convert(written(changed), encoding, folder.resolve(encoding)),
          "bytes that belong to no record");
    }
  }

  @Test
  void valuesBeyondAsciiAreWrittenInACharacterSetThatTheHeaderNames() throws IOException {
    convert(traditional, "xml", xml);
    String changed = text(xml).replace("ADA", "AD\u00c3\u0089");
    assertSays(
        convert(written(changed), "traditional", back),
        "record 1 (Type-1), field 1.015: it names UTF-8 now, which the values need");
    assertTrue(text(back).contains("1.015:003\u001fUTF-8"), text(back));
    assertTrue(text(back).contains("AD\u00c3\u0089"), text(back));
    CommandRun again = CommandRun.of("examine", "--depth", "structure", back.toString());
    assertFalse(again.out().contains("RP-STR-019"), again.out());
  }

  @Test
  void whatIsNoTransactionIsRefused() throws IOException {
    CommandRun run = convert(written("no transaction"), "xml", xml);
    run.isOneLineOf(3, "is not a transaction");
    assertFalse(Files.exists(xml));
  }

  @Test
  void noFileIsWrittenOverUnasked() throws IOException {
    Files.writeString(xml, "mine");
    assertEquals(74, convert(traditional, "xml", xml).status());
    assertEquals("mine", Files.readString(xml));
    byte[] before = Files.readAllBytes(traditional);
    CommandRun onItself =
        CommandRun.of(
            "convert",
            traditional.toString(),
            "--to",
            "xml",
            "--output",
            traditional.toString(),
            "--overwrite");
    assertEquals(64, onItself.status(), onItself.error());
    assertArrayEquals(before, Files.readAllBytes(traditional));
  }

  @Test
  void aHyphenIsStandardInputAsInExamine() throws IOException {
    InputStream before = System.in;
    try {
      System.setIn(new ByteArrayInputStream(Files.readAllBytes(traditional)));
      assertEquals(0, convert(Path.of("-"), "traditional", back).status());
    } finally {
      System.setIn(before);
    }
    assertArrayEquals(Files.readAllBytes(traditional), Files.readAllBytes(back));
  }
}
