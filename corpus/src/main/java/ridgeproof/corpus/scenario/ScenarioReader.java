package ridgeproof.corpus.scenario;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;

/** Reads scenarios from TOML; a key that means nothing is refused. */
public final class ScenarioReader {

  private final TomlMapper mapper =
      TomlMapper.builder()
          .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
          .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
          .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .build();

  /**
   * Reads one scenario.
   *
   * @param name the name of its file without the extension
   * @throws ScenarioError naming the line and what is wrong there
   */
  public Scenario read(String name, String toml) {
    try {
      return mapper.readValue(toml, Scenario.class).named(name);
    } catch (JsonProcessingException e) {
      String line = e.getLocation() == null ? "" : " line " + e.getLocation().getLineNr();
      throw new ScenarioError(name + line + ": " + e.getOriginalMessage());
    }
  }
}
