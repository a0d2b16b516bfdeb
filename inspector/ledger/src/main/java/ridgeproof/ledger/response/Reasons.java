package ridgeproof.ledger.response;

import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ridgeproof.examination.message.BureauMessages;
import ridgeproof.examination.message.Explanation;
import ridgeproof.ledger.ResponseMessage;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.rule.BureauMessage;

/** Makes of the text of a message what may be kept of it: its reason and the finger it names. */
public final class Reasons {

  private static final String FINGERS = "finger-positions";
  private static final Pattern NUMBERED =
      Pattern.compile(
          "(?i)\\b(?:finger|fingers|fgp|position)\\W{0,3}(?:number |no\\.? ?)?0?(\\d{1,2})\\b");
  private static final int LAST_FINGER = 10;
  private static final int MAX_REASON = 100;

  private final SpecTables tables;
  private final BureauMessages messages;

  public Reasons(SpecTables tables) {
    this.tables = tables;
    this.messages = new BureauMessages(tables);
  }

  /** The reason and the finger of a message. */
  public ResponseMessage of(String text) {
    Explanation known = messages.explain(text);
    String reason =
        known.byCode().stream()
            .flatMap(message -> message.code().stream())
            .findFirst()
            .or(() -> known.unlistedCodes().stream().findFirst())
            .or(() -> known.byWords().stream().findFirst().map(BureauMessage::title))
            .orElse(ResponseMessage.UNKNOWN);
    return new ResponseMessage(
        reason.length() <= MAX_REASON ? reason : reason.substring(0, MAX_REASON), finger(text));
  }

  /** What a reason means: a published code with its title, any other as it is. */
  public String words(String reason) {
    return tables.bureauMessages().stream()
        .filter(message -> message.hasCode(reason))
        .findFirst()
        .map(message -> reason + ": " + message.title())
        .orElse(reason);
  }

  private OptionalInt finger(String text) {
    Matcher numbered = NUMBERED.matcher(text);
    if (numbered.find()) {
      int finger = Integer.parseInt(numbered.group(1));
      return finger >= 1 && finger <= LAST_FINGER ? OptionalInt.of(finger) : OptionalInt.empty();
    }
    String words = text.toLowerCase(Locale.ROOT);
    return tables.codes(FINGERS).codes().stream()
        .filter(code -> words.contains(name(code)))
        .mapToInt(code -> Integer.parseInt(code.code()))
        .filter(finger -> finger >= 1 && finger <= LAST_FINGER)
        .findFirst();
  }

  private static String name(Code code) {
    return code.name().toLowerCase(Locale.ROOT).replace(" finger", "");
  }
}
