package ridgeproof.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.TreeSet;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.xml.TextPlaces;
import ridgeproof.transaction.xml.writer.TraditionalDrafts;
import ridgeproof.transaction.xml.writer.XmlTransactionWriter;

class XmlFuzz {

  private static final SpecTables TABLES = SpecTables.open();
  private static final TransactionReader READER =
      new TransactionReader(TABLES, new ParseLimits(1 << 20, 100, 10_000, 1_000));

  @FuzzTest(maxDuration = "24h")
  void xmlIsReadPlacedAndWrittenAgain(byte[] file) {
    Transaction transaction = READER.read(ByteSource.of(file));
    if (!transaction.isXml()) {
      return;
    }
    int length = transaction.source().length();
    for (LogicalRecord record : transaction.records()) {
      if (record.range().end() > length) {
        throw new AssertionError(record.range() + " of " + length);
      }
      record.data().ifPresent(ByteSource::toArray);
    }
    TreeSet<Integer> offsets = new TreeSet<>();
    for (Finding finding : transaction.findings()) {
      finding.location().bytes().ifPresent(bytes -> offsets.add(bytes.offset()));
    }
    TextPlaces.of(transaction.source(), TABLES, offsets);
    int records = transaction.records().size();
    READER.read(ByteSource.of(new TraditionalDrafts(TABLES).write(transaction)));
    byte[] again = new XmlTransactionWriter(TABLES).write(transaction);
    if (READER.read(ByteSource.of(again)).records().size() < Math.min(records, 100)
        && again.length < 1 << 20) {
      throw new AssertionError(records + " records are fewer when they are written again");
    }
  }
}
