package ridgeproof.transaction.xml;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.transaction.xml.RawXml.END;
import static ridgeproof.transaction.xml.RawXml.NAMESPACES;
import static ridgeproof.transaction.xml.RawXml.START;
import static ridgeproof.transaction.xml.RawXml.element;
import static ridgeproof.transaction.xml.RawXml.file;
import static ridgeproof.transaction.xml.RawXml.header;
import static ridgeproof.transaction.xml.RawXml.path;
import static ridgeproof.transaction.xml.RawXml.print;

import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ridgeproof.finding.TextPlace;
import ridgeproof.transaction.TransactionSamples;
import ridgeproof.transaction.record.ByteSource;

/** A place in XML is told by its line, its column and the elements it is in. */
class TextPlacesTest {

  private static final int ORIGIN = 1_000;
  private static final String PACKAGE = "itl:NISTBiometricInformationExchangePackage";
  private static final String FIRST = PACKAGE + "/itl:PackageInformationRecord";
  private static final String PRINT = PACKAGE + "/itl:PackageFingerprintImageRecord";
  private static final String DATE =
      "<ansi-nist:TransactionDate>\n<nc:Date>2026</nc:Date>\n</ansi-nist:TransactionDate>";

  /** Bytes before the first and only occurrence of a text. */
  private static int offset(String file, String text) {
    assertEquals(file.indexOf(text), file.lastIndexOf(text), text);
    return file.substring(0, file.indexOf(text)).getBytes(UTF_8).length;
  }

  private static Map<Integer, TextPlace> places(String file, TreeSet<Integer> offsets) {
    return TextPlaces.of(
        ByteSource.of(file.getBytes(UTF_8), ORIGIN), TransactionSamples.TABLES, offsets);
  }

  private static TextPlace place(String file, int offset) {
    return places(file, new TreeSet<>(java.util.Set.of(ORIGIN + offset))).get(ORIGIN + offset);
  }

  private static TextPlace place(String file, String text) {
    return place(file, offset(file, text));
  }

  @Test
  void anElementIsNamedFromItsStartTagToItsEndTag() {
    String file = "<?xml version='1.0'?>\n" + file("\n" + header(DATE));
    String outer = FIRST + "/ansi-nist:Transaction/ansi-nist:TransactionDate";
    String date = outer + "/nc:Date";
    int start = header().indexOf("</itl:") + "<ansi-nist:Transaction>".length();
    assertEquals(new TextPlace(1, 1, ""), place(file, "<?xml"));
    assertEquals(new TextPlace(2, 1, PACKAGE), place(file, "<itl:NIST"));
    assertEquals(new TextPlace(3, 1, FIRST), place(file, "<itl:PackageInf"));
    assertEquals(new TextPlace(3, start + 1, outer), place(file, "<ansi-nist:TransactionDate>"));
    assertEquals(new TextPlace(4, 1, date), place(file, "<nc:Date>"));
    assertEquals(new TextPlace(4, 9, date), place(file, ">2026"));
    assertEquals(new TextPlace(4, 10, date), place(file, "2026<"));
    assertEquals(new TextPlace(4, 14, date), place(file, "</nc:Date>"));
    assertEquals(new TextPlace(4, 23, date), place(file, ">\n</ansi-nist:TransactionDate>"));
    assertEquals(new TextPlace(4, 24, outer), place(file, "\n</ansi-nist:TransactionDate>"));
    assertEquals(new TextPlace(5, 1, outer), place(file, "</ansi-nist:TransactionDate>"));
    assertEquals(
        new TextPlace(5, 29, FIRST + "/ansi-nist:Transaction"),
        place(file, "</ansi-nist:Transaction>"));
    assertEquals(new TextPlace(5, 84, PACKAGE), place(file, END));
    assertEquals(new TextPlace(5, 84 + END.length(), ""), place(file, file.length()));
  }

  @Test
  void elementsOfOneNameAreCountedWithinTheirParent() {
    String file = file(header(), print(1, "<!--a-->"), print(2, "<!--b-->"), print(3, "<!--c-->"));
    String image = "/itl:FingerprintImage";
    assertEquals(PRINT + image, place(file, "a--").path());
    assertEquals(PRINT + "[2]" + image, place(file, "b--").path());
    assertEquals(PRINT + "[3]" + image, place(file, "c--").path());
    String code = "ansi-nist:FingerPositionCode";
    String two = file(header(), print(1, element(code, "1"), element(code, "2")), print(2));
    assertEquals(PRINT + image + "/" + code + "[2]", place(two, "2</" + code).path());
  }

  @Test
  void namesThatAreNotKnownAreNotShown() {
    String file = "<e:SPECIMEN><b>1</b><b>2</b>" + file(header()) + "</e:SPECIMEN>";
    assertEquals("*", place(file, "<e:").path());
    assertEquals("*/*", place(file, "1</b").path());
    assertEquals("*/*[2]", place(file, "2</b").path());
    assertEquals("*/" + FIRST, place(file, "<itl:PackageInf").path());
    String prefixed = file.replace("itl:", "own:");
    assertEquals("*/" + FIRST, place(prefixed, "<own:PackageInf").path());
    String within = file(header("<own:A><nc:Date>5</nc:Date></own:A>"));
    assertEquals(FIRST + "/ansi-nist:Transaction/*/*", place(within, "5<").path());
  }

