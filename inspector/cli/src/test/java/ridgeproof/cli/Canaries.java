package ridgeproof.cli;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.RecordLayout;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

/**
 * Values that stand nowhere else: each has the same beginning, so that one search finds them all in
 * an output, as they are or encoded.
 */
public final class Canaries {

  /** How a canary is written: of letters, or of digits where a field has only those. */
  enum Script {
    LETTERS("QZXW", 'A', 26),
    DIGITS("7319", '0', 10);

    private final String beginning;
    private final char first;
    private final int signs;

    Script(String beginning, char first, int signs) {
      this.beginning = beginning;
      this.first = first;
      this.signs = signs;
    }

    /** Eight characters, of which the last four say which it is. */
    String canary(int number) {
      int left = number;
      StringBuilder end = new StringBuilder();
      for (int i = 0; i < 4; i++) {
        end.insert(0, (char) (first + left % signs));
        left /= signs;
      }
      if (left > 0) {
        throw new IllegalArgumentException(number + " canaries are too many");
      }
      return beginning + end;
    }
  }

  private static final Pattern LETTERS =
      Pattern.compile(Script.LETTERS.beginning + "[A-Z]{4}", Pattern.CASE_INSENSITIVE);
  private static final Pattern DIGITS = Pattern.compile(Script.DIGITS.beginning + "[0-9]{4}");
  private static final Pattern SPACE = Pattern.compile("\\s+");
  private static final Pattern THOUSANDS = Pattern.compile("(?<=[0-9]),(?=[0-9]{3})");

  private static final Pattern CODED = Pattern.compile(coded());

  private Canaries() {}

  /** Hexadecimal and Base64. */
  private static String coded() {
    Set<String> forms = new LinkedHashSet<>();
    for (Script script : Script.values()) {
      byte[] bytes = script.beginning.getBytes(StandardCharsets.US_ASCII);
      StringBuilder hex = new StringBuilder("(?i:");
      for (byte value : bytes) {
        hex.append("%02x[ ,]?(?:\\\\x|0x|%%)?".formatted(value));
      }
      forms.add(hex.append(")").toString());
      for (int before = 0; before < 3; before++) {
        byte[] shifted = new byte[before + bytes.length];
        System.arraycopy(bytes, 0, shifted, before, bytes.length);
        String base64 = Base64.getEncoder().withoutPadding().encodeToString(shifted);
        forms.add(base64.substring((before * 8 + 5) / 6, shifted.length * 8 / 6));
      }
    }
    return String.join("|", forms);
  }

  /** Every canary of a text, and what of one is encoded in it. */
  public static Set<String> foundIn(String text) {
    Set<String> found = new LinkedHashSet<>();
    add(LETTERS, SPACE.matcher(text).replaceAll(""), found);
    add(DIGITS, THOUSANDS.matcher(text).replaceAll(""), found);
    add(CODED, text, found);
    return found;
  }

  private static void add(Pattern pattern, String text, Set<String> found) {
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      found.add(pattern == CODED ? matcher.group() : matcher.group().toUpperCase(Locale.ROOT));
    }
  }

  /** Whether it is a canary as it is, and not one encoded. */
  static boolean isPlain(String found) {
    return LETTERS.matcher(found).matches() || DIGITS.matcher(found).matches();
  }

  /** The canaries of a file that were read as a value which a row calls public. */
  static Set<String> publicIn(Transaction transaction, SpecTables tables) {
    Set<String> shown = new HashSet<>();
    for (LogicalRecord record : transaction.records()) {
      for (Field field : record.fields()) {
        RecordLayout layout = tables.layout(field.number().recordType());
        for (Subfield subfield : field.subfields()) {
          for (int item = 1; item <= subfield.items().size(); item++) {
            if (layout.isPublic(field.number(), item, transaction.version())) {
              shown.addAll(foundIn(subfield.text(item)));
            }
          }
        }
      }
    }
    return shown;
  }
}
