package ridgeproof.desk.work;

import ridgeproof.examination.FindingsReport;
import ridgeproof.report.FileFacts;

/** A file and what there is to say of it. */
public record Examined(FileFacts file, FindingsReport report) {}
