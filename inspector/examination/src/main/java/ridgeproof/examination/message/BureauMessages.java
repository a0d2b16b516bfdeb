package ridgeproof.examination.message;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.BureauMessage;

/** Explains what a bureau answered: first by the codes in it, then by its words. */
public final class BureauMessages {

  private static final Pattern CODE = Pattern.compile("(?i)\\b([A-Z]\\d{4})\\b");
  private static final Pattern FIELD = Pattern.compile("\\b(\\d{1,2}\\.\\d{3,4})\\b");
  private static final Pattern NO_WORD = Pattern.compile("[^a-z0-9]+");
  private static final int MAX_BY_WORDS = 3;

  private final List<BureauMessage> messages;

  public BureauMessages(SpecTables tables) {
    this.messages = tables.bureauMessages();
  }

  /**
   * Explains a code or the text of a message.
   *
   * @param text as the bureau sent it; of a long one the first rows that agree best are given
   */
  public Explanation explain(String text) {
    List<BureauMessage> byCode = new ArrayList<>();
    Set<String> unlisted = new LinkedHashSet<>();
    for (String code : codes(text)) {
      Optional<BureauMessage> row = messages.stream().filter(m -> m.hasCode(code)).findFirst();
      row.ifPresentOrElse(byCode::add, () -> unlisted.add(code));
    }
    List<BureauMessage> families =
        messages.stream().filter(m -> unlisted.stream().anyMatch(m::isFamilyOf)).toList();
    return new Explanation(
        text, byCode, List.copyOf(unlisted), families, byWords(text, byCode), fields(text));
  }

  private static List<String> codes(String text) {
    return CODE.matcher(text)
        .results()
        .map(found -> found.group(1).toUpperCase(Locale.ROOT))
        .distinct()
        .toList();
  }

  private List<BureauMessage> byWords(String text, List<BureauMessage> known) {
    Set<String> words =
        Stream.of(NO_WORD.split(text.toLowerCase(Locale.ROOT)))
            .filter(word -> !word.isEmpty())
            .collect(Collectors.toSet());
    return messages.stream()
        .filter(message -> !known.contains(message) && message.agreement(words) > 0)
        .sorted(Comparator.comparingInt((BureauMessage m) -> -m.agreement(words)))
        .limit(MAX_BY_WORDS)
        .toList();
  }

  private static List<FieldNumber> fields(String text) {
    return FIELD
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .map(FieldNumber::parse)
        .distinct()
        .toList();
  }
}
