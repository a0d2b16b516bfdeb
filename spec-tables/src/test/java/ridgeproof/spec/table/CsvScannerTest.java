package ridgeproof.spec.table;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.NotEmpty;
import net.jqwik.api.constraints.Size;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class CsvScannerTest {

  private static List<String[]> scan(String text) {
    CsvScanner scanner = new CsvScanner("t.csv", text);
    List<String[]> lines = new ArrayList<>();
    for (String[] cells = scanner.next(); cells.length > 0; cells = scanner.next()) {
      lines.add(cells);
    }
    return lines;
  }

  private static void assertReadAsByALibrary(String text) throws IOException {
    List<String[]> ours = scan(text);
    try (var parser =
        CSVFormat.DEFAULT.builder().setIgnoreEmptyLines(true).get().parse(new StringReader(text))) {
      List<CSVRecord> theirs = parser.getRecords();
      assertEquals(theirs.size(), ours.size());
      for (int i = 0; i < ours.size(); i++) {
        assertArrayEquals(theirs.get(i).values(), ours.get(i));
      }
    }
  }

  @Test
  void tablesAreReadAsByAGeneralLibrary() throws IOException {
    for (int type = 1; type <= 99; type++) {
      String file = "layouts/type-%02d.csv".formatted(type);
      try (InputStream stream = Table.class.getResourceAsStream("/ridgeproof/spec/" + file)) {
        if (stream != null) {
          assertReadAsByALibrary(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        }
      }
    }
    try (InputStream stream =
        Table.class.getResourceAsStream("/ridgeproof/spec/rules/catalogue.csv")) {
      assertReadAsByALibrary(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  @Property(tries = 300)
  void whatIsWrittenIsReadBack(
      @ForAll @NotEmpty
          List<@Size(min = 1, max = 5) List<@CharRange(from = ' ', to = '~') String>> rows)
      throws IOException {
    StringWriter text = new StringWriter();
    try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      printer.printRecords(rows);
    }
    assertReadAsByALibrary(text.toString());
  }

  @Test
  void quotesHoldCommasQuotesAndLineBreaksAndLinesAreCounted() {
    CsvScanner scanner = new CsvScanner("t.csv", "a,b\r\n\r\n\"x,\"\"y\"\"\nz\",2\n3,\n");
    scanner.next();
    assertArrayEquals(new String[] {"x,\"y\"\nz", "2"}, scanner.next());
    assertEquals(3, scanner.line());
    assertArrayEquals(new String[] {"3", ""}, scanner.next());
    assertEquals(5, scanner.line());
  }

  @Test
  void aQuoteThatIsNotClosedIsReportedWithItsLine() {
    TableError open = assertThrows(TableError.class, () -> scan("a,b\n1,\"2\n3,4\n"));
    assertTrue(open.getMessage().startsWith("t.csv, line 2"), open.getMessage());
    TableError after = assertThrows(TableError.class, () -> scan("a,b\n1,\"2\"x\n"));
    assertTrue(after.getMessage().startsWith("t.csv, line 2"), after.getMessage());
  }
}
