package ridgeproof.report.catalogue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import ridgeproof.report.CsvRow;
import ridgeproof.report.ReportPhrases;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.rule.RuleRow;

/** The catalogue of rules for a program or a spreadsheet. */
public final class RuleExport {

  /** The resource that holds the schema of {@link #json}. */
  public static final String SCHEMA = "/ridgeproof/report/rules.schema.json";

  private static final JsonFactory JSON = new JsonFactory();

  private final ReportPhrases wording;

  public RuleExport(SpecTables tables) {
    this.wording = new ReportPhrases(tables);
  }

  /** An array of objects, without a line break at its end. */
  public String json(List<RuleRow> rules) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = JSON.createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      json.writeStartArray();
      for (RuleRow rule : rules) {
        write(rule, json);
      }
      json.writeEndArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void write(RuleRow rule, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", rule.id());
    json.writeStringField("area", rule.area());
    json.writeStringField("severity", rule.severity().name());
    json.writeStringField("title", rule.title());
    json.writeStringField("explanation", rule.explanation());
    json.writeStringField("remedy", rule.remedy());
    json.writeObjectFieldStart("source");
    json.writeStringField("document", rule.source().document());
    json.writeStringField("title", wording.title(rule.source().document()));
    json.writeStringField("place", rule.source().place());
    json.writeStringField("known", rule.source().known().label());
    json.writeEndObject();
    json.writeEndObject();
  }

  /** A line of column names, then a line a rule (RFC 4180, with line feeds). */
  public String csv(List<RuleRow> rules) {
    StringBuilder out = new StringBuilder();
    out.append("id,severity,title,explanation,remedy,document,place,known\n");
    for (RuleRow rule : rules) {
      out.append(
              line(
                  rule.id(),
                  rule.severity().name(),
                  rule.title(),
                  rule.explanation(),
                  rule.remedy(),
                  rule.source().document(),
                  rule.source().place(),
                  rule.source().known().label()))
          .append('\n');
    }
    return out.toString();
  }

  private static String line(String... cells) {
    return CsvRow.joined(List.of(cells));
  }
}
