package ridgeproof.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.LogicalRecord;

class ReaderFuzz {

  private static final TransactionReader READER =
      new TransactionReader(SpecTables.open(), new ParseLimits(1 << 20, 100, 10_000, 1_000));

  @FuzzTest(maxDuration = "24h")
  void everyRecordLiesWithinTheFile(byte[] file) {
    Transaction transaction = READER.read(ByteSource.of(file));
    for (LogicalRecord record : transaction.records()) {
      if (record.range().offset() < 0 || record.range().end() > file.length) {
        throw new AssertionError(record.range() + " of " + file.length);
      }
    }
  }
}
