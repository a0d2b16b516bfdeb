package ridgeproof.ledger.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Map;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.EntryFinding;
import ridgeproof.ledger.EntryPrint;
import ridgeproof.ledger.PrintMeasure;
import ridgeproof.ledger.Response;
import ridgeproof.ledger.ResponseMessage;
import ridgeproof.ledger.store.LedgerStore;

/** Writes entries as JSON, one on a line. */
public final class LedgerExport {

  private final JsonGenerator json;

  private LedgerExport(JsonGenerator json) {
    this.json = json;
  }

  /** Writes every entry, the oldest first. */
  public static void write(LedgerStore store, Writer out) throws IOException {
    JsonFactory factory = new JsonFactory();
    try {
      store.forEach(
          entry -> {
            try {
              JsonGenerator json = factory.createGenerator(out);
              json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
              new LedgerExport(json).entry(entry);
              json.close();
              out.write('\n');
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          });
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private void entry(Entry entry) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", Long.toString(entry.id()));
    json.writeStringField("examined", entry.examined().toString());
    json.writeStringField("day", entry.day().toString());
    json.writeStringField("file_sha256", entry.fileHash());
    optional("control_hash", entry.control().orElse(null));
    optional("control_number", entry.clearControl().orElse(null));
    json.writeStringField("type", entry.type());
    json.writeObjectFieldStart("station");
    json.writeStringField("make", entry.station().make());
    json.writeStringField("model", entry.station().model());
    json.writeStringField("serial", entry.station().serial());
    json.writeEndObject();
    optional("operator_hash", entry.operator().orElse(null));
    json.writeStringField("verdict", entry.verdict().name());
    json.writeStringField("depth", entry.depth().name());
    json.writeStringField("program", entry.program());
    json.writeStringField("tables", entry.tables());
    json.writeArrayFieldStart("findings");
    for (EntryFinding finding : entry.findings()) {
      finding(finding);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("prints");
    for (EntryPrint print : entry.prints()) {
      print(print);
    }
    json.writeEndArray();
    if (entry.response().isPresent()) {
      response(entry.response().get());
    }
    json.writeEndObject();
  }

  private void optional(String name, String value) throws IOException {
    if (value != null) {
      json.writeStringField(name, value);
    }
  }

  private void finding(EntryFinding finding) throws IOException {
    json.writeStartObject();
    json.writeStringField("rule", finding.rule());
    json.writeStringField("severity", finding.severity().name());
    if (finding.finger().isPresent()) {
      json.writeNumberField("finger", finding.finger().getAsInt());
    }
    optional("field", finding.field().isEmpty() ? null : finding.field());
    json.writeEndObject();
  }

  private void print(EntryPrint print) throws IOException {
    json.writeStartObject();
    json.writeNumberField("record", print.record());
    json.writeNumberField("position", print.position());
    json.writeBooleanField("rolled", print.rolled());
    json.writeStringField("image_hash", print.image());
    json.writeStringField("encoder", print.encoder());
    json.writeObjectFieldStart("scores");
    for (Map.Entry<Integer, Integer> score : print.scores().entrySet()) {
      json.writeNumberField(Integer.toString(score.getKey()), score.getValue());
    }
    json.writeEndObject();
    json.writeObjectFieldStart("measures");
    for (Map.Entry<PrintMeasure, Double> measure : print.measures().entrySet()) {
      json.writeNumberField(measure.getKey().column(), measure.getValue());
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private void response(Response response) throws IOException {
    json.writeObjectFieldStart("response");
    json.writeStringField("refers_hash", response.refers());
    json.writeStringField("outcome", response.outcome().name());
    json.writeArrayFieldStart("messages");
    for (ResponseMessage message : response.messages()) {
      json.writeStartObject();
      json.writeStringField("reason", message.reason());
      if (message.finger().isPresent()) {
        json.writeNumberField("finger", message.finger().getAsInt());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }
}
