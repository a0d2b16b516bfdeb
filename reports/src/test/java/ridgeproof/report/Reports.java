package ridgeproof.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Set;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.report.comparison.ComparisonJson;
import ridgeproof.report.data.JsonReport;
import ridgeproof.report.text.TextReport;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/** Examines bytes and renders what was found, as the command line does. */
public final class Reports {

  public static final SpecTables TABLES = SpecTables.open();

  private static final Examiner EXAMINER = new Examiner(TABLES, ParseLimits.standard());
  private static final JsonSchema SCHEMA = schema(JsonReport.SCHEMA);
  private static final JsonSchema COMPARISON_SCHEMA = schema(ComparisonJson.SCHEMA);

  private Reports() {}

  public static FindingsReport examine(byte[] bytes, Depth depth) {
    return EXAMINER.examine(
        ByteSource.of(bytes),
        ExaminationOptions.standard().withToday(LocalDate.of(2026, 3, 2)).withDepth(depth));
  }

  /** Examines bytes as a set that the user named. */
  public static FindingsReport examineAs(String profile, byte[] bytes) {
    SubmissionProfile named =
        TABLES.profiles().stream().filter(p -> p.name().equals(profile)).findFirst().orElseThrow();
    return EXAMINER.examine(
        ByteSource.of(bytes),
        ExaminationOptions.standard()
            .withToday(LocalDate.of(2026, 3, 2))
            .withDepth(Depth.IMAGES)
            .withProfile(named));
  }

  public static FileFacts facts(byte[] bytes) {
    return new FileFacts("file.an2", bytes.length, "0".repeat(64));
  }

  static String text(byte[] bytes, FindingsReport report) {
    return TextReport.render(facts(bytes), report, RenderOptions.standard());
  }

  static String json(byte[] bytes, FindingsReport report) {
    return JsonReport.render(facts(bytes), report, RenderOptions.standard());
  }

  public static JsonNode parse(String json) {
    try {
      return new ObjectMapper().readTree(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What the published schema objects to. */
  static Set<ValidationMessage> objections(String json) {
    return SCHEMA.validate(parse(json));
  }

  /** What the published schema of comparisons objects to. */
  static Set<ValidationMessage> objectionsToComparison(String json) {
    return COMPARISON_SCHEMA.validate(parse(json));
  }

  /** What the schema in a resource objects to. */
  public static Set<ValidationMessage> objections(String resource, String json) {
    return schema(resource).validate(parse(json));
  }

  private static JsonSchema schema(String resource) {
    try (InputStream in = JsonReport.class.getResourceAsStream(resource)) {
      return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
