package ridgeproof.report;

/**
 * What made a report.
 *
 * @param version of Ridgeproof
 * @param java version and maker of the Java runtime
 * @param system name, version and processor of the operating system
 */
public record ToolFacts(String version, String java, String system) {}
