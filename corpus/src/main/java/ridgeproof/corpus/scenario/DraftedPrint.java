package ridgeproof.corpus.scenario;

import ridgeproof.transaction.RecordDraft;

/** One image as it was taken, with its record. */
public record DraftedPrint(TakenPrint print, RecordDraft record) {}
