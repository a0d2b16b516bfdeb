package ridgeproof.report.data;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RecommendedAction;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.report.AsciiJson;
import ridgeproof.report.FieldValues;
import ridgeproof.report.FileFacts;
import ridgeproof.report.ObservedText;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.prints.PrintScores;
import ridgeproof.spec.agency.RelaxedRule;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.table.Source;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.LogicalRecord;

/** The report for a machine, by {@code findings-report.schema.json}. */
public final class JsonReport {

  /** The version of the schema; a change that breaks a reader raises it. */
  public static final int SCHEMA_VERSION = 1;

  /** Where the schema stands on the class path. */
  public static final String SCHEMA = "/ridgeproof/report/findings-report.schema.json";

  /** Further places that are listed with a repeated finding. */
  private static final int FIRST_REPEATS = 10;

  private static final JsonFactory JSON = AsciiJson.factory();

  private final JsonGenerator json;
  private final RenderOptions options;
  private final ReportPhrases wording;
  private final ObservedText observed;
  private final RidgesJson ridges;
  private final PrintScores scores;
  private final FieldValues values;

  private JsonReport(JsonGenerator json, FindingsReport report, RenderOptions options) {
    this.json = json;
    this.options = options;
    this.wording = new ReportPhrases(report.tables());
    this.observed = new ObservedText(report, options.showPersonal());
    this.values =
        new FieldValues(report.tables(), report.transaction().version(), options.showPersonal());
    this.ridges = new RidgesJson(json, options.showPersonal());
    this.scores = new PrintScores(report);
  }

