package ridgeproof.report;

/**
 * The examined file, as a report names it.
 *
 * @param name file name without its folders, which could tell of a person
 * @param bytes size
 * @param sha256 64 hexadecimal digits
 */
public record FileFacts(String name, long bytes, String sha256) {}
