package ridgeproof.gate;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The record of a gate: JSON, a line for each step, only ever added to. */
final class GateRecord {

  private final GateFiles files;
  private final Path file;
  private final ObjectMapper json = new ObjectMapper();
  private final List<Step> read = new ArrayList<>();
  private long consumed;

  GateRecord(GateFiles files, Path file) {
    this.files = files;
    this.file = file;
  }

  /**
   * Every step that was written whole, by whichever process, in the order of writing. What was read
   * before is not read again: a record grows for years.
   */
  List<Step> steps() throws IOException {
    if (!files.exists(file)) {
      return List.of();
    }
    byte[] news = files.readFrom(file, consumed);
    int whole = news.length;
    while (whole > 0 && news[whole - 1] != '\n') {
      whole--;
    }
    for (String line : new String(news, 0, whole, StandardCharsets.UTF_8).split("\n")) {
      step(line).ifPresent(read::add);
    }
    consumed += whole;
    List<Step> steps = new ArrayList<>(read);
    // The last line has no end until another one follows.
    step(new String(news, whole, news.length - whole, StandardCharsets.UTF_8))
        .ifPresent(steps::add);
    return steps;
  }

  /** A line that was cut off by the end of a process is no step: what it says was not done. */
  private Optional<Step> step(String line) {
    try {
      JsonNode node = json.readTree(line);
      if (node == null || !node.isObject()) {
        return Optional.empty();
      }
      Instant time = Instant.parse(text(node, "time"));
      String id = text(node, "id");
      return switch (text(node, "step")) {
        case "taking" -> Optional.of(new Step.Taking(time, id, text(node, "name")));
        case "decided" ->
            Optional.of(
                new Step.Decided(
                    time,
                    id,
                    text(node, "to"),
                    text(node, "as"),
                    text(node, "sha256"),
                    text(node, "verdict"),
                    text(node, "why")));
        case "releasing" ->
            Optional.of(
                new Step.Releasing(
                    time, id, text(node, "as"), text(node, "reason"), text(node, "by")));
        default -> Optional.empty();
      };
    } catch (JsonProcessingException | DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private static String text(JsonNode node, String key) {
    return node.path(key).asText("");
  }

  /** Writes a step. It is on the disk when this returns. */
  void add(Step step) throws IOException {
    ObjectNode node = json.createObjectNode();
    node.put("time", step.time().toString());
    node.put("id", step.id());
    if (step instanceof Step.Taking taking) {
      node.put("step", "taking").put("name", taking.name());
    } else if (step instanceof Step.Decided decided) {
      node.put("step", "decided")
          .put("to", decided.to())
          .put("as", decided.as())
          .put("sha256", decided.sha256())
          .put("verdict", decided.verdict())
          .put("why", decided.why());
    } else if (step instanceof Step.Releasing releasing) {
      node.put("step", "releasing")
          .put("as", releasing.as())
          .put("reason", releasing.reason())
          .put("by", releasing.by());
    }
    // A line feed first: it ends the line that an earlier process may not have ended.
    files.append(file, ("\n" + node).getBytes(StandardCharsets.UTF_8));
  }
}