  /** One object, on several lines, without a line break at its end. */
  public static String render(FileFacts file, FindingsReport report, RenderOptions options) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = JSON.createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      new JsonReport(json, report, options).write(file, report);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void write(FileFacts file, FindingsReport report) throws IOException {
    json.writeStartObject();
    json.writeStringField("schema", "ridgeproof-findings");
    json.writeNumberField("schemaVersion", SCHEMA_VERSION);
    json.writeObjectFieldStart("file");
    json.writeStringField("name", file.name());
    json.writeNumberField("bytes", file.bytes());
    json.writeStringField("sha256", file.sha256());
    json.writeEndObject();
    json.writeStringField("verdict", report.verdict().name());
    json.writeStringField("depth", report.depth().name().toLowerCase(Locale.ROOT));
    json.writeStringField("asOf", report.asOf().toString());
    json.writeBooleanField("personalValuesShown", options.showPersonal());
    writeTransaction(report);
    json.writeArrayFieldStart("relaxedRules");
    for (RelaxedRule rule : report.relaxed()) {
      writeRelaxed(rule);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("actions");
    for (RecommendedAction action : report.actions()) {
      writeAction(action);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("records");
    Map<Integer, ExaminedImage> images = report.imagesByRecord();
    for (LogicalRecord record : report.transaction().records()) {
      writeRecord(record, Optional.ofNullable(images.get(record.ordinal())));
    }
    json.writeEndArray();
    if (report.sequence().isPresent()) {
      ridges.writeSequence(report.sequence().get().answers());
    }
    json.writeArrayFieldStart("findings");
    for (Finding finding : options.findings(report)) {
      writeFinding(finding);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("cautions");
    for (String caution : ReportPhrases.CAUTIONS) {
      json.writeString(caution);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void writeTransaction(FindingsReport report) throws IOException {
    json.writeObjectFieldStart("transaction");
    if (report.transaction().header().isPresent()) {
      json.writeStringField(
          "version", String.format(Locale.ROOT, "%04d", report.transaction().version()));
      writeOptional(
          "statedVersion",
          report
              .transaction()
              .statedVersion()
              .filter(text -> report.transaction().isVersionAssumed())
              .map(text -> values.item(new FieldNumber(1, 2), 1, text)));
      writeOptional("typeOfTransaction", report.transaction().typeOfTransaction());
      json.writeStringField("characterSet", report.transaction().encoding().code());
    }
    if (report.profile().isPresent()) {
      json.writeObjectFieldStart("profile");
      json.writeStringField("name", report.profile().get().name());
      json.writeBooleanField("implied", !report.profileNamed());
      json.writeEndObject();
    }
    if (!report.transaction().records().isEmpty()) {
      json.writeObjectFieldStart("completeness");
      json.writeBooleanField("checkedByType", report.completenessGap().isEmpty());
      writeOptional("why", report.completenessGap());
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  private void writeRelaxed(RelaxedRule rule) throws IOException {
    json.writeStartObject();
    json.writeStringField("rule", rule.ruleId());
    json.writeStringField("title", wording.ruleTitle(rule));
    json.writeStringField("published", rule.published());
    json.writeStringField("now", rule.now());
    json.writeEndObject();
  }

  private void writeAction(RecommendedAction action) throws IOException {
    json.writeStartObject();
    json.writeStringField("remedy", action.remedy());
    json.writeStringField("severity", action.severity().name());
    json.writeArrayFieldStart("rules");
    for (String id : action.findings().stream().map(Finding::ruleId).distinct().toList()) {
      json.writeString(id);
    }
    json.writeEndArray();
    json.writeNumberField("findings", action.findings().stream().mapToInt(Finding::count).sum());
    json.writeEndObject();
  }

  private void writeRecord(LogicalRecord record, Optional<ExaminedImage> image) throws IOException {
    json.writeStartObject();
    json.writeNumberField("ordinal", record.ordinal());
    json.writeNumberField("type", record.type());
    json.writeStringField("name", wording.recordType(record.type()));
    writeOptional("idc", record.idc());
    json.writeNumberField("offset", record.range().offset());
    json.writeNumberField("length", record.range().length());
    json.writeNumberField("fields", record.fields().size());
    if (image.isPresent()) {
      writeImage(image.get());
    }
    json.writeEndObject();
  }

  private void writeImage(ExaminedImage image) throws IOException {
    json.writeObjectFieldStart("image");
    json.writeArrayFieldStart("positions");
    for (int position : image.positions()) {
      json.writeNumber(position);
    }
    json.writeEndArray();
    json.writeStringField("positionName", wording.positions(image));
    writeOptional("impressionType", image.impression());
    writeOptional("width", image.width());
    writeOptional("height", image.height());
    writeOptional("bitsPerPixel", image.bitsPerPixel());
    if (image.density().isPresent()) {
      json.writeNumberField("horizontalPpi", rounded(image.density().get().horizontalPpi()));
      json.writeNumberField("verticalPpi", rounded(image.density().get().verticalPpi()));
      writeInches("widthInches", image.width(), image.density().get().horizontalPpi());
      writeInches("heightInches", image.height(), image.density().get().verticalPpi());
    }
    Optional<FieldNumber> code = image.layout().compression();
    writeOptional(
        "compression",
        image.compression().flatMap(text -> code.map(field -> values.item(field, 1, text))));
    writeOptional("format", image.statedFormat().map(format -> format.label()));
    if (image.compressionRatio().isPresent()) {
      json.writeNumberField("compressionRatio", rounded(image.compressionRatio().get()));
    }
    if (image.data().isPresent()) {
      json.writeNumberField("dataOffset", image.data().get().origin());
      json.writeNumberField("dataLength", image.data().get().length());
    }
    if (image.pixels().isPresent()) {
      json.writeObjectFieldStart("pixels");
      json.writeNumberField("width", image.pixels().get().width());
      json.writeNumberField("height", image.pixels().get().height());
      json.writeNumberField("grayLevels", image.pixels().get().grayLevels());
      json.writeNumberField("darkest", image.pixels().get().darkest());
      json.writeNumberField("brightest", image.pixels().get().brightest());
      json.writeEndObject();
    }
    if (image.ridges().isPresent()) {
      ridges.write(image, image.ridges().get(), scores);
    }
    json.writeEndObject();
  }

  private void writeInches(String name, OptionalInt pixels, double ppi) throws IOException {
    if (pixels.isPresent()) {
      json.writeNumberField(name, rounded(pixels.getAsInt() / ppi));
    }
  }

  private void writeFinding(Finding finding) throws IOException {
    json.writeStartObject();
    json.writeStringField("rule", finding.ruleId());
    json.writeStringField("severity", finding.severity().name());
    json.writeStringField("title", finding.rule().title());
    writeLocation(finding.location());
    writeObserved(finding);
    writeStanding(finding);
    json.writeStringField("required", finding.required());
    json.writeStringField("explanation", finding.explanation());
    json.writeStringField("remedy", finding.remedy());
    writeSource(finding.source());
    json.writeArrayFieldStart("evidence");
    for (Measure measure : finding.evidence()) {
      json.writeStartObject();
      json.writeStringField("name", measure.name());
      json.writeNumberField("value", measure.value());
      json.writeStringField("unit", measure.unit());
      if (measure.limit().isPresent()) {
        json.writeNumberField("limit", measure.limit().getAsDouble());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void writeObserved(Finding finding) throws IOException {
    boolean masked = observed.isMasked(finding);
    json.writeObjectFieldStart("observed");
    json.writeBooleanField("masked", masked);
    if (!masked) {
      json.writeStringField("text", finding.observed().text());
    }
    json.writeEndObject();
  }

  /** What it explains, what explains it, and where it is repeated. */
  private void writeStanding(Finding finding) throws IOException {
    writeOptional("explains", finding.explains());
    if (finding.causedBy().isPresent()) {
      json.writeObjectFieldStart("causedBy");
      json.writeStringField("rule", finding.causedBy().get().ruleId());
      writeLocation(finding.causedBy().get().location());
      json.writeEndObject();
    }
    if (finding.count() > 1) {
      json.writeNumberField("count", finding.count());
      json.writeArrayFieldStart("repeats");
      for (Finding place : finding.repeats().stream().limit(FIRST_REPEATS).toList()) {
        json.writeStartObject();
        writeLocation(place.location());
        writeObserved(place);
        json.writeEndObject();
      }
      json.writeEndArray();
    }
  }

  private void writeLocation(Location location) throws IOException {
    json.writeObjectFieldStart("location");
    writeOptional("record", location.record());
    writeOptional("recordType", location.recordType());
    writeOptional("idc", location.idc());
    writeOptional("field", location.field().map(Object::toString));
    writeOptional("subfield", location.subfield());
    writeOptional("item", location.item());
    Optional<ByteRange> bytes = location.bytes();
    if (bytes.isPresent()) {
      json.writeNumberField("offset", bytes.get().offset());
      json.writeNumberField("length", bytes.get().length());
    }
    if (location.text().isPresent()) {
      json.writeNumberField("line", location.text().get().line());
      json.writeNumberField("column", location.text().get().column());
      json.writeStringField("element", location.text().get().path());
    }
    writeOptional("position", location.position());
    json.writeEndObject();
  }

  private void writeSource(Source source) throws IOException {
    json.writeObjectFieldStart("source");
    json.writeStringField("document", source.document());
    json.writeStringField("title", wording.title(source.document()));
    json.writeStringField("place", source.place());
    json.writeStringField("known", source.known().label());
    json.writeEndObject();
  }

  private void writeOptional(String name, OptionalInt value) throws IOException {
    if (value.isPresent()) {
      json.writeNumberField(name, value.getAsInt());
    }
  }

  private void writeOptional(String name, Optional<String> value) throws IOException {
    if (value.isPresent()) {
      json.writeStringField(name, value.get());
    }
  }

  /** Two decimals: more would claim a precision that no device has. */
  private static double rounded(double value) {
    return Math.round(value * 100) / 100.0;
  }
}
