package ridgeproof.calibration.print;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.ridges.quality.QualityMetric;
import ridgeproof.spec.layout.FingerPosition;

/** Measured prints as CSV: one line a print, one column a measure; empty where not measurable. */
public final class MeasureTable {

  private static final List<String> LABELS =
      List.of("seed", "card", "box", "finger", "impression", "defect", "strength");

  private MeasureTable() {}

  public static List<MeasuredPrint> read(Reader reader) throws IOException {
    List<MeasuredPrint> prints = new ArrayList<>();
    for (CSVRecord row : Csv.read(reader)) {
      Map<QualityMetric, Double> values = new EnumMap<>(QualityMetric.class);
      for (QualityMetric measure : QualityMetric.values()) {
        String cell = row.get(measure.key());
        if (!cell.isEmpty()) {
          values.put(measure, Double.valueOf(cell));
        }
      }
      String defect = row.get("defect");
      prints.add(
          new MeasuredPrint(
              Long.parseLong(row.get("seed")),
              Integer.parseInt(row.get("card")),
              Integer.parseInt(row.get("box")),
              FingerPosition.ofCode(Integer.parseInt(row.get("finger"))).orElseThrow(),
              Impression.ofKey(row.get("impression")),
              defect.isEmpty()
                  ? Optional.empty()
                  : Optional.of(CaptureDefect.valueOf(defect.toUpperCase(Locale.ROOT))),
              defect.isEmpty() ? 0 : Double.parseDouble(row.get("strength")),
              values));
    }
    return prints;
  }

  public static void write(List<MeasuredPrint> prints, Appendable out) throws IOException {
    List<String> header = new ArrayList<>(LABELS);
    for (QualityMetric measure : QualityMetric.values()) {
      header.add(measure.key());
    }
    CSVPrinter printer = new CSVPrinter(out, Csv.withHeader(header));
    for (MeasuredPrint print : prints) {
      List<Object> cells = new ArrayList<>();
      cells.add(print.seed());
      cells.add(print.card());
      cells.add(print.box());
      cells.add(print.finger().code());
      cells.add(print.kind().key());
      cells.add(print.defect().map(d -> d.name().toLowerCase(Locale.ROOT)).orElse(""));
      cells.add(print.isClean() ? "" : String.format(Locale.ROOT, "%.2f", print.strength()));
      for (QualityMetric measure : QualityMetric.values()) {
        OptionalDouble value = print.value(measure);
        cells.add(value.isPresent() ? String.format(Locale.ROOT, "%.5g", value.getAsDouble()) : "");
      }
      printer.printRecord(cells);
    }
    printer.flush();
  }
}
