package ridgeproof.report;

/**
 * A file of a folder that has no report.
 *
 * @param name file name without its folders, which could tell of a person
 * @param reason why it was not examined, in a few words
 */
public record NotExamined(String name, String reason) {}
