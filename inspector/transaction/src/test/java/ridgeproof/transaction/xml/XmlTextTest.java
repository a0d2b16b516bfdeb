package ridgeproof.transaction.xml;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.Charset;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.transaction.record.ByteSource;

/** The text of an element is what a parser of XML would give, without the blanks of its layout. */
class XmlTextTest {

  private static String text(String raw) {
    return text(raw, UTF_8);
  }

  private static String text(String raw, Charset charset) {
    return new XmlText(charset).of(ByteSource.of(raw.getBytes(charset)));
  }

  private static OptionalInt firstOdd(byte[] raw, Charset charset) {
    return new XmlText(charset).firstOdd(ByteSource.of(raw));
  }

  @Test
  void blanksOfOneLineBelongToTheText() {
    assertEquals("a b", text("a b"));
    assertEquals("  a  b ", text("  a  b "));
    assertEquals("\ta\t", text("\ta\t"));
    assertEquals("", text(""));
  }

  @Test
  void blanksAloneAreNoText() {
    assertEquals("", text(" "));
    assertEquals("", text("\t  "));
    assertEquals("", text("\n"));
    assertEquals("", text(" \r\n\t "));
  }

  @Test
  void blanksThatHoldALineEndDoNotCountAroundTheText() {
    assertEquals("a", text("\n  a\n  "));
    assertEquals("a", text(" \n a \n"));
    assertEquals("  a", text("  a\n"));
    assertEquals("a  ", text("\na  "));
    assertEquals("a", text("\r\n\ta\r\n"));
  }

  @Test
  void blanksThatHoldALineEndAreOneBlankWithinTheText() {
    assertEquals("a b", text("a\nb"));
    assertEquals("a b", text("a \t\n\n  b"));
    assertEquals("a b", text("a\r\nb"));
    assertEquals("a b", text("a\rb"));
    assertEquals("  a b  c ", text("  a\n b  c "));
  }

  @ParameterizedTest
  @CsvSource({
    "a&lt;b, a<b",
    "&gt;, >",
    "a&amp;&amp;b, a&&b",
    "&quot;a&apos;, \"a'",
    "&#65;&#x42;&#x0043;, ABC",
    "&#199;, \u00C7",
    "&#x142;, \u0142",
    "&#x1F58B;, \uD83D\uDD8B",
    "&other;, &other;",
    "&#xZZ;, &#xZZ;",
    "&#12z;, &#12z;",
    "&#-5;, &#-5;",
    "&#x110000;, &#x110000;",
    "&#99999999999;, &#99999999999;"
  })
  void referencesAreTheirCharactersAndUnknownOnesStay(String raw, String expected) {
    assertEquals(expected, text(raw));
    assertEquals(expected, text(raw, ISO_8859_1));
    assertEquals("\u00C9" + expected + "\u00C9", text("\u00C9" + raw + "\u00C9"));
  }

  @ParameterizedTest
  @CsvSource({"&#10;", "&#xA;", "&#x0a;", "&#010;"})
  void aLineEndThatIsWrittenAsAReferenceIsMeant(String reference) {
    assertEquals("a\nb", text("a" + reference + "b"));
    assertEquals("\na", text(reference + "a"));
  }

  @Test
  void otherReferencesKeepNoLayout() {
    assertEquals("a\tb ", text("a&#9;b "));
    assertEquals("a\rb", text("a&#13;b"));
    assertEquals("a\rb", text("a&#xD;b"));
    assertEquals("\u00C7", text("\n  &#199;\n"));
    assertEquals("d", text("\n  &#100;\n"));
    assertEquals("\u00DC", text("\n  &#xDC;\n"));
  }

  @Test
  void commentsAndInstructionsAreNoText() {
    assertEquals("ab", text("a<!-- > -- -->b"));
    assertEquals("ab", text("a<?page break > here?>b"));
    assertEquals("ab", text("<!-- 1 -->a<!-- 2 --><!-- 3 -->b<!-- 4 -->"));
    assertEquals("a", text("\n<!-- \u00C7 -->\na\n"));
  }

  @Test
  void aSectionIsTextAsItIsWritten() {
    assertEquals("a&lt;<b>", text("<![CDATA[a&lt;<b>]]>"));
    assertEquals("xay", text("x<![CDATA[a]]>y"));
    assertEquals("", text("<![CDATA[]]>"));
    assertEquals("]a]", text("<![CDATA[]a]]]>"));
    assertEquals("a b c", text("<![CDATA[a\r\nb\rc]]>"));
    assertEquals("\u00C7", text("<![CDATA[\u00C7]]>"));
  }

  @Test
  void whatDoesNotEndIsNoReasonToStop() {
    assertEquals("a", text("a<!-- b"));
    assertEquals("a", text("a<![CDATA["));
    assertEquals("a&;", text("a&"));
  }

  @Test
  void eachByteThatIsNoUtf8IsReadAsLatin1() {
    byte[] latin = "SPE\u00C7IMEN".getBytes(ISO_8859_1);
    assertEquals("SPE\u00C7IMEN", new XmlText(UTF_8).of(ByteSource.of(latin)));
    assertEquals(OptionalInt.of(3), firstOdd(latin, UTF_8));
    assertEquals(OptionalInt.empty(), firstOdd(latin, ISO_8859_1));
  }

  @Test
  void theFirstByteThatIsNoUtf8IsFound() {
    assertEquals(OptionalInt.empty(), firstOdd(new byte[0], UTF_8));
    assertEquals(OptionalInt.empty(), firstOdd("a\u00C7\u20AC\uD83D\uDD8B".getBytes(UTF_8), UTF_8));
    assertEquals(OptionalInt.of(1), firstOdd(new byte[] {'a', (byte) 0x80}, UTF_8));
    assertEquals(OptionalInt.of(1), firstOdd(new byte[] {'a', (byte) 0xC3}, UTF_8));
  }
}
