package ridgeproof.cli.io;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.submission.FolderTables;
import ridgeproof.transaction.reader.FileTypeSniffer;
import ridgeproof.transaction.record.ByteSource;

/** Tells transactions, damaged ones too, from other files by their name and first bytes. */
public final class TransactionSigns {

  /** How many bytes of the beginning are enough. */
  public static final int SAMPLE = 4096;

  static final String EMPTY = "empty";

  private static final Pattern OPENING = Pattern.compile("1\\.0*1:");

  /** The first tag below some lines of a mail, in Base64, or in EBCDIC. */
  private static final Pattern BURIED =
      Pattern.compile("(?<![0-9.])1\\.0{0,2}1:|^MS4wMDE6|^\u00F1K\u00F0\u00F0\u00F1z");

  private final SpecTables tables;
  private final FolderTables names = new FolderTables();

  public TransactionSigns(SpecTables tables) {
    this.tables = tables;
  }

  /**
   * Why a file is no transaction, in a few words; empty if it is to be examined.
   *
   * @param beginning at most {@value #SAMPLE} bytes
   */
  public Optional<String> whyNot(String name, byte[] beginning) {
    if (opens(beginning)) {
      return Optional.empty();
    }
    Optional<String> system = names.systemFile(name);
    if (system.isPresent()) {
      return system;
    }
    String sample = new String(beginning, StandardCharsets.ISO_8859_1);
    if (names.isTransactionExtension(extension(name)) || isBuried(sample)) {
      return Optional.empty();
    }
    return Optional.of(
        beginning.length == 0
            ? EMPTY
            : "not a transaction: looks like "
                + FileTypeSniffer.of(ByteSource.of(beginning), tables));
  }

  /** Whether the first tag stands at the beginning. */
  boolean opens(byte[] beginning) {
    return OPENING.matcher(new String(beginning, StandardCharsets.ISO_8859_1)).lookingAt();
  }

  /** Text of 16-bit characters has a zero byte between any two letters. */
  private static boolean isBuried(String sample) {
    return BURIED.matcher(sample.replace("\0", "")).find();
  }

  static String extension(String name) {
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }
}
