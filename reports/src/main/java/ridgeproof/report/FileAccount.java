package ridgeproof.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import ridgeproof.report.words.Counted;

/**
 * Accounts for every file of a run: those that have a report, and those that have none and why.
 *
 * @param examined how many have a report
 * @param others every other file
 */
public record FileAccount(int examined, List<NotExamined> others) {

  public FileAccount {
    others = List.copyOf(others);
  }

  /** How many files there are in all. */
  public int files() {
    return examined + others.size();
  }

  /** All in one sentence, such as "3 files: 2 examined, 1 not examined.". */
  public String sentence() {
    return String.format(
        Locale.ROOT,
        "%s: %,d examined, %,d not examined.",
        Counted.of(files(), "file"),
        examined,
        others.size());
  }

  /** The account as text. */
  public String text() {
    StringBuilder text = new StringBuilder(sentence()).append('\n');
    for (NotExamined file : others) {
      text.append("  ").append(TextSanitizer.of(file.name())).append(": ");
      text.append(TextSanitizer.of(file.reason())).append('\n');
    }
    return text.toString();
  }

  /** A file without a report as an element of the array of reports. */
  public static String json(NotExamined file) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = AsciiJson.factory().createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeStringField("schema", "ridgeproof-not-examined");
      json.writeNumberField("schemaVersion", 1);
      json.writeObjectFieldStart("file");
      json.writeStringField("name", file.name());
      json.writeEndObject();
      json.writeStringField("reason", file.reason());
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }
}
