package ridgeproof.report.comparison;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.comparison.FindingChanges;
import ridgeproof.examination.comparison.FingerCapture;
import ridgeproof.examination.comparison.FingerChange;
import ridgeproof.examination.comparison.ImageDifference;
import ridgeproof.examination.comparison.PersonDoubt;
import ridgeproof.examination.comparison.PrintComparison;
import ridgeproof.examination.comparison.RecordPair;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.comparison.ValueDifference;
import ridgeproof.finding.Finding;
import ridgeproof.report.AsciiJson;
import ridgeproof.report.FileFacts;
import ridgeproof.report.ObservedText;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.TextSanitizer;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.LogicalRecord;

/** Comparison of two transactions, for a program. */
public final class ComparisonJson {

  /** A change that breaks a reader raises it. */
  public static final int SCHEMA_VERSION = 2;

  /** The published schema, a resource beside this class. */
  public static final String SCHEMA = "/ridgeproof/report/comparison.schema.json";

  private static final JsonFactory JSON = AsciiJson.factory();

  private final JsonGenerator json;
  private final TransactionComparison comparison;
  private final ComparisonPhrases words;
  private final OutcomeWording outcome;
  private final ReportPhrases wording;
  private final boolean showPersonal;

  private ComparisonJson(
      JsonGenerator json, TransactionComparison comparison, RenderOptions options) {
    this.json = json;
    this.comparison = comparison;
    this.words = new ComparisonPhrases(comparison, options.showPersonal());
    this.outcome = new OutcomeWording(comparison);
    this.wording = new ReportPhrases(comparison.first().tables());
    this.showPersonal = options.showPersonal();
  }

