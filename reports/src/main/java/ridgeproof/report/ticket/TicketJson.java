package ridgeproof.report.ticket;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import ridgeproof.report.AsciiJson;
import ridgeproof.report.ticket.Ticket.Line;
import ridgeproof.report.ticket.Ticket.Section;

/** A ticket for the program of a help desk, by {@code ticket.schema.json}. */
final class TicketJson {

  static final int SCHEMA_VERSION = 1;

  private TicketJson() {}

  static String render(List<Section> sections) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = AsciiJson.factory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeStringField("schema", "ridgeproof-ticket");
      json.writeNumberField("schemaVersion", SCHEMA_VERSION);
      json.writeArrayFieldStart("sections");
      for (Section section : sections) {
        json.writeStartObject();
        json.writeStringField("title", section.title());
        json.writeArrayFieldStart("lines");
        for (Line line : section.lines()) {
          write(json, line);
        }
        json.writeEndArray();
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static void write(JsonGenerator json, Line line) throws IOException {
    json.writeStartObject();
    if (line instanceof Line.Prose prose) {
      json.writeStringField("kind", "text");
      json.writeStringField("text", prose.text());
    } else if (line instanceof Line.Outcome outcome) {
      json.writeStringField("kind", "verdict");
      json.writeStringField("verdict", outcome.verdict().name());
    } else if (line instanceof Line.Fact fact) {
      json.writeStringField("kind", "fact");
      json.writeStringField("name", fact.name());
      json.writeStringField("value", fact.value());
    } else if (line instanceof Line.Step step) {
      json.writeStringField("kind", "step");
      json.writeNumberField("number", step.number());
      json.writeStringField("text", step.text());
      json.writeStringField("answers", step.answers());
    } else if (line instanceof Line.Rule rule) {
      json.writeStringField("kind", "rule");
      json.writeStringField("severity", rule.severity());
      json.writeStringField("rule", rule.id());
      json.writeStringField("title", rule.title());
    } else if (line instanceof Line.Place place) {
      json.writeStringField("kind", "place");
      json.writeStringField("where", place.where());
      json.writeStringField("found", place.found());
      json.writeStringField("required", place.required());
    } else if (line instanceof Line.Room room) {
      json.writeStringField("kind", "answer");
      json.writeStringField("name", room.name());
      json.writeStringField("value", "");
    }
    json.writeEndObject();
  }
}
