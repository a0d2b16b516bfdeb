package ridgeproof.corpus.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The stories that come with Ridgeproof, all of the invented Tidewater Harbour Pilots' licensing
 * office.
 */
public final class DemonstrationSet {

  private static final String INDEX = "index.txt";

  private DemonstrationSet() {}

  /** Every story, in the order in which a newcomer meets them. */
  public static List<Scenario> scenarios() {
    return names().stream().map(DemonstrationSet::scenario).toList();
  }

  /** Their names, in the same order. */
  public static List<String> names() {
    return resource(INDEX).lines().filter(line -> !line.isBlank()).toList();
  }

  /**
   * One story.
   *
   * @throws ScenarioError when there is none of that name
   */
  public static Scenario scenario(String name) {
    if (!names().contains(name)) {
      throw new ScenarioError("no story " + name);
    }
    return new ScenarioReader().read(name, resource(name + ".toml"));
  }

  private static String resource(String name) {
    try (InputStream in = DemonstrationSet.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new ScenarioError("no resource " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
