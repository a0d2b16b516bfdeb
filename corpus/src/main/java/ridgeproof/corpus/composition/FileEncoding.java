package ridgeproof.corpus.composition;

import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.xml.writer.XmlTransactionWriter;

/** Which encoding of the standard files are written in. */
public enum FileEncoding {
  TRADITIONAL(".an2") {
    @Override
    public byte[] of(byte[] traditional) {
      return traditional;
    }
  },
  XML(".xml") {
    @Override
    public byte[] of(byte[] traditional) {
      SpecTables tables = SpecTables.open();
      return new XmlTransactionWriter(tables)
          .write(
              new TransactionReader(tables, ParseLimits.standard())
                  .read(ByteSource.of(traditional)));
    }
  };

  private final String extension;

  FileEncoding(String extension) {
    this.extension = extension;
  }

  /** What names of such files end in, with its point. */
  public String extension() {
    return extension;
  }

  /** A file of the traditional encoding in this one. */
  public abstract byte[] of(byte[] traditional);
}
