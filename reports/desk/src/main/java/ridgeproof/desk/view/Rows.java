package ridgeproof.desk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ridgeproof.desk.work.DeskFile;
import ridgeproof.desk.work.DeskFile.State;
import ridgeproof.desk.work.Examined;
import ridgeproof.examination.FindingsReport;
import ridgeproof.report.TextSanitizer;

/** Makes lines of the list. */
public final class Rows {

  private static final int CONTROL_NUMBER = 9;
  private static final int MAX_FACT = 60;

  private final Texts texts;
  private final Stations stations;

  public Rows(Texts texts, Stations stations) {
    this.texts = texts;
    this.stations = stations;
  }

  public Row of(DeskFile file) {
    Optional<FindingsReport> report = file.examined().map(Examined::report);
    boolean done = file.state() == State.EXAMINED;
    return new Row(
        file.id(),
        file.name().isEmpty() ? texts.of("row.nameless") : TextSanitizer.of(file.name()),
        file.state().name().toLowerCase(Locale.ROOT),
        done ? report.map(found -> found.verdict().name()) : Optional.empty(),
        done ? report.map(this::step).orElse("") : progress(file),
        report.map(this::facts).orElse(""),
        file.arrived().toString(),
        done);
  }

  private String step(FindingsReport report) {
    return report.actions().isEmpty()
        ? texts.of("row.nothing")
        : TextSanitizer.of(report.actions().get(0).remedy());
  }

  private String progress(DeskFile file) {
    return file.problem()
        .map(texts::of)
        .orElseGet(
            () ->
                texts.of(
                    file.state() == State.EXAMINING && file.examined().isPresent()
                        ? "row.images"
                        : "row." + file.state().name().toLowerCase(Locale.ROOT)));
  }

  private String facts(FindingsReport report) {
    List<String> facts = new ArrayList<>();
    report.transaction().typeOfTransaction().ifPresent(kind -> facts.add(shown(kind)));
    controlNumber(report).ifPresent(number -> facts.add(texts.of("row.control", shown(number))));
    stations.name(report).ifPresent(name -> facts.add(texts.of("row.station", shown(name))));
    return String.join(" · ", facts);
  }

  /** The number that the agency gave the transaction. */
  public static Optional<String> controlNumber(FindingsReport report) {
    return report
        .transaction()
        .header()
        .flatMap(header -> header.text(CONTROL_NUMBER))
        .map(String::strip)
        .filter(number -> !number.isEmpty());
  }

  private static String shown(String value) {
    String safe = TextSanitizer.of(value);
    return safe.length() <= MAX_FACT ? safe : safe.substring(0, MAX_FACT) + "...";
  }
}
