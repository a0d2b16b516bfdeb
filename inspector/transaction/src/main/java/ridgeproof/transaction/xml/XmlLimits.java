package ridgeproof.transaction.xml;

/**
 * How much of XML is read; past a limit there is a finding.
 *
 * @param maxRecords records of a file
 * @param maxItems elements and information items of a file, since each costs memory
 * @param maxFindings findings kept
 */
public record XmlLimits(int maxRecords, int maxItems, int maxFindings) {}
