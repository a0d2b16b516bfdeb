package ridgeproof.report.data;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ridgeproof.examination.FindingsReport;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.report.AsciiJson;
import ridgeproof.report.FileFacts;
import ridgeproof.report.ObservedText;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.ToolFacts;
import ridgeproof.report.catalogue.RuleListing;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.rule.Severity;

/**
 * Findings as a SARIF 2.1.0 log (OASIS Static Analysis Results Interchange Format), one run for all
 * files. Results are written when they are added; the files and rules that they point to, small and
 * known only then, follow at the end, since members of a JSON object have no order (RFC 8259).
 */
public final class SarifReport {

  static final String SCHEMA = "https://json.schemastore.org/sarif-2.1.0.json";

  private static final JsonFactory JSON = AsciiJson.factory();
  private static final String HEX = "0123456789ABCDEF";

  private final ReportPhrases wording;
  private final ToolFacts tool;
  private final RenderOptions options;
  private final JsonGenerator json;
  private final List<FileFacts> files = new ArrayList<>();
  private final Map<String, RuleRow> rules = new LinkedHashMap<>();
  private final Map<String, Integer> ruleIndex = new HashMap<>();

  /**
   * @param out left open
   */
  public SarifReport(SpecTables tables, ToolFacts tool, Writer out, RenderOptions options)
      throws IOException {
    this.wording = new ReportPhrases(tables);
    this.tool = tool;
    this.options = options;
    this.json = JSON.createGenerator(out);
    json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
    json.useDefaultPrettyPrinter();
  }

  /** Appends the findings of a file. */
  public void add(FileFacts file, FindingsReport report) throws IOException {
    if (files.isEmpty()) {
      begin();
    }
    files.add(file);
    ObservedText observed = new ObservedText(report, options.showPersonal());
    for (Finding finding : options.findings(report)) {
      ruleIndex.putIfAbsent(finding.ruleId(), ruleIndex.size());
      rules.putIfAbsent(finding.ruleId(), finding.rule());
      writeResult(finding, observed.of(finding));
    }
    json.flush();
  }

  private void begin() throws IOException {
    json.writeStartObject();
    json.writeStringField("$schema", SCHEMA);
    json.writeStringField("version", "2.1.0");
    json.writeArrayFieldStart("runs");
    json.writeStartObject();
    json.writeStringField("columnKind", "unicodeCodePoints");
    json.writeArrayFieldStart("results");
  }

  /** Writes what follows the results; nothing where no file was added. */
  public void end() throws IOException {
    if (files.isEmpty()) {
      return;
    }
    json.writeEndArray();
    json.writeArrayFieldStart("artifacts");
    for (FileFacts file : files) {
      writeArtifact(json, file);
    }
    json.writeEndArray();
    writeTool();
    json.writeEndObject();
    json.writeEndArray();
    json.writeEndObject();
    json.close();
  }

  private void writeTool() throws IOException {
    json.writeObjectFieldStart("tool");
    json.writeObjectFieldStart("driver");
    json.writeStringField("name", "Ridgeproof");
    json.writeStringField("version", tool.version());
    json.writeArrayFieldStart("rules");
    for (RuleRow rule : rules.values()) {
      json.writeStartObject();
      json.writeStringField("id", rule.id());
      writeText(json, "shortDescription", rule.title());
      writeText(json, "fullDescription", RuleListing.spoken(rule.explanation()));
      writeText(json, "help", RuleListing.spoken(rule.remedy()));
      json.writeObjectFieldStart("defaultConfiguration");
      json.writeStringField("level", level(rule.severity()));
      json.writeEndObject();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndObject();
  }

  private static void writeArtifact(JsonGenerator json, FileFacts file) throws IOException {
    json.writeStartObject();
    json.writeObjectFieldStart("location");
    json.writeStringField("uri", uri(file.name()));
    json.writeEndObject();
    json.writeNumberField("length", file.bytes());
    json.writeObjectFieldStart("hashes");
    json.writeStringField("sha-256", file.sha256());
    json.writeEndObject();
    json.writeEndObject();
  }

  private void writeResult(Finding finding, String observed) throws IOException {
    int artifact = files.size() - 1;
    Location place = finding.location();
    json.writeStartObject();
    json.writeStringField("ruleId", finding.ruleId());
    json.writeNumberField("ruleIndex", ruleIndex.get(finding.ruleId()));
    json.writeStringField("level", level(finding.severity()));
    if (!finding.repeats().isEmpty()) {
      json.writeNumberField("occurrenceCount", 1 + finding.repeats().size());
    }
    writeText(
        json,
        "message",
        finding.rule().title()
            + ": found "
            + observed
            + ", required "
            + TextSanitizer.of(finding.required())
            + ". "
            + TextSanitizer.of(finding.remedy()));
    json.writeArrayFieldStart("locations");
    json.writeStartObject();
    json.writeObjectFieldStart("physicalLocation");
    json.writeObjectFieldStart("artifactLocation");
    json.writeStringField("uri", uri(files.get(artifact).name()));
    json.writeNumberField("index", artifact);
    json.writeEndObject();
    if (place.bytes().isPresent()) {
      json.writeObjectFieldStart("region");
      if (place.text().isPresent()) {
        json.writeNumberField("startLine", place.text().get().line());
        json.writeNumberField("startColumn", place.text().get().column());
      }
      json.writeNumberField("byteOffset", place.bytes().get().offset());
      json.writeNumberField("byteLength", place.bytes().get().length());
      json.writeEndObject();
    }
    json.writeEndObject();
    json.writeArrayFieldStart("logicalLocations");
    json.writeStartObject();
    json.writeStringField("fullyQualifiedName", wording.whereabouts(place));
    json.writeStringField("kind", place.field().isPresent() ? "member" : "object");
    json.writeEndObject();
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void writeText(JsonGenerator json, String name, String text) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeStringField("text", text);
    json.writeEndObject();
  }

  private static String level(Severity severity) {
    return switch (severity) {
      case BLOCKING -> "error";
      case LIKELY -> "warning";
      case ADVICE, NOTE -> "note";
    };
  }

  /** The file name as a relative reference (RFC 3986): all but unreserved characters escaped. */
  public static String uri(String name) {
    StringBuilder uri = new StringBuilder();
    for (byte b : name.getBytes(StandardCharsets.UTF_8)) {
      int c = b & 0xFF;
      if (c < 0x80 && (Character.isLetterOrDigit(c) || "-._~".indexOf(c) >= 0)) {
        uri.append((char) c);
      } else {
        uri.append('%').append(HEX.charAt(c >> 4)).append(HEX.charAt(c & 0xF));
      }
    }
    return uri.toString();
  }
}
