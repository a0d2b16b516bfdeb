package ridgeproof.transaction.xml;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ridgeproof.transaction.xml.RawXml.file;
import static ridgeproof.transaction.xml.RawXml.header;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.spec.xml.XmlTables;
import ridgeproof.transaction.TransactionSamples;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;

/** What is XML, where it begins, and what it declares; and where its records begin. */
class XmlStartTest {

  private static final XmlTables TABLES = TransactionSamples.TABLES.xml();
  private static final String MARK = "\u00EF\u00BB\u00BF";
  private static final String DECLARATION = "<?xml version='1.0'?>";
  private static final int SEARCHED = 64 * 1024;

  private static ByteSource bytes(String text) {
    return ByteSource.of(text.getBytes(ISO_8859_1));
  }

  private static boolean isXml(String text) {
    return XmlStart.isXml(bytes(text));
  }

  private static OptionalInt begin(String text) {
    return XmlStart.in(bytes(text), TABLES);
  }

  @ParameterizedTest
  @ValueSource(strings = {"<A", "<Z", "<a", "<z", "<_", "<?", "<!", "<a/>", " \t\r\n<a>"})
  void xmlBeginsWithATag(String text) {
    assertTrue(isXml(text));
    assertTrue(isXml(MARK + text));
    // Without a mark its first character tells that it has two bytes.
    boolean first = text.charAt(0) == '<';
    assertEquals(first, XmlStart.isXml(ByteSource.of(text.getBytes(UTF_16BE))));
    assertEquals(first, XmlStart.isXml(ByteSource.of(text.getBytes(UTF_16LE))));
    assertTrue(XmlStart.isXml(ByteSource.of(("\uFEFF" + text).getBytes(UTF_16BE))));
    assertTrue(XmlStart.isXml(ByteSource.of(("\uFEFF" + text).getBytes(UTF_16LE))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "<", "<@", "<[", "<`", "<{", "<1", "< a", "a<b>", "1.001:", "\0<a>"})
  void otherTextIsNoXml(String text) {
    assertFalse(isXml(text));
    assertFalse(isXml(MARK + text));
    assertFalse(XmlStart.isXml(ByteSource.of(("\uFEFF" + text).getBytes(UTF_16BE))));
    assertFalse(XmlStart.isXml(ByteSource.of(("\uFEFF" + text).getBytes(UTF_16LE))));
  }

  @Test
  void aTagIsLookedForBehindSomeBlanksAlone() {
    assertTrue(isXml(" ".repeat(SEARCHED) + "<a>"));
    assertFalse(isXml(" ".repeat(SEARCHED + 1) + "<a>"));
    assertFalse(isXml(" ".repeat(100)));
  }

  @Test
  void xmlBeginsAtItsFirstByteOrWhereItsDeclarationIs() {
    assertEquals(OptionalInt.of(0), begin("<a/>"));
    assertEquals(OptionalInt.of(0), begin("  <a/>"));
    assertEquals(OptionalInt.of(3), begin(MARK + "<a/>"));
    assertEquals(OptionalInt.of(3), begin(MARK + " <a/>"));
    assertEquals(OptionalInt.of(0), begin(DECLARATION + "<a/>"));
    assertEquals(OptionalInt.of(2), begin("\r\n" + DECLARATION + "<a/>"));
    assertEquals(OptionalInt.of(4), begin(MARK + " " + DECLARATION + "<a/>"));
    assertEquals(
        OptionalInt.of(0), XmlStart.in(ByteSource.of("\uFEFF <a/>".getBytes(UTF_16LE)), TABLES));
  }

  @Test
  void behindOtherTextXmlBeginsWithItsDeclarationOrItsRecord() {
    String file = file(header());
    assertEquals(OptionalInt.empty(), begin("text <a/>"));
    assertEquals(OptionalInt.of(5), begin("text " + file));
    assertEquals(OptionalInt.of(5), begin("text " + DECLARATION + file));
    assertEquals(OptionalInt.of(5), begin("text " + DECLARATION + "<envelope>" + file));
    assertEquals(
        OptionalInt.of(5 + DECLARATION.length()),
        begin("text " + DECLARATION + DECLARATION + file));
    assertEquals(
        OptionalInt.of(SEARCHED - file.length()),
        begin("-".repeat(SEARCHED - file.length()) + file));
    assertEquals(OptionalInt.empty(), begin("-".repeat(SEARCHED) + file));
  }

  @ParameterizedTest
  @CsvSource({
    "<?xml version='1.0' encoding='UTF-8'?>, UTF-8, UTF_8",
    "<?xml version='1.0' encoding = \"utf8\" ?>, utf8, UTF_8",
    "<?XML encoding='US-ASCII'?>, US-ASCII, UTF_8",
    "<?xml encoding='ascii'?>, ascii, UTF_8",
    "<?xml encoding='UTF-16'?>, UTF-16, UTF_8",
    "<?xml encoding='UTF-16LE'?>, UTF-16LE, UTF_8",
    "<?xml encoding='utf-16be'?>, utf-16be, UTF_8",
    "<?xml encoding='ISO-8859-1'?>, ISO-8859-1, LATIN_1",
    "<?xml encoding='latin1'?>, latin1, LATIN_1",
    "<?xml encoding='windows-1252'?>, windows-1252, LATIN_1",
    "<?xml encoding='EBCDIC-37'?>, EBCDIC-37,",
    "<?xml encoding=''?>, '',",
    "<?xml version='1.0'?>, , UTF_8"
  })
  void aDeclarationEndsBehindItselfAndMayNameAnEncoding(
      String declaration, String stated, CharacterEncoding encoding) {
    Declaration found = Declaration.of(bytes("--" + declaration + "<a encoding='x'/>"), 2);
    assertEquals(2 + declaration.length(), found.end());
    assertEquals(Optional.ofNullable(stated), found.stated());
    assertEquals(Optional.ofNullable(encoding), found.encoding());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "<", "<a/>", "<?xml?>", "<?xml version='1.0'", " <?xml v='1'?>"})
  void withoutADeclarationXmlIsUtf8FromItsFirstByte(String text) {
    Declaration none = Declaration.of(bytes("-" + text), 1);
    assertEquals(1, none.end());
    assertEquals(Optional.empty(), none.stated());
    assertEquals(Optional.of(CharacterEncoding.UTF_8), none.encoding());
  }

