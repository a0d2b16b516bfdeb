package ridgeproof.transaction.xml;

import java.util.List;
import ridgeproof.finding.Finding;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * What was read from XML.
 *
 * @param source the bytes that places refer to: the file, or its copy in UTF-8
 * @param records in the order of the file, the Type-1 record first; none where the XML holds none
 * @param unread bytes within the transaction that could not be read
 */
public record XmlReading(
    ByteSource source,
    CharacterEncoding encoding,
    List<LogicalRecord> records,
    List<ByteRange> unread,
    List<Finding> findings) {

  public XmlReading {
    records = List.copyOf(records);
    unread = List.copyOf(unread);
    findings = List.copyOf(findings);
  }
}
