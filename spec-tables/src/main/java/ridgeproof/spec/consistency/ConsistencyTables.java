package ridgeproof.spec.consistency;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.ItemReference;
import ridgeproof.spec.limit.CaptureDateLimit;
import ridgeproof.spec.limit.DisallowedCompression;
import ridgeproof.spec.limit.MinimumResolution;
import ridgeproof.spec.table.Table;

/**
 * What the records of one transaction have to agree in, and the fields that say it. Each file is
 * read when first asked for.
 */
public final class ConsistencyTables {

  private final Map<String, List<Table.Row>> files = new ConcurrentHashMap<>();

  public ConsistencyTables() {}

  /** The types of record that each type of feature record describes. */
  public Map<Integer, Set<Integer>> describedTypes() {
    Map<Integer, Set<Integer>> links = new LinkedHashMap<>();
    for (Table.Row row : rows("layouts/record-links.csv")) {
      links.put(
          row.parse("record_type", Integer::parseInt),
          new LinkedHashSet<>(row.parse("describes", ConsistencyTables::numbers)));
    }
    return links;
  }

  /**
   * Types of record of which several may have one IDC, as views of one thing, and the fields that
   * they then have alike.
   */
  public Map<Integer, List<FieldNumber>> sharedIdcs() {
    Map<Integer, List<FieldNumber>> shared = new LinkedHashMap<>();
    for (Table.Row row : rows("layouts/shared-idcs.csv")) {
      shared.put(
          row.parse("record_type", Integer::parseInt),
          Arrays.stream(row.required("agree_in").split(" ")).map(FieldNumber::parse).toList());
    }
    return shared;
  }

  /** Fields that name another record by a number. */
  public List<CrossReference> crossReferences() {
    return rows("layouts/cross-references.csv").stream()
        .map(
            row ->
                new CrossReference(
                    new ItemReference(number(row, "field"), row.parse("item", Integer::parseInt)),
                    number(row, "target"),
                    row.source()))
        .toList();
  }

  /** Fields that mark parts of an image. */
  public List<SegmentField> segmentFields() {
    return rows("layouts/image-segments.csv").stream()
        .map(
            row ->
                new SegmentField(
                    number(row, "field"),
                    row.parse(
                        "shape", cell -> SegmentField.Shape.valueOf(cell.toUpperCase(Locale.ROOT))),
                    row.integer("position_item"),
                    row.parse("first_item", Integer::parseInt),
                    row.source()))
        .toList();
  }

  /** Fields that rate prints. */
  public List<QualityField> qualityFields() {
    return rows("layouts/quality-fields.csv").stream()
        .map(
            row ->
                new QualityField(
                    number(row, "field"),
                    row.integer("position_item"),
                    row.parse("value_item", Integer::parseInt),
                    row.parse("method_items", ConsistencyTables::numbers),
                    row.source()))
        .toList();
  }

  /** Values of a quality field that are no quality, with what they mean. */
  public Map<Integer, String> qualityExceptions() {
    Map<Integer, String> exceptions = new LinkedHashMap<>();
    for (Table.Row row : rows("layouts/quality-exceptions.csv")) {
      exceptions.put(row.parse("value", Integer::parseInt), row.required("meaning"));
    }
    return exceptions;
  }

  /** Fields that place features. */
  public List<FeaturePoints> featurePoints() {
    return rows("layouts/feature-points.csv").stream().map(FeaturePoints::of).toList();
  }

  /** Fields that list minutiae and fields that count them. */
  public List<MinutiaList> minutiaLists() {
    return rows("layouts/minutia-lists.csv").stream()
        .map(
            row ->
                new MinutiaList(
                    number(row, "field"),
                    row.parse("index_item", Integer::parseInt),
                    number(row, "count_field"),
                    row.source()))
        .toList();
  }

  /** Fields in which a feature record states the image it was made from. */
  public List<FeatureFrame> featureFrames() {
    return rows("layouts/feature-frames.csv").stream()
        .map(
            row ->
                new FeatureFrame(
                    number(row, "width"),
                    number(row, "height"),
                    number(row, "scale_units"),
                    number(row, "horizontal_scale"),
                    number(row, "vertical_scale"),
                    row.source()))
        .toList();
  }

  /** Items in which a feature record names the print that it describes. */
  public List<ItemReference> featurePositions() {
    return rows("layouts/feature-positions.csv").stream()
        .map(row -> new ItemReference(number(row, "field"), row.parse("item", Integer::parseInt)))
        .toList();
  }

  /** Fields that go only with certain positions. */
  public List<DescriptorField> descriptorFields() {
    return rows("layouts/position-descriptors.csv").stream()
        .map(
            row ->
                new DescriptorField(
                    number(row, "field"),
                    number(row, "positions_field"),
                    new LinkedHashSet<>(row.parse("positions", ConsistencyTables::numbers)),
                    row.source()))
        .toList();
  }

  /** The fields that tell who the subject is. */
  public List<IdentityField> identityFields() {
    return rows("layouts/identity-fields.csv").stream()
        .map(row -> new IdentityField(number(row, "field"), row.source()))
        .toList();
  }

  /** How far dates of capture may lie from the date of the transaction. */
  public List<CaptureDateLimit> captureDates() {
    return rows("limits/capture-dates.csv").stream()
        .map(
            row ->
                new CaptureDateLimit(
                    number(row, "field"),
                    row.parse("days_after", Integer::parseInt),
                    row.parse("max_years", Integer::parseInt),
                    row.source()))
        .toList();
  }

  /** The least that the resolution fields of the header may say. */
  public List<MinimumResolution> minimumResolutions() {
    return rows("limits/minimum-resolutions.csv").stream()
        .map(
            row ->
                new MinimumResolution(
                    row.parse("record_type", Integer::parseInt),
                    number(row, "field"),
                    row.parse("min_ppmm", Double::parseDouble),
                    row.source()))
        .toList();
  }

  /** At which resolutions prints are not to be compressed in which format. */
  public List<DisallowedCompression> printCompressions() {
    return rows("limits/print-compressions.csv").stream()
        .map(
            row ->
                new DisallowedCompression(
                    row.required("format"),
                    decimal(row, "above_ppi").orElse(0),
                    decimal(row, "up_to_ppi").orElse(Double.POSITIVE_INFINITY),
                    row.required("rule"),
                    row.required("instead"),
                    row.source()))
        .toList();
  }

  /**
   * A single number that a rule measures by, in the unit of its row.
   *
   * @throws IllegalArgumentException if there is none of that name, which is a defect of ours
   */
  public double threshold(String name) {
    return rows("limits/thresholds.csv").stream()
        .filter(row -> row.required("name").equals(name))
        .mapToDouble(row -> row.parse("value", Double::parseDouble))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no threshold " + name));
  }

  private List<Table.Row> rows(String file) {
    return files.computeIfAbsent(file, name -> Table.resource(name).rows());
  }

  private static FieldNumber number(Table.Row row, String column) {
    return row.parse(column, FieldNumber::parse);
  }

  private static OptionalDouble decimal(Table.Row row, String column) {
    return row.text(column).isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(row.parse(column, Double::parseDouble));
  }

  private static List<Integer> numbers(String cell) {
    return Arrays.stream(cell.split(" "))
        .filter(word -> !word.isEmpty())
        .map(Integer::parseInt)
        .toList();
  }
}