  private static OptionalInt next(String text, int from) {
    return new KnownStarts(bytes(text), TABLES).next(from);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<PackageDNARecord>",
        "<itl:PackageDNARecord/>",
        "<a:b:PackageDNARecord a='b'>",
        "<PackageDNARecord\n",
        "<PackageDNARecord<",
        "<PackageDNARecord",
        "<x:NISTBiometricInformationExchangePackage>"
      })
  void aRecordOrPackageBeginsWithItsNameWhateverItsPrefix(String tag) {
    assertEquals(OptionalInt.of(4), next("<ab>" + tag, 0));
    assertEquals(OptionalInt.of(4), next("<ab>" + tag + tag, 4));
    assertEquals(OptionalInt.of(4 + tag.length()), next("<ab>" + tag + tag, 5));
    assertEquals(OptionalInt.empty(), next("<ab>" + tag, 5));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "</itl:PackageDNARecord>",
        "<PackageDNARecords>",
        "<itl:PackageDNARecord:a>",
        "< PackageDNARecord>",
        "PackageDNARecord",
        "<"
      })
  void otherTagsBeginNone(String tag) {
    assertEquals(OptionalInt.empty(), next("<ab>" + tag, 0));
  }

  @Test
  void aNameIsLookedAtForTwoHundredCharacters() {
    String prefix = "p".repeat(200 - ":PackageDNARecord".length());
    assertEquals(OptionalInt.of(0), next("<" + prefix + ":PackageDNARecord>", 0));
    assertEquals(OptionalInt.empty(), next("<p" + prefix + ":PackageDNARecord>", 0));
  }

  private static boolean fill(String text) {
    return EndTags.fill(bytes("ab" + text + "cd"), 2, 2 + text.length());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", " \r\n\t", "</a>", " </a> </b> ", "<!-- c -->", "<!-->", "</a><!-- --></b>"})
  void endTagsCommentsAndBlanksAreNothingMore(String text) {
    assertTrue(fill(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "</a>b", "<a>", "</a", "<!-- ", "<!DOCTYPE a>", "<", "!", " </a>&"})
  void anythingElseIsMore(String text) {
    assertFalse(fill(text));
  }
}
