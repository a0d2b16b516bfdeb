package ridgeproof.transaction.xml;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;

/**
 * The line that XML may begin with.
 *
 * @param end the first byte after it
 * @param stated the name of the character encoding, where it is given
 */
record Declaration(int end, Optional<String> stated) {

  private static final int LONGEST = 256;
  private static final Pattern FORM =
      Pattern.compile("<\\?xml\\s[^>]*?\\?>", Pattern.CASE_INSENSITIVE);
  private static final Pattern ENCODING = Pattern.compile("encoding\\s*=\\s*[\"']([^\"']*)[\"']");

  /**
   * @param begin where XML begins
   */
  static Declaration of(ByteSource source, int begin) {
    String text = source.latin1(begin, Math.min(LONGEST, source.length() - begin));
    Matcher form = FORM.matcher(text);
    if (!form.lookingAt()) {
      return new Declaration(begin, Optional.empty());
    }
    Matcher encoding = ENCODING.matcher(form.group());
    return new Declaration(
        begin + form.end(), encoding.find() ? Optional.of(encoding.group(1)) : Optional.empty());
  }

  /** The encoding, where it is one that is read; UTF-8 where none is stated. */
  Optional<CharacterEncoding> encoding() {
    return switch (stated.orElse("utf-8").toLowerCase(Locale.ROOT)) {
      case "utf-8", "utf8", "us-ascii", "ascii", "utf-16", "utf-16le", "utf-16be" ->
          Optional.of(CharacterEncoding.UTF_8);
      case "iso-8859-1", "latin1", "windows-1252" -> Optional.of(CharacterEncoding.LATIN_1);
      default -> Optional.empty();
    };
  }
}
