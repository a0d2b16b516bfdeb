package ridgeproof.spec.xml;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How the text of an element and the item of a field say the same. */
public sealed interface XmlForm {

  /** What the field says; empty where the element does not have the form. */
  Optional<String> toField(String element);

  /** What the element says; empty where the item cannot be said in the form. */
  Optional<String> toElement(String item);

  /** What the element has to look like, in plain words. */
  String inWords();

  /** Forms without parameters. */
  enum Plain implements XmlForm {
    TEXT("text"),
    /** Base64 of image or other binary data. */
    DATA("Base64"),
    /** The elements of a repetition, joined by commas in one item. */
    LIST("text"),
    /** Text whose blanks and line ends do not count. */
    COMPACT("text without blanks"),
    /** Digits that may be set apart by hyphens. */
    DIGITS("digits"),
    /** A number that the XML writes with two digits. */
    TWO_DIGITS("a number of two digits"),
    /** A number that fields write with three digits. */
    THREE_DIGITS("a number");

    private final String words;

    Plain(String words) {
      this.words = words;
    }

    @Override
    public Optional<String> toField(String element) {
      return Optional.of(
          switch (this) {
            case TEXT, DATA, LIST -> element;
            case COMPACT -> element.replaceAll("\\s+", "");
            case DIGITS -> element.replaceAll("(?<=[0-9])-(?=[0-9])", "");
            case TWO_DIGITS -> element.matches("0[0-9]") ? element.substring(1) : element;
            case THREE_DIGITS ->
                element.matches("[0-9]{1,2}")
                    ? "0".repeat(3 - element.length()) + element
                    : element;
          });
    }

    @Override
    public Optional<String> toElement(String item) {
      return Optional.of(
          switch (this) {
            case TWO_DIGITS -> item.matches("[0-9]") ? "0" + item : item;
            case THREE_DIGITS -> item.matches("[0-9]{3}") ? item.replaceFirst("^00?", "") : item;
            default -> item;
          });
    }

    @Override
    public String inWords() {
      return words;
    }
  }

  /** Dates and times, which the one encoding writes with separators and the other without. */
  enum Moment implements XmlForm {
    DATE(
        "([0-9]{4})-([0-9]{2})-([0-9]{2})Z?",
        "$1$2$3", "([0-9]{4})([0-9]{2})([0-9]{2})", "$1-$2-$3", "a date such as 2026-03-31"),
    DATE_TIME(
        "([0-9]{4})-([0-9]{2})-([0-9]{2})T([0-9]{2}):([0-9]{2}):([0-9]{2})(?:\\.0+)?Z",
        "$1$2$3$4$5$6Z",
        "([0-9]{4})([0-9]{2})([0-9]{2})([0-9]{2})([0-9]{2})([0-9]{2})Z",
        "$1-$2-$3T$4:$5:$6Z",
        "a date and time such as 2026-03-31T14:05:00Z"),
    YEAR_AND_MONTH(
        "([0-9]{4})-([0-9]{2})",
        "$1$200", "([0-9]{4})(0[1-9]|1[0-2])00", "$1-$2", "a year and month such as 2026-03"),
    YEAR("([0-9]{4})", "$10000", "([0-9]{4})0000", "$1", "a year such as 2026");

    private final Pattern element;
    private final String toField;
    private final Pattern item;
    private final String toElement;
    private final String words;

    Moment(String element, String toField, String item, String toElement, String words) {
      this.element = Pattern.compile(element);
      this.toField = toField;
      this.item = Pattern.compile(item);
      this.toElement = toElement;
      this.words = words;
    }

    @Override
    public Optional<String> toField(String text) {
      return rewritten(element, text, toField);
    }

    @Override
    public Optional<String> toElement(String text) {
      boolean calendar =
          switch (this) {
            case DATE, DATE_TIME -> text.length() >= 8 && Days.exists(text.substring(0, 8));
            case YEAR_AND_MONTH, YEAR -> true;
          };
      return calendar ? rewritten(item, text, toElement) : Optional.empty();
    }

    @Override
    public String inWords() {
      return words;
    }

    private static Optional<String> rewritten(Pattern pattern, String text, String as) {
      Matcher matcher = pattern.matcher(text);
      return matcher.matches() ? Optional.of(matcher.replaceFirst(as)) : Optional.empty();
    }
  }

  /**
   * True and false.
   *
   * @param yes what the field says for true
   * @param no what the field says for false; empty where the field is then left out
   */
  record Indicator(String yes, Optional<String> no) implements XmlForm {
    @Override
    public Optional<String> toField(String element) {
      return switch (element) {
        case "true", "1" -> Optional.of(yes);
        case "false", "0" -> Optional.of(no.orElse(""));
        default -> Optional.empty();
      };
    }

    @Override
    public Optional<String> toElement(String item) {
      return item.equals(yes) ? Optional.of("true") : no.filter(item::equals).map(text -> "false");
    }

    @Override
    public String inWords() {
      return "true or false";
    }
  }

  /** An element that always says the same beside the value, such as a unit. */
  record Constant(String text) implements XmlForm {
    @Override
    public Optional<String> toField(String element) {
      return Optional.empty();
    }

    @Override
    public Optional<String> toElement(String item) {
      return Optional.of(text);
    }

    @Override
    public String inWords() {
      return text;
    }
  }

  /**
   * Reads the cell of a table.
   *
   * @throws IllegalArgumentException if there is no such form
   */
  static XmlForm parse(String cell) {
    String[] words = cell.split(" ");
    return switch (words[0]) {
      case "" -> Plain.TEXT;
      case "data" -> Plain.DATA;
      case "list" -> Plain.LIST;
      case "compact" -> Plain.COMPACT;
      case "digits" -> Plain.DIGITS;
      case "digits2" -> Plain.TWO_DIGITS;
      case "digits3" -> Plain.THREE_DIGITS;
      case "date" -> Moment.DATE;
      case "datetime" -> Moment.DATE_TIME;
      case "year" -> words.length > 1 ? Moment.YEAR_AND_MONTH : Moment.YEAR;
      case "indicator" ->
          new Indicator(words[1], Optional.of(words[2]).filter(no -> !no.equals("absent")));
      case "constant" -> new Constant(words[1]);
      default -> throw new IllegalArgumentException("no such form");
    };
  }
}
