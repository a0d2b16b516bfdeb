package ridgeproof.examination.message;

import java.util.List;
import java.util.stream.Stream;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.BureauMessage;

/**
 * What is known of a message.
 *
 * @param text as it was asked for
 * @param byCode the messages whose codes the text names, in its order
 * @param unlistedCodes codes in the text that no row has
 * @param families what is known of the first letters of unlisted codes
 * @param byWords messages that the words of the text point to, the best first
 * @param fields the numbers of fields that the text names, in its order
 */
public record Explanation(
    String text,
    List<BureauMessage> byCode,
    List<String> unlistedCodes,
    List<BureauMessage> families,
    List<BureauMessage> byWords,
    List<FieldNumber> fields) {

  public Explanation {
    byCode = List.copyOf(byCode);
    unlistedCodes = List.copyOf(unlistedCodes);
    families = List.copyOf(families);
    byWords = List.copyOf(byWords);
    fields = List.copyOf(fields);
  }

  /** Whether anything is known of it. */
  public boolean isKnown() {
    return messages().findAny().isPresent();
  }

  /** All that is known, the surest first. */
  public Stream<BureauMessage> messages() {
    return Stream.of(byCode, byWords, families).flatMap(List::stream);
  }

  /** The ids of the rules that find a cause, those of the surest message first. */
  public List<String> rules() {
    return messages().flatMap(message -> message.rules().stream()).distinct().toList();
  }
}
