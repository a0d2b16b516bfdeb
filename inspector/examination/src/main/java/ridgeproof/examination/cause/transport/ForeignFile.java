package ridgeproof.examination.cause.transport;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipInputStream;
import ridgeproof.spec.FileSignature;
import ridgeproof.transaction.record.ByteSource;

/** Another file in place of the transaction: a packed one, a document, a picture, a disk image. */
final class ForeignFile {

  private static final int BEGINNING = 6;
  private static final Set<String> BEGINNINGS = Set.of("1.001:", "<?xml ");

  /** Enough to see how the first file in an archive begins. */
  private static final int READ_AT_MOST = 64 * 1024;

  private ForeignFile() {}

  static Optional<TransportDamage> of(Suspect suspect) {
    if (suspect.reading().hasRecords() || suspect.source().isEmpty()) {
      return Optional.empty();
    }
    return suspect.signatures().stream()
        .filter(signature -> signature.matches(suspect.source()::has, suspect.source()::byteAt))
        .findFirst()
        .flatMap(signature -> of(suspect.source(), signature));
  }

  private static Optional<TransportDamage> of(ByteSource source, FileSignature signature) {
    return signature
        .rule()
        .map(
            rule ->
                TransportDamage.instead(
                    rule, described(signature.kind(), source), Wrapping.REQUIRED));
  }

  /** The kind of file; what it perhaps is, in brackets, only where it holds no transaction. */
  private static String described(String kind, ByteSource source) {
    byte[] packed = source.slice(0, READ_AT_MOST).toArray();
    return beginsLikeOne(unzipped(packed)) || beginsLikeOne(unpacked(packed))
        ? kind.replaceFirst(" \\(.*\\)$", "") + " with a transaction in it"
        : kind;
  }

  private static boolean beginsLikeOne(byte[] bytes) {
    return BEGINNINGS.contains(new String(bytes, StandardCharsets.ISO_8859_1));
  }

  private static byte[] unzipped(byte[] packed) {
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(packed))) {
      return zip.getNextEntry() == null ? new byte[0] : zip.readNBytes(BEGINNING);
    } catch (IOException | IllegalArgumentException e) {
      return new byte[0];
    }
  }

  private static byte[] unpacked(byte[] packed) {
    try (InputStream gzip = new GZIPInputStream(new ByteArrayInputStream(packed))) {
      return gzip.readNBytes(BEGINNING);
    } catch (IOException e) {
      return new byte[0];
    }
  }
}
