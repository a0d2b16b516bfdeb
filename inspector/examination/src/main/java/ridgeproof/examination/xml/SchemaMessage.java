package ridgeproof.examination.xml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A validator's message in our words, without a value of the file.
 *
 * @param found what departs
 * @param required what the schema asks for
 */
record SchemaMessage(String found, String required) {

  private static final int MAX_NAMES = 4;
  private static final Pattern KEY = Pattern.compile("^([a-zA-Z-]+[\\w.-]*):");
  private static final Pattern QUOTED = Pattern.compile("'([^']*)'");
  private static final Pattern NAMES = Pattern.compile("\"[^\"]*\":([\\w-]+)");

  /** The message in our words; none for one that only repeats another. */
  static Optional<SchemaMessage> of(String message) {
    Matcher key = KEY.matcher(message);
    String rule = key.find() ? key.group(1) : "";
    List<String> quoted = new ArrayList<>();
    for (Matcher m = QUOTED.matcher(message); m.find(); ) {
      quoted.add(m.group(1));
    }
    return switch (rule) {
      case "cvc-type.3.1.3", "cvc-complex-type.2.2", "cvc-attribute.3" -> Optional.empty();
      case "cvc-complex-type.2.4.a", "cvc-complex-type.2.4.d", "cvc-complex-type.2.4.e" ->
          said("an element that is not expected here", "element " + names(quoted, 1));
      case "cvc-complex-type.2.4.b" ->
          said("an element that ends too early", "element " + names(quoted, 1));
      case "cvc-complex-type.2.3" -> said("text between elements", "elements alone");
      case "cvc-elt.1", "cvc-elt.1.a" ->
          said("an element that the schema does not begin with", "an element of the schema");
      case "cvc-enumeration-valid" -> said("a value that is not listed", "a value of the list");
      case "cvc-pattern-valid" -> said("a value of another form", "the form " + last(quoted, 1));
      case "cvc-datatype-valid.1.2.1" ->
          said("a value of another type", "a value of type " + last(quoted, 0));
      case "cvc-minLength-valid", "cvc-maxLength-valid", "cvc-length-valid" ->
          said("a value of another length", "the length that the schema states");
      case "cvc-minInclusive-valid", "cvc-maxInclusive-valid" ->
          said("a number out of range", "the range that the schema states");
      case "cvc-complex-type.4" -> said("an attribute is missing", "the attribute of the schema");
      case "cvc-complex-type.3.2.2" ->
          said("an attribute that is not expected here", "the attributes of the schema");
      case "cvc-id.1" -> said("a reference to an id that is not there", "an element with the id");
      default -> said("a departure from the schema", rule.isEmpty() ? "the schema" : rule);
    };
  }

  private static Optional<SchemaMessage> said(String found, String required) {
    return Optional.of(new SchemaMessage(found, required));
  }

  /** The names in a list such as {@code {"http://...":Date, ...}}. */
  private static String names(List<String> quoted, int from) {
    String all = String.join(" ", quoted.subList(Math.min(from, quoted.size()), quoted.size()));
    List<String> names = NAMES.matcher(all).results().map(m -> m.group(1)).distinct().toList();
    String listed = names.stream().limit(MAX_NAMES).collect(Collectors.joining(" or "));
    return listed.isEmpty() ? "none here" : listed + (names.size() > MAX_NAMES ? " or others" : "");
  }

  private static String last(List<String> quoted, int fromTheEnd) {
    int at = quoted.size() - 1 - fromTheEnd;
    return at >= 0 ? quoted.get(at) : "that the schema states";
  }
}
