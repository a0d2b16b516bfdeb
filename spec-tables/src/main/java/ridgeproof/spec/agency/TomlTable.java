package ridgeproof.spec.agency;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import ridgeproof.spec.agency.ProfileReading.Problem;

/** A table of a TOML document, which notes what cannot be used and goes on. */
final class TomlTable {

  private final JsonNode node;
  private final List<String> path;
  private final TomlPlaces places;
  private final List<Problem> problems;
  private final Set<String> asked = new LinkedHashSet<>();

  TomlTable(JsonNode node, List<String> path, TomlPlaces places, List<Problem> problems) {
    this.node = node;
    this.path = path;
    this.places = places;
    this.problems = problems;
  }

  List<String> keys() {
    List<String> keys = new ArrayList<>();
    node.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  Optional<String> text(String key) {
    Optional<JsonNode> value = value(key);
    if (value.isPresent() && (!value.get().isTextual() || value.get().textValue().isBlank())) {
      atValue(key, key + " must be a text in quotes");
      return Optional.empty();
    }
    return value.map(JsonNode::textValue);
  }

  Optional<String> requiredText(String key) {
    if (value(key).isEmpty()) {
      atTable(key + " is missing");
    }
    return text(key);
  }

  /** A text that a parser turns into something; its objection is noted. */
  <T> Optional<T> parsed(String key, Function<String, T> parser) {
    return text(key).flatMap(text -> tried(key, text, parser));
  }

  /** Turns a text of this key into something; an objection is noted. */
  <T> Optional<T> tried(String key, String text, Function<String, T> parser) {
    try {
      return Optional.of(parser.apply(text));
    } catch (IllegalArgumentException e) {
      atValue(key, key + " \"" + text + "\": " + e.getMessage());
      return Optional.empty();
    }
  }

  OptionalInt integer(String key, int least, int most) {
    Optional<JsonNode> value = value(key);
    if (value.isEmpty()) {
      return OptionalInt.empty();
    }
    if (!isWhole(value.get(), least, most)) {
      atValue(key, key + " must be a whole number from " + least + " to " + most);
      return OptionalInt.empty();
    }
    return OptionalInt.of(value.get().intValue());
  }

  OptionalDouble number(String key, double least, double most) {
    Optional<JsonNode> value = value(key);
    if (value.isEmpty()) {
      return OptionalDouble.empty();
    }
    double number = value.get().doubleValue();
    if (!value.get().isNumber() || !(number >= least && number <= most)) {
      atValue(
          key,
          String.format(Locale.ROOT, "%s must be a number from %.0f to %.0f", key, least, most));
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(number);
  }

  boolean flag(String key) {
    Optional<JsonNode> value = value(key);
    if (value.isPresent() && !value.get().isBoolean()) {
      atValue(key, key + " must be true or false");
    }
    return value.map(JsonNode::booleanValue).orElse(false);
  }

  List<String> texts(String key) {
    List<String> texts = new ArrayList<>();
    Optional<JsonNode> value = value(key);
    if (value.isPresent()) {
      boolean sound = value.get().isArray();
      for (JsonNode element : value.get()) {
        sound &= element.isTextual() && !element.textValue().isBlank();
        texts.add(element.asText());
      }
      if (!sound) {
        atValue(key, key + " must be a list of texts in quotes");
        return List.of();
      }
    }
    return texts;
  }

  List<Integer> integers(String key, int least, int most) {
    List<Integer> numbers = new ArrayList<>();
    Optional<JsonNode> value = value(key);
    if (value.isPresent()) {
      boolean sound = value.get().isArray();
      for (JsonNode element : value.get()) {
        sound &= isWhole(element, least, most);
        numbers.add(element.intValue());
      }
      if (!sound) {
        atValue(key, key + " must be a list of whole numbers from " + least + " to " + most);
        return List.of();
      }
    }
    return numbers;
  }

  Optional<TomlTable> table(String key) {
    Optional<JsonNode> value = value(key);
    if (value.isPresent() && !value.get().isObject()) {
      atValue(key, key + " must be a table, [" + key + "]");
      return Optional.empty();
    }
    return value.map(found -> new TomlTable(found, below(key), places, problems));
  }

  List<TomlTable> tables(String key) {
    List<TomlTable> tables = new ArrayList<>();
    Optional<JsonNode> value = value(key);
    if (value.isPresent()) {
      boolean sound = value.get().isArray();
      for (JsonNode element : value.get()) {
        sound &= element.isObject();
        List<String> inner = new ArrayList<>(below(key));
        inner.add(Integer.toString(tables.size()));
        tables.add(new TomlTable(element, List.copyOf(inner), places, problems));
      }
      if (!sound) {
        atValue(key, key + " must be written as tables, each beginning with [[" + key + "]]");
        return List.of();
      }
    }
    return tables;
  }

  /** Notes every key that nobody asked for: a misspelt key must not pass as a wish granted. */
  void rejectOthers() {
    for (String key : keys()) {
      if (!asked.contains(key)) {
        TomlPlaces.Place place = places.key(below(key));
        problems.add(
            new Problem(
                place.line(),
                place.column(),
                "unknown key " + key + "; allowed here: " + String.join(", ", asked)));
      }
    }
  }

  void atValue(String key, String message) {
    TomlPlaces.Place place = places.value(below(key));
    problems.add(new Problem(place.line(), place.column(), message));
  }

  void atKey(String key, String message) {
    TomlPlaces.Place place = places.key(below(key));
    problems.add(new Problem(place.line(), place.column(), message));
  }

  private void atTable(String message) {
    TomlPlaces.Place place = places.key(path);
    problems.add(new Problem(place.line(), place.column(), message));
  }

  private Optional<JsonNode> value(String key) {
    asked.add(key);
    return Optional.ofNullable(node.get(key));
  }

  private List<String> below(String key) {
    List<String> inner = new ArrayList<>(path);
    inner.add(key);
    return List.copyOf(inner);
  }

  private static boolean isWhole(JsonNode value, int least, int most) {
    return value.isIntegralNumber()
        && value.canConvertToInt()
        && value.intValue() >= least
        && value.intValue() <= most;
  }
}
