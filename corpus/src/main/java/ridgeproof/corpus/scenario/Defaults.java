package ridgeproof.corpus.scenario;

import java.util.List;

/** What a key of a scenario comes to when it is left out. */
final class Defaults {

  private Defaults() {}

  static <T> T orElse(T value, T otherwise) {
    return value == null ? otherwise : value;
  }

  static <T> List<T> list(List<T> values) {
    return values == null ? List.of() : List.copyOf(values);
  }

  static <T> T required(String key, T value) {
    if (value == null) {
      throw new IllegalArgumentException(key + " is missing");
    }
    return value;
  }

  static int within(String key, int value, int least, int most) {
    if (value < least || value > most) {
      throw new IllegalArgumentException(key + " is " + value + ", not " + least + " to " + most);
    }
    return value;
  }
}
