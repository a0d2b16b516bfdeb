package ridgeproof.transaction;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import ridgeproof.finding.Finding;
import ridgeproof.spec.rule.Severity;
import ridgeproof.testing.ReferenceFiles;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.writer.TransactionWriter;

class ReferenceReadingTest {

  @Test
  void recordsOffsetsLengthsAndValuesAreThoseOfAnIndependentReading() throws IOException {
    List<String> expected = table();
    List<String> found = new ArrayList<>();
    found.add(expected.get(0));
    for (Path file : ReferenceFiles.all()) {
      Transaction transaction = TransactionSamples.read(Files.readAllBytes(file));
      for (LogicalRecord record : transaction.records()) {
        record.fields().forEach(f -> found.add(line(file.getFileName().toString(), record, f)));
      }
    }
    assertEquals(String.join("\n", expected), String.join("\n", found));
  }

  @Test
  void conformantFilesAreReadWithNothingButNotes() throws IOException {
    for (Path file : ReferenceFiles.all()) {
      Transaction transaction = TransactionSamples.read(Files.readAllBytes(file));
      List<Finding> objections =
          transaction.findings().stream().filter(f -> f.severity() != Severity.NOTE).toList();
      assertEquals(List.of(), objections, file.toString());
      Accounting.everyByteIsAccountedFor(transaction);
    }
  }

  @Test
  void writingWhatWasReadGivesTheSameBytes() throws IOException {
    for (Path file : ReferenceFiles.all()) {
      byte[] bytes = Files.readAllBytes(file);
      assertArrayEquals(
          bytes, TransactionWriter.write(TransactionSamples.read(bytes)), file.toString());
    }
  }

  private static List<String> table() throws IOException {
    try (InputStream in = ReferenceReadingTest.class.getResourceAsStream("reference-reading.csv")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
  }

  private static String line(String file, LogicalRecord record, Field field) {
    String idc = record.idc().isPresent() ? Integer.toString(record.idc().getAsInt()) : "";
    int items = field.subfields().stream().mapToInt(subfield -> subfield.items().size()).sum();
    return String.join(
        ",",
        file,
        Integer.toString(record.ordinal()),
        Integer.toString(record.type()),
        idc,
        Integer.toString(record.range().offset()),
        Integer.toString(record.range().length()),
        field.number().toString(),
        Integer.toString(field.range().offset()),
        Integer.toString(field.range().length()),
        Integer.toString(field.value().length()),
        String.format(Locale.ROOT, "%08X", checksum(record, field)),
        Integer.toString(field.subfields().size()),
        Integer.toString(items));
  }

  private static long checksum(LogicalRecord record, Field field) {
    CRC32 crc = new CRC32();
    boolean number = field.tag().isEmpty() && !field.isData();
    if (number) {
      String digits =
          field.subfields().stream().map(s -> s.text(1)).collect(Collectors.joining("\u001E"));
      crc.update(digits.getBytes(StandardCharsets.US_ASCII));
    } else {
      crc.update(record.dataOf(field).asBuffer());
    }
    return crc.getValue();
  }
}
