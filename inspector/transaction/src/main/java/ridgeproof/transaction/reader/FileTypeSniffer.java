package ridgeproof.transaction.reader;

import java.util.Optional;
import ridgeproof.spec.FileSignature;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.record.ByteSource;

/** Says what a file is that is no transaction, by its first bytes. */
public final class FileTypeSniffer {

  private static final int SAMPLE = 512;

  private FileTypeSniffer() {}

  /** A few words such as "an XML file". */
  public static String of(ByteSource source, SpecTables tables) {
    return known(source, tables).orElseGet(() -> isText(source) ? "text" : "unknown binary data");
  }

  private static Optional<String> known(ByteSource source, SpecTables tables) {
    return tables.fileSignatures().stream()
        .filter(signature -> signature.matches(source::has, source::byteAt))
        .map(FileSignature::kind)
        .findFirst();
  }

  private static boolean isText(ByteSource source) {
    for (int i = 0; i < Math.min(SAMPLE, source.length()); i++) {
      int value = source.byteAt(i);
      if (value < 0x20 && value != '\t' && value != '\n' && value != '\r') {
        return false;
      }
    }
    return true;
  }
}
