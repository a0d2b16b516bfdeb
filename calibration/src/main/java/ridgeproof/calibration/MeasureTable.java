package ridgeproof.calibration;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import ridgeproof.ridges.RidgeMeasure;

/** Measured prints as CSV: one line a print, one column a measure; empty where not measurable. */
final class MeasureTable {

  private static final List<String> LABELS =
      List.of("card", "box", "finger", "impression", "defect", "strength");

  private MeasureTable() {}

  static void write(List<MeasuredPrint> prints, Appendable out) throws IOException {
    List<String> header = new ArrayList<>(LABELS);
    for (RidgeMeasure measure : RidgeMeasure.values()) {
      header.add(measure.key());
    }
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setHeader(header.toArray(String[]::new))
            .setRecordSeparator("\n")
            .get();
    CSVPrinter printer = new CSVPrinter(out, format);
    for (MeasuredPrint print : prints) {
      List<Object> cells = new ArrayList<>();
      cells.add(print.card());
      cells.add(print.box());
      cells.add(print.finger().code());
      cells.add(print.kind().key());
      cells.add(print.defect().map(d -> d.name().toLowerCase(Locale.ROOT)).orElse(""));
      cells.add(print.isClean() ? "" : String.format(Locale.ROOT, "%.2f", print.strength()));
      for (RidgeMeasure measure : RidgeMeasure.values()) {
        OptionalDouble value = print.value(measure);
        cells.add(
            value.isPresent() ? String.format(Locale.ROOT, "%.5g", value.getAsDouble()) : "");
      }
      printer.printRecord(cells);
    }
    printer.flush();
  }
}
