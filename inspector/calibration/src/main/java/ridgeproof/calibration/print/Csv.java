package ridgeproof.calibration.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Tables with a header line, as this module reads and writes them. */
public final class Csv {

  private Csv() {}

  public static List<CSVRecord> read(Reader reader) throws IOException {
    return CSVFormat.DEFAULT
        .builder()
        .setHeader()
        .setSkipHeaderRecord(true)
        .get()
        .parse(reader)
        .getRecords();
  }

  /** A table on the class path, by its whole name. */
  public static List<CSVRecord> resource(String name) {
    InputStream stream = Csv.class.getResourceAsStream(name);
    if (stream == null) {
      throw new IllegalStateException(name + " is not on the class path");
    }
    try (Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
      return read(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(name, e);
    }
  }

  public static CSVFormat withHeader(List<String> columns) {
    return CSVFormat.DEFAULT
        .builder()
        .setHeader(columns.toArray(String[]::new))
        .setRecordSeparator("\n")
        .get();
  }
}
