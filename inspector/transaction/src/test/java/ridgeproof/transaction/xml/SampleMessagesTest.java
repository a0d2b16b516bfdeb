package ridgeproof.transaction.xml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;
import ridgeproof.testing.SharedFolder;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Notation;

/** The published sample messages of the XML encoding, read; their comments name the fields. */
class SampleMessagesTest {

  private static final SpecTables TABLES = SpecTables.open();

  private static List<Path> messages() throws IOException {
    try (Stream<Path> files =
        Files.list(SharedFolder.of("xml", "published sample messages").resolve("messages"))) {
      return files.filter(file -> file.toString().endsWith(".xml")).sorted().toList();
    }
  }

  private static Transaction read(Path file) throws IOException {
    return new TransactionReader(TABLES, ParseLimits.standard())
        .read(ByteSource.of(Files.readAllBytes(file)));
  }

  @Test
  void eachCommentedTagIsFoundAtItsField() throws IOException {
    List<String> missed = new ArrayList<>();
    Map<String, int[]> table = new LinkedHashMap<>();
    for (Path file : messages()) {
      CommentedMessage message = CommentedMessage.of(file);
      List<String> absent = message.absentFrom(read(file));
      absent.forEach(tag -> missed.add(file.getFileName() + ": " + tag));
      table.put(
          file.getFileName().toString(),
          new int[] {message.size(), message.size() - absent.size()});
    }
    write(table);
    assertEquals("", String.join("\n", missed));
  }

  /** What docs/xml.md sums up. */
  private static void write(Map<String, int[]> table) throws IOException {
    StringBuilder lines = new StringBuilder("message,commented,found\n");
    int[] sum = new int[2];
    table.forEach(
        (name, counts) -> {
          lines.append(String.format(Locale.ROOT, "%s,%d,%d%n", name, counts[0], counts[1]));
          sum[0] += counts[0];
          sum[1] += counts[1];
        });
    Files.writeString(Path.of("target", "xml-messages.csv"), lines);
    System.out.println(
        table.size() + " sample messages: " + sum[1] + " of " + sum[0] + " commented tags found");
  }

  @Test
  void allAreReadAsXmlWithEachRecord() throws IOException {
    for (Path file : messages()) {
      Transaction transaction = read(file);
      String text = Files.readString(file);
      assertEquals(Notation.XML, transaction.notation());
      assertEquals(
          text.split("</itl:Package\\w+Record>", -1).length - 1,
          transaction.records().size(),
          file.toString());
      assertEquals(List.of(), transaction.unread());
    }
  }

  @Test
  void readingFindsNothingOfXmlToObjectTo() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : messages()) {
      for (Finding finding : read(file).findings()) {
        if (finding.ruleId().startsWith("RP-XML")) {
          found.add(
              file.getFileName()
                  + " "
                  + finding.ruleId()
                  + " "
                  + finding.observed().text()
                  + " "
                  + finding.required());
        }
      }
    }
    assertTrue(found.isEmpty(), String.join("\n", found));
  }
}
