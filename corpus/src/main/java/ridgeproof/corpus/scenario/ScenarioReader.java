package ridgeproof.corpus.scenario;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
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
   * @throws ScenarioError naming the key, or the line where it is no TOML, and what is wrong there
   */
  public Scenario read(String name, String toml) {
    try {
      return mapper.readValue(toml, Scenario.class).named(name);
    } catch (JsonMappingException e) {
      throw new ScenarioError(name + ": " + key(e) + ": " + reason(e));
    } catch (JsonProcessingException e) {
      throw new ScenarioError(
          name + ": line " + e.getLocation().getLineNr() + ": " + e.getOriginalMessage());
    }
  }

  /** Where in the story, for instance {@code prints.boxes[2]}. */
  private static String key(JsonMappingException failure) {
    StringBuilder key = new StringBuilder();
    for (JsonMappingException.Reference step : failure.getPath()) {
      if (step.getFieldName() == null) {
        key.append('[').append(step.getIndex() + 1).append(']');
      } else {
        key.append(key.isEmpty() ? "" : ".").append(step.getFieldName());
      }
    }
    return key.isEmpty() ? "story" : key.toString();
  }

  private static String reason(JsonMappingException failure) {
    if (failure instanceof UnrecognizedPropertyException) {
      return "no such key";
    }
    boolean ours = failure.getCause() instanceof IllegalArgumentException;
    return ours ? failure.getCause().getMessage() : failure.getOriginalMessage();
  }
}
