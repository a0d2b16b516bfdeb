package ridgeproof.report.catalogue;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import ridgeproof.examination.message.Explanation;
import ridgeproof.report.AsciiJson;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.TextLayout;
import ridgeproof.report.TextSanitizer;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.rule.BureauMessage;

/** What a bureau's message means, and the list of messages that are known. */
public final class MessageListing {

  /** The resource that holds the schema of {@link #json}. */
  public static final String SCHEMA = "/ridgeproof/report/message.schema.json";

  private static final int WIDTH = 80;
  private static final int MAX_RULES = 12;

  private final SpecTables tables;
  private final ReportPhrases wording;

  public MessageListing(SpecTables tables) {
    this.tables = tables;
    this.wording = new ReportPhrases(tables);
  }

  /** A line for each message. */
  public String list() {
    StringBuilder out = new StringBuilder();
    for (BureauMessage message : tables.bureauMessages()) {
      out.append(
          String.format(
              Locale.ROOT,
              "%-6s  %s (%s)%n",
              message.code().orElse(""),
              message.title(),
              message.source().known().label()));
    }
    return out.toString();
  }

  /** All that is known of a message. */
  public String text(Explanation explanation) {
    StringBuilder out = new StringBuilder();
    for (String code : explanation.unlistedCodes()) {
      TextLayout.indented(out, "", code + " is not in the published list of message codes.", WIDTH);
    }
    explanation.byCode().forEach(message -> message(out, message, "code"));
    explanation.byWords().forEach(message -> message(out, message, "words of the message"));
    explanation.families().forEach(message -> message(out, message, "first letter of the code"));
    List<String> fields = fields(explanation);
    out.append(out.isEmpty() || fields.isEmpty() ? "" : "\n");
    fields.forEach(line -> TextLayout.indented(out, "", line, WIDTH));
    if (!explanation.isKnown()) {
      TextLayout.indented(
          out,
          "",
          "No explanation is known for this message. Ask the bureau what it means, and check the"
              + " file with: ridgeproof examine FILE",
          WIDTH);
    } else {
      out.append('\n');
      TextLayout.indented(
          out,
          "",
          "To find the cause in your file, run: ridgeproof examine FILE. The bureau's own"
              + " specification decides what a message means.",
          WIDTH);
    }
    return out.toString();
  }

  private void message(StringBuilder out, BureauMessage message, String by) {
    out.append(out.isEmpty() ? "" : "\n");
    String code = message.isFamily() ? "" : message.code().map(c -> c + "  ").orElse("");
    TextLayout.indented(out, "", code + message.title(), WIDTH);
    TextLayout.indented(out, "  meaning     ", message.meaning(), WIDTH);
    TextLayout.indented(out, "  what to do  ", message.remedy(), WIDTH);
    String lead = "  rules       ";
    for (String line : rules(message)) {
      TextLayout.indented(out, lead, line, WIDTH);
      lead = " ".repeat(lead.length());
    }
    TextLayout.indented(out, "  found by    ", by, WIDTH);
    TextLayout.indented(out, "  source      ", source(message), WIDTH);
  }

  private List<String> rules(BureauMessage message) {
    int more = message.rules().size() - MAX_RULES;
    return Stream.concat(
            message.rules().stream()
                .limit(MAX_RULES)
                .map(id -> id + " " + tables.catalogue().rule(id).title()),
            more > 0 ? Stream.of("and " + more + " more") : Stream.empty())
        .toList();
  }

  private String source(BureauMessage message) {
    String place = message.source().place();
    return wording.title(message.source().document())
        + (place.isEmpty() ? "" : ", " + place)
        + " ("
        + message.source().known().label()
        + ")";
  }

  private List<String> fields(Explanation explanation) {
    return explanation.fields().stream()
        .flatMap(field -> name(field).stream().map(name -> "Field " + field + " is: " + name + "."))
        .toList();
  }

  private Optional<String> name(FieldNumber field) {
    return tables.layout(field.recordType()).rows().stream()
        .filter(row -> row.number().equals(field) && row.item().isEmpty())
        .map(FieldRow::name)
        .findFirst();
  }

  /** The same for a program. */
  public String json(Explanation explanation) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = AsciiJson.factory().createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeStringField("schema", "ridgeproof-message");
      json.writeNumberField("schemaVersion", 1);
      json.writeStringField("message", TextSanitizer.of(explanation.text()));
      json.writeBooleanField("known", explanation.isKnown());
      json.writeArrayFieldStart("unlistedCodes");
      for (String code : explanation.unlistedCodes()) {
        json.writeString(code);
      }
      json.writeEndArray();
      json.writeArrayFieldStart("explanations");
      write(json, explanation.byCode(), "code");
      write(json, explanation.byWords(), "words");
      write(json, explanation.families(), "first letter");
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  private void write(JsonGenerator json, List<BureauMessage> messages, String by)
      throws IOException {
    for (BureauMessage message : messages) {
      json.writeStartObject();
      json.writeStringField("title", message.title());
      if (message.code().isPresent()) {
        json.writeStringField("code", message.code().get());
      }
      json.writeStringField("foundBy", by);
      json.writeStringField("meaning", message.meaning());
      json.writeStringField("whatToDo", message.remedy());
      json.writeArrayFieldStart("rules");
      for (String id : message.rules()) {
        json.writeString(id);
      }
      json.writeEndArray();
      json.writeStringField("source", source(message));
      json.writeStringField("known", message.source().known().label());
      json.writeEndObject();
    }
  }
}