  @Test
  void columnsCountCharactersAndLinesEndWithALineFeed() {
    String file = file("\r\n<!-- \u00C7\u20AC\uD83D\uDD8B x --> y");
    assertEquals(new TextPlace(2, 10, PACKAGE), place(file, "x --"));
    assertEquals(new TextPlace(2, 16, PACKAGE), place(file, "y"));
    assertEquals(new TextPlace(1, START.length() + 1, PACKAGE), place(file, "\r\n"));
    assertEquals(new TextPlace(1, START.length() + 2, PACKAGE), place(file, "\n"));
  }

  @Test
  void severalPlacesAreFoundInOneLook() {
    String file = file("\n" + header("<!--a-->"), "\n\n" + print(7, "<!--b-->"), "\n");
    TreeSet<Integer> offsets = new TreeSet<>();
    Stream.of("<itl:NIST", "a--", "b--", END).forEach(t -> offsets.add(ORIGIN + offset(file, t)));
    offsets.add(ORIGIN + file.length() + 50);
    Map<Integer, TextPlace> places = places(file, offsets);
    assertEquals(5, places.size());
    assertEquals(PACKAGE, places.get(ORIGIN + offset(file, "<itl:NIST")).path());
    assertEquals(2, places.get(ORIGIN + offset(file, "a--")).line());
    assertEquals(4, places.get(ORIGIN + offset(file, "b--")).line());
    assertEquals(PRINT + "/itl:FingerprintImage", places.get(ORIGIN + offset(file, "b--")).path());
    assertEquals(new TextPlace(5, 1, PACKAGE), places.get(ORIGIN + offset(file, END)));
    assertEquals(new TextPlace(5, END.length() + 1, ""), places.get(ORIGIN + file.length() + 50));
  }

  /** Lines are counted in pieces of 8 kB. */
  @Test
  void placesFarIntoAFileAreCountedToo() {
    String image = path("itl:FingerprintImage/nc:BinaryBase64Object", "QUJD".repeat(5_000) + "\n");
    String far = element("itl:PackageFingerprintImageRecord", image, image, "\n<!--c-->");
    String file = file("\n" + "<!--      -->\n".repeat(2_000) + header(), far);
    int line = 2 + 2_000 + 3;
    assertEquals(new TextPlace(line, 5, PRINT), place(file, "c--"));
    String second = PRINT + "/itl:FingerprintImage[2]/nc:BinaryBase64Object";
    int at = file.lastIndexOf("QUJD");
    int column =
        "</nc:BinaryBase64Object></itl:FingerprintImage>".length()
            + "<itl:FingerprintImage><nc:BinaryBase64Object>".length()
            + 19_996
            + 1;
    assertEquals(new TextPlace(line - 2, column, second), place(file, at));
  }

  @Test
  void behindABreakThePathBeginsAnewWithinThePackage() {
    String broken = header("<!--a-->").replace("</ansi-nist:Transaction>", "</b>");
    String file = file(broken, print(1, "<!--c-->"), print(2, "<!--d-->"));
    assertEquals(FIRST + "/ansi-nist:Transaction", place(file, "a--").path());
    assertEquals(PRINT + "/itl:FingerprintImage", place(file, "c--").path());
    assertEquals(PRINT + "[2]/itl:FingerprintImage", place(file, "d--").path());
    assertEquals(FIRST + "/ansi-nist:Transaction", place(file, "/b>").path());
    assertEquals(PACKAGE, place(file, "></itl:PackageInformationRecord>").path());
  }

  @Test
  void whereAFileEndsIsWithinWhatIsOpen() {
    String cut = START + header("<nc:A>").substring(0, header("<nc:A>").indexOf("</ansi-nist:Tr"));
    assertEquals(FIRST + "/ansi-nist:Transaction/*", place(cut, cut.length()).path());
  }

  /** However often the XML breaks, no path is longer than what one document leads to. */
  @Test
  void aPackageBehindABreakIsInNoPackage() {
    String inner = START + "<itl:PackageDNARecord>" + START + "</b>";
    String file = "<envelope>" + inner.repeat(50) + file("<!--a-->", print(1), "</c>", print(7));
    assertEquals("*/" + PACKAGE + "[51]", place(file, "a--").path());
    int last = file.lastIndexOf("7</nc:IdentificationID>");
    assertEquals(
        "*/"
            + PACKAGE
            + "[51]/itl:PackageFingerprintImageRecord[2]/ansi-nist:ImageReferenceIdentification"
            + "/nc:IdentificationID",
        place(file, last).path());
  }

  @Test
  void aFileThatBreaksInItsFirstTagHasPlacesToo() {
    String file = "<itl:PackageInformationRecord <" + NAMESPACES + ">\n" + header("<!--a-->");
    assertEquals(
        new TextPlace(2, 1, "itl:PackageInformationRecord"),
        place(file, "<itl:PackageInformationRecord>"));
    assertEquals(new TextPlace(1, 1, ""), place(file, 0));
  }
}
