package ridgeproof.transaction.xml.writer;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.xml.XmlTables;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.LogicalRecord;

/** Writes transactions in the XML encoding, one image in memory at a time. */
public final class XmlTransactionWriter {

  private final SpecTables tables;

  public XmlTransactionWriter(SpecTables tables) {
    this.tables = tables;
  }

  /** The bytes of a transaction; what is not carried is dropped. */
  public byte[] write(Transaction transaction) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      write(transaction, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /**
   * Writes a transaction.
   *
   * @return what it has and the XML encoding does not carry
   */
  public List<Loss> write(Transaction transaction, OutputStream out) throws IOException {
    List<Loss> losses = new ArrayList<>();
    XmlOutput output = new XmlOutput(out);
    output.line(0, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
    StringBuilder start = new StringBuilder("<" + XmlTables.PACKAGE);
    for (Map.Entry<String, String> namespace : tables.xml().namespaces().entrySet()) {
      start.append(" xmlns:" + namespace.getKey() + "=\"" + namespace.getValue() + "\"");
    }
    output.line(0, start + ">");
    for (LogicalRecord record : transaction.records()) {
      if (tables.xml().record(record.type()).isEmpty()) {
        losses.add(loss(record, "the XML encoding has no such record"));
        continue;
      }
      output.branch(new RecordTree(tables, record, transaction.header(), losses).build(), 1);
      if (output.takeReplaced()) {
        losses.add(loss(record, "characters that XML cannot hold"));
      }
    }
    output.line(0, "</" + XmlTables.PACKAGE + ">");
    losses.addAll(NotCarried.unread(transaction));
    losses.addAll(NotCarried.lengths(transaction));
    return losses;
  }

  private static Loss loss(LogicalRecord record, String reason) {
    return new Loss(record.ordinal(), record.type(), Optional.empty(), reason);
  }
}
