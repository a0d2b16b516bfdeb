package ridgeproof.corpus.composition;

import java.util.List;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.transaction.writer.RecordDraft;

/**
 * A story before it becomes bytes.
 *
 * @param records the Type-1 and the Type-2 record, then one for each print, then the others
 * @param prints in the order of their records
 */
public record DraftedTransaction(
    Scenario scenario, List<RecordDraft> records, List<CapturedPrint> prints) {

  /** Type-1 and Type-2. */
  public static final int RECORDS_BEFORE_PRINTS = 2;

  public DraftedTransaction {
    records = List.copyOf(records);
    prints = List.copyOf(prints);
  }
}
