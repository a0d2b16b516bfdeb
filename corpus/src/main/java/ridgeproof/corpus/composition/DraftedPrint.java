package ridgeproof.corpus.composition;

import ridgeproof.transaction.writer.RecordDraft;

/** One image as it was taken, with its record. */
public record DraftedPrint(CapturedPrint print, RecordDraft record) {}
