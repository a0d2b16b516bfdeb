package ridgeproof.cli.configuration;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ConfigurationPlaceTest {

  private static final String HOME = "/home/clerk";

  @Test
  void eachSystemHasItsUsualPlace() {
    assertEquals(
        Path.of("/home/clerk/.config/ridgeproof/config.toml"),
        ConfigurationPlace.of(Map.of(), "Linux", HOME));
    assertEquals(
        Path.of("/home/clerk/Library/Application Support/ridgeproof/config.toml"),
        ConfigurationPlace.of(Map.of("XDG_CONFIG_HOME", "/elsewhere"), "Mac OS X", HOME));
    assertEquals(
        Path.of("/roaming/ridgeproof/config.toml"),
        ConfigurationPlace.of(Map.of("APPDATA", "/roaming"), "Windows 11", HOME));
    assertEquals(
        Path.of("/home/clerk/AppData/Roaming/ridgeproof/config.toml"),
        ConfigurationPlace.of(Map.of(), "Windows 11", HOME));
  }

  @Test
  void theXdgVariableCountsWhereItIsAPathFromTheRoot() {
    assertEquals(
        Path.of("/settings/ridgeproof/config.toml"),
        ConfigurationPlace.of(Map.of("XDG_CONFIG_HOME", "/settings"), "Linux", HOME));
    assertEquals(
        Path.of("/home/clerk/.config/ridgeproof/config.toml"),
        ConfigurationPlace.of(Map.of("XDG_CONFIG_HOME", "settings"), "Linux", HOME));
    assertEquals(
        Path.of("/home/clerk/.config/ridgeproof/config.toml"),
        ConfigurationPlace.of(Map.of("XDG_CONFIG_HOME", ""), "Linux", HOME));
  }
}
