package ridgeproof.transaction.xml;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;
import ridgeproof.testing.ReferenceFiles;
import ridgeproof.testing.SharedFolder;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.xml.writer.Loss;
import ridgeproof.transaction.xml.writer.TraditionalDrafts;
import ridgeproof.transaction.xml.writer.XmlTransactionWriter;

/** From one encoding to the other and back. */
class RoundTripTest {

  private static final SpecTables TABLES = SpecTables.open();

  private static Transaction read(byte[] bytes) {
    return new TransactionReader(TABLES, ParseLimits.standard()).read(ByteSource.of(bytes));
  }

  @Test
  void aTraditionalFileComesBackByteForByteUnlessALossIsNamed() throws IOException {
    List<String> changed = new ArrayList<>();
    for (Path file : ReferenceFiles.all()) {
      byte[] bytes = Files.readAllBytes(file);
      ByteArrayOutputStream xml = new ByteArrayOutputStream();
      List<Loss> losses = new XmlTransactionWriter(TABLES).write(read(bytes), xml);
      TraditionalDrafts drafts = new TraditionalDrafts(TABLES);
      byte[] back = drafts.write(read(xml.toByteArray()));
      if (losses.isEmpty()) {
        assertArrayEquals(bytes, back, file.toString());
      } else {
        changed.add(file.getFileName() + " " + losses);
      }
    }
    System.out.println(String.join("\n", changed));
  }

  @Test
  void theSampleMessagesKeepTheirValuesThroughTheTraditionalEncoding() throws IOException {
    try (Stream<Path> files =
        Files.list(SharedFolder.of("xml", "published sample messages").resolve("messages"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".xml")).sorted().toList()) {
        Transaction first = read(Files.readAllBytes(file));
        TraditionalDrafts drafts = new TraditionalDrafts(TABLES);
        Transaction middle = read(drafts.write(first));
        ByteArrayOutputStream xml = new ByteArrayOutputStream();
        List<Loss> losses = new XmlTransactionWriter(TABLES).write(middle, xml);
        Set<String> expected = values(first);
        Set<String> found = values(read(xml.toByteArray()));
        expected.removeIf(line -> losses.stream().anyMatch(loss -> concerns(line, loss)));
        found.removeIf(line -> losses.stream().anyMatch(loss -> concerns(line, loss)));
        Set<String> both = new TreeSet<>(expected);
        both.retainAll(found);
        expected.removeAll(both);
        found.removeAll(both);
        assertEquals(String.join("\n", expected), String.join("\n", found), file + " " + losses);
      }
    }
  }

  private static boolean concerns(String line, Loss loss) {
    return line.startsWith(loss.record() + " " + loss.field().map(Object::toString).orElse(""));
  }

  private static Set<String> values(Transaction transaction) {
    Set<String> values = new TreeSet<>();
    for (LogicalRecord record : transaction.records()) {
      for (Field field : record.fields()) {
        values.add(
            record.ordinal()
                + " "
                + field.number()
                + " "
                + (field.isData()
                    ? Arrays.hashCode(record.dataOf(field).toArray())
                    : field.subfields().stream()
                        .map(s -> s.items().stream().map(i -> i.text()).toList())
                        .toList()));
      }
    }
    // CNT is computed anew.
    values.removeIf(line -> line.startsWith("1 1.003"));
    return values;
  }
}