  /** One object, on several lines. */
  public static String render(
      FileFacts first, FileFacts second, TransactionComparison comparison, RenderOptions options) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = JSON.createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      new ComparisonJson(json, comparison, options).write(first, second);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void write(FileFacts first, FileFacts second) throws IOException {
    json.writeStartObject();
    json.writeStringField("schema", "ridgeproof-comparison");
    json.writeNumberField("schemaVersion", SCHEMA_VERSION);
    json.writeStringField("depth", comparison.depth().name().toLowerCase(Locale.ROOT));
    json.writeArrayFieldStart("ignoredFields");
    for (String name : comparison.ignored().names()) {
      json.writeString(name);
    }
    json.writeEndArray();
    json.writeBooleanField("same", comparison.same());
    json.writeStringField("outcome", comparison.outcome().name());
    json.writeStringField("headline", outcome.lead());
    json.writeBooleanField("sameBytes", comparison.sameBytes());
    json.writeBooleanField("personalValuesShown", showPersonal);
    writeFile("first", first, comparison.first());
    writeFile("second", second, comparison.second());
    json.writeBooleanField("secondRefersToFirst", comparison.secondRefersToFirst());
    json.writeBooleanField("firstRefersToSecond", comparison.firstRefersToSecond());
    writeRecords("removed", comparison.removed(), comparison.first());
    writeRecords("added", comparison.added(), comparison.second());
    json.writeArrayFieldStart("pairs");
    for (RecordPair pair : comparison.pairs()) {
      writePair(pair);
    }
    json.writeEndArray();
    FindingChanges changes = comparison.changes();
    writeFindings("resolved", changes.resolved(), comparison.first());
    writeFindings("stillPresent", changes.present(), comparison.second());
    writeFindings("new", changes.added(), comparison.second());
    writeFingers();
    if (comparison.personDoubt().isPresent()) {
      writePersonDoubt(comparison.personDoubt().get());
    }
    json.writeArrayFieldStart("cautions");
    for (String caution : words.cautions()) {
      json.writeString(caution);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void writeFile(String name, FileFacts file, FindingsReport report) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeStringField("name", TextSanitizer.of(file.name()));
    json.writeNumberField("bytes", file.bytes());
    json.writeStringField("sha256", file.sha256());
    json.writeStringField("verdict", report.verdict().name());
    json.writeEndObject();
  }

  private void writeRecords(String name, List<LogicalRecord> records, FindingsReport report)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (LogicalRecord record : records) {
      json.writeStartObject();
      json.writeNumberField("ordinal", record.ordinal());
      json.writeNumberField("type", record.type());
      writeOptional("idc", record.idc());
      json.writeStringField("name", words.record(record, report));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void writePair(RecordPair pair) throws IOException {
    json.writeStartObject();
    json.writeNumberField("type", pair.first().type());
    json.writeNumberField("firstOrdinal", pair.first().ordinal());
    json.writeNumberField("secondOrdinal", pair.second().ordinal());
    json.writeStringField("name", words.record(pair.first(), comparison.first()));
    json.writeBooleanField("differs", pair.differs());
    json.writeBooleanField("moved", pair.moved());
    json.writeBooleanField("unreadBytesDiffer", pair.otherUnread());
    json.writeArrayFieldStart("differences");
    for (ValueDifference difference : pair.differences()) {
      writeDifference(difference);
    }
    json.writeEndArray();
    if (pair.image().isPresent()) {
      writeImage(pair, pair.image().get());
    }
    json.writeEndObject();
  }

  private void writeDifference(ValueDifference difference) throws IOException {
    boolean masked = words.masks(difference);
    json.writeStartObject();
    json.writeStringField("field", difference.field().toString());
    writeOptional("subfield", difference.subfield());
    writeOptional("item", difference.item());
    json.writeStringField("change", ComparisonPhrases.kind(difference));
    json.writeBooleanField("ignored", difference.ignored());
    json.writeBooleanField("masked", masked);
    if (!masked) {
      writeOptional("first", difference.first());
      writeOptional("second", difference.second());
    }
    json.writeEndObject();
  }

  private void writeImage(RecordPair pair, ImageDifference image) throws IOException {
    json.writeObjectFieldStart("image");
    json.writeStringField("level", pair.level().orElseThrow().words());
    if (image instanceof ImageDifference.DifferentPixels pixels && pixels.isSameCapture()) {
      json.writeObjectFieldStart("grayLevels");
      json.writeNumberField("largestDifference", pixels.largest());
      json.writeNumberField("meanDifference", tenThousandths(pixels.mean()));
      json.writeNumberField("differingPixels", pixels.pixels());
      json.writeNumberField("pixels", pixels.ofPixels());
      json.writeEndObject();
    }
    if (image instanceof ImageDifference.DifferentSize size) {
      json.writeObjectFieldStart("sizes");
      json.writeNumberField("firstWidth", size.firstWidth());
      json.writeNumberField("firstHeight", size.firstHeight());
      json.writeNumberField("secondWidth", size.secondWidth());
      json.writeNumberField("secondHeight", size.secondHeight());
      json.writeEndObject();
    }
    if (image instanceof ImageDifference.NotDecoded decoded) {
      json.writeBooleanField("firstDecodes", decoded.first());
      json.writeBooleanField("secondDecodes", decoded.second());
    }
    if (pair.fingers().isPresent()) {
      json.writeArrayFieldStart("fingers");
      for (PrintComparison print : pair.fingers().get().prints()) {
        writePrint(print);
      }
      json.writeEndArray();
    }
    json.writeEndObject();
  }

  private void writePrint(PrintComparison print) throws IOException {
    json.writeStartObject();
    json.writeNumberField("position", print.finger().code());
    json.writeStringField("name", words.finger(print));
    json.writeStringField("answer", ComparisonPhrases.answer(print));
    json.writeStringField("reason", print.reason().name());
    json.writeStringField("explanation", words.reason(print));
    json.writeNumberField("similarity", tenThousandths(print.similarity()));
    if (print.other().isPresent()) {
      json.writeNumberField("otherPosition", print.other().get().code());
      json.writeNumberField("otherSimilarity", tenThousandths(print.otherSimilarity()));
    }
    json.writeEndObject();
  }

  private static double tenThousandths(double value) {
    return Math.round(value * 10_000) / 10_000.0;
  }

  private void writeFingers() throws IOException {
    json.writeArrayFieldStart("fingers");
    for (FingerChange change : comparison.fingers()) {
      json.writeStartObject();
      json.writeNumberField("position", change.finger().code());
      json.writeStringField("impression", change.rolled() ? "rolled" : "plain");
      json.writeBooleanField("sameCapture", change.same());
      json.writeStringField("trend", change.trend().name());
      json.writeStringField("send", change.send().name());
      writeCapture("first", change.first());
      writeCapture("second", change.second());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void writeCapture(String name, Optional<FingerCapture> capture) throws IOException {
    if (capture.isEmpty()) {
      return;
    }
    json.writeObjectFieldStart(name);
    json.writeNumberField("record", capture.get().image().record().ordinal());
    if (capture.get().score().isPresent()) {
      json.writeNumberField("score", capture.get().score().get());
    }
    json.writeArrayFieldStart("problems");
    for (Finding problem : capture.get().problems()) {
      json.writeString(problem.ruleId());
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void writePersonDoubt(PersonDoubt doubt) throws IOException {
    json.writeObjectFieldStart("personWarning");
    json.writeStringField("kind", doubt.kind().name());
    json.writeNumberField("fingers", doubt.fingers());
    json.writeArrayFieldStart("changedFields");
    for (FieldNumber field : doubt.changed()) {
      json.writeString(field.toString());
    }
    json.writeEndArray();
    json.writeStringField("text", String.join(" ", outcome.personDoubt().orElseThrow()));
    json.writeEndObject();
  }

  private void writeFindings(String name, List<Finding> findings, FindingsReport report)
      throws IOException {
    ObservedText observed = new ObservedText(report, showPersonal);
    json.writeArrayFieldStart(name);
    for (Finding finding : findings) {
      boolean masked = observed.isMasked(finding);
      json.writeStartObject();
      json.writeStringField("rule", finding.ruleId());
      json.writeStringField("severity", finding.severity().name());
      json.writeStringField("title", finding.rule().title());
      json.writeStringField("where", wording.whereabouts(finding.location()));
      json.writeBooleanField("masked", masked);
      if (!masked) {
        json.writeStringField("found", observed.of(finding));
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void writeOptional(String name, OptionalInt value) throws IOException {
    if (value.isPresent()) {
      json.writeNumberField(name, value.getAsInt());
    }
  }

  private void writeOptional(String name, Optional<String> value) throws IOException {
    if (value.isPresent()) {
      json.writeStringField(name, TextSanitizer.of(value.get()));
    }
  }
}
