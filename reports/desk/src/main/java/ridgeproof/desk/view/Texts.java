package ridgeproof.desk.view;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/** Every text of the desk, by its key. */
public final class Texts {

  private static final String BUNDLE = "desk.properties";
  private static final String FOR_SCRIPTS = "script.";

  private final Map<String, String> texts = new TreeMap<>();

  private Texts(Properties bundle) {
    bundle.stringPropertyNames().forEach(key -> texts.put(key, bundle.getProperty(key)));
  }

  /** In American English. */
  public static Texts english() {
    Properties bundle = new Properties();
    try (InputStream in = Texts.class.getResourceAsStream(BUNDLE)) {
      bundle.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Texts(bundle);
  }

  /**
   * The text with its places {0}, {1} filled.
   *
   * @throws IllegalArgumentException if there is none of that key
   */
  public String of(String key, Object... values) {
    String text = texts.get(key);
    if (text == null) {
      throw new IllegalArgumentException("no text " + key);
    }
    for (int i = 0; i < values.length; i++) {
      text = text.replace("{" + i + "}", String.valueOf(values[i]));
    }
    return text;
  }

  /** The text for one or for another number of things. */
  public String counted(String key, long count) {
    return of(key + (count == 1 ? ".one" : ".many"), String.format(Locale.ROOT, "%,d", count));
  }

  /** What scripts say, by key. */
  public Map<String, String> forScripts() {
    Map<String, String> found = new TreeMap<>();
    texts.forEach(
        (key, text) -> {
          if (key.startsWith(FOR_SCRIPTS)) {
            found.put(key.substring(FOR_SCRIPTS.length()), text);
          }
        });
    return found;
  }

  /** Every key. */
  Iterable<String> keys() {
    return texts.keySet();
  }
}
