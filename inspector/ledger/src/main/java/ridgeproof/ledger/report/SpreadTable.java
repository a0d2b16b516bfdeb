package ridgeproof.ledger.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import ridgeproof.ledger.PrintMeasure;
import ridgeproof.ledger.health.DrySeason;
import ridgeproof.ledger.health.GroupLevels;
import ridgeproof.ledger.health.SeasonShares;
import ridgeproof.report.TextSanitizer;

/**
 * Groups of people under each other, each with its figures and a bar on one common scale.
 *
 * @param words what the bars and lines mean
 */
public record SpreadTable(String caption, String heading, String words, List<Row> rows)
    implements FaultPicture {

  private static final String MIDDLE_HALF =
      "The bar holds the middle half of the people, the line nine of ten, the mark is the"
          + " middle.";
  private static final String INTERVAL = "The line is the 95 % interval (Wilson).";
  private static final double WHOLE = 100;
  private static final double MARGIN = 2;

  /**
   * A group; lengths and places are on a scale of 100.
   *
   * @param concerned whether the finding is about it
   */
  public record Row(
      String name,
      boolean concerned,
      String figures,
      String from,
      String length,
      String mark,
      String low,
      String high) {}

  static SpreadTable of(GroupLevels levels, UnaryOperator<String> name) {
    boolean width = levels.measure() == PrintMeasure.WIDTH;
    double least = levels.groups().stream().mapToDouble(GroupLevels.Group::low).min().orElseThrow();
    double most = levels.groups().stream().mapToDouble(GroupLevels.Group::high).max().orElseThrow();
    Scale scale = new Scale(least, most);
    List<Row> rows = new ArrayList<>();
    for (GroupLevels.Group group : levels.groups()) {
      rows.add(
          new Row(
              TextSanitizer.of(name.apply(group.key())),
              rows.isEmpty(),
              String.format(
                  Locale.ROOT,
                  width
                      ? "%.1f mm in the middle of %d people"
                      : "%.3f mm in the middle of %d people",
                  group.middle(),
                  group.people()),
              number(scale.at(group.quarter())),
              number(scale.at(group.threeQuarters()) - scale.at(group.quarter())),
              number(scale.at(group.middle())),
              number(scale.at(group.low())),
              number(scale.at(group.high()))));
    }
    rows.sort(Comparator.comparing(Row::concerned).reversed().thenComparing(Row::name));
    return new SpreadTable(
        width ? "Width of rolled prints" : "Distance from ridge to ridge at the stated resolution",
        width ? "Operator" : "Station",
        MIDDLE_HALF,
        rows);
  }

  static SpreadTable of(SeasonShares shares) {
    return new SpreadTable(
        "People with a dry print, " + shares.own().season(),
        "Station",
        INTERVAL,
        List.of(
            row(shares.own(), TextSanitizer.of(shares.own().station()), true),
            row(shares.others(), "all other stations", false)));
  }

  private static Row row(DrySeason season, String name, boolean concerned) {
    Share share = new Share(season.dry(), season.people());
    return new Row(
        name,
        concerned,
        share.words(),
        number(0),
        number(WHOLE * share.value()),
        number(WHOLE * share.value()),
        number(WHOLE * share.interval().low()),
        number(WHOLE * share.interval().high()));
  }

  /** From the least to the most, with a margin. */
  private record Scale(double least, double most) {
    double at(double value) {
      return most > least
          ? MARGIN + (WHOLE - 2 * MARGIN) * (value - least) / (most - least)
          : WHOLE / 2;
    }
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
