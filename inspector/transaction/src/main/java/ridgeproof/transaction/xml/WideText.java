package ridgeproof.transaction.xml;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import ridgeproof.transaction.record.ByteSource;

/** XML of two bytes a character, which is read by way of a copy in UTF-8. */
final class WideText {

  private WideText() {}

  static boolean isWide(ByteSource source) {
    return charset(source).isPresent();
  }

  static boolean beginsWithTag(ByteSource source) {
    ByteSource first = source.slice(0, 64);
    String text = charset(source).map(set -> new String(first.toArray(), set)).orElse("");
    String begin = text.replace("\uFEFF", "").strip();
    return begin.length() > 1 && begin.charAt(0) == '<' && XmlStart.canFollow(begin.charAt(1));
  }

  /** The same text in UTF-8. */
  static ByteSource narrowed(ByteSource source) {
    String text = new String(source.toArray(), charset(source).orElse(StandardCharsets.UTF_16BE));
    return ByteSource.of(text.replace("\uFEFF", "").getBytes(StandardCharsets.UTF_8));
  }

  private static Optional<Charset> charset(ByteSource source) {
    if (source.startsWith(0, 0xFE, 0xFF) || source.startsWith(0, 0, '<')) {
      return Optional.of(StandardCharsets.UTF_16BE);
    }
    return source.startsWith(0, 0xFF, 0xFE) || source.startsWith(0, '<', 0)
        ? Optional.of(StandardCharsets.UTF_16LE)
        : Optional.empty();
  }
}
