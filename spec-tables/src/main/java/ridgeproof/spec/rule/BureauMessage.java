package ridgeproof.spec.rule;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;

/**
 * What a bureau says of a transaction that it does not take.
 *
 * @param title a few words of our own
 * @param code as published, or its first letter and {@code *} for codes without a row
 * @param words alternatives, each the words that a text has to have
 * @param meaning why the bureau sends it
 * @param remedy what to do next, in the imperative
 * @param rules ids of the rules that find its cause, in the order of the catalogue
 */
public record BureauMessage(
    String title,
    Optional<String> code,
    List<List<String>> words,
    String meaning,
    String remedy,
    List<String> rules,
    Source source) {

  /** Shorter words have to be whole, for too many others begin with them. */
  private static final int MAX_WHOLE = 3;

  private static final char FAMILY = '*';

  public BureauMessage {
    words = words.stream().map(List::copyOf).toList();
    rules = List.copyOf(rules);
  }

  /** Whether it speaks of all codes that begin with a letter and have no row of their own. */
  public boolean isFamily() {
    return code.filter(c -> c.indexOf(FAMILY) >= 0).isPresent();
  }

  /** Whether it is the message with that code, in capitals. */
  public boolean hasCode(String wanted) {
    return !isFamily() && code.filter(wanted::equals).isPresent();
  }

  /** Whether it speaks of the family of a code, in capitals. */
  public boolean isFamilyOf(String wanted) {
    return isFamily() && wanted.charAt(0) == code.orElseThrow().charAt(0);
  }

  /**
   * How many words of the best alternative a text has; 0 where it has no whole alternative.
   *
   * @param text its words in lowercase letters
   */
  public int agreement(Set<String> text) {
    return words.stream()
        .filter(all -> all.stream().allMatch(word -> text.stream().anyMatch(t -> is(t, word))))
        .mapToInt(List::size)
        .max()
        .orElse(0);
  }

  private static boolean is(String text, String word) {
    return word.length() <= MAX_WHOLE ? text.equals(word) : text.startsWith(word);
  }

  public static BureauMessage of(Table.Row row, RuleCatalogue catalogue) {
    return new BureauMessage(
        row.required("message"),
        row.optional("code"),
        row.parse("words", BureauMessage::alternatives),
        row.required("meaning"),
        row.required("remedy"),
        row.parse("rules", catalogue::matching),
        row.source());
  }

  private static List<List<String>> alternatives(String cell) {
    return cell.isEmpty()
        ? List.of()
        : List.of(cell.toLowerCase(Locale.ROOT).split("\\|")).stream()
            .map(words -> Table.words(words).toList())
            .toList();
  }
}
