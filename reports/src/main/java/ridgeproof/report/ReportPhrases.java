package ridgeproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.TextPlace;
import ridgeproof.report.prints.PrintNames;
import ridgeproof.report.words.Counted;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.agency.RelaxedRule;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.RecordTypeRow;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.record.LogicalRecord;

/** The words in which every report speaks of records, fingers and verdicts. */
public final class ReportPhrases {

  public static final List<String> CAUTIONS =
      List.of(
          "This report neither identifies anyone nor certifies the file.",
          "The receiving bureau's specification and your agency's policy decide what is accepted.");

  /** How many places of a repeated fault a report names. */
  private static final int FIRST_PLACES = 5;

  private static final String RIDGES = "RDG";
  private static final double PERCENT = 100;
  private static final double FOUR_DIGITS = 1000;

  private static final FieldNumber VERSION = new FieldNumber(1, 2);

  private final SpecTables tables;
  private final Map<String, SpecTables.Document> documents;
  private final PrintNames names;

  public ReportPhrases(SpecTables tables) {
    this.tables = tables;
    this.documents = tables.documents();
    this.names = new PrintNames(tables);
  }

  public static String of(Verdict verdict) {
    return switch (verdict) {
      case READY -> "Nothing was found that a bureau is known to reject.";
      case REVIEW ->
          "Review before sending: some of these problems are commonly rejected, or the prints may not"
              + " match.";
      case HOLD ->
          "Do not send yet: a bureau that follows the published standards will reject this file.";
      case UNREADABLE -> "This file cannot be read as a transaction.";
    };
  }

  /** The version by which the file was read, and what it states where that is another. */
  public static String version(FindingsReport report) {
    int version = report.transaction().version();
    String read = String.format(Locale.US, "%04d", version);
    FieldValues values = new FieldValues(report.tables(), version, false);
    if (!report.transaction().isVersionAssumed()) {
      return read;
    }
    return report
            .transaction()
            .statedVersion()
            .map(text -> "stated " + values.item(VERSION, 1, text))
            .orElse("not stated")
        + ", read as "
        + read;
  }

  public String recordType(int type) {
    return tables.recordType(type).map(RecordTypeRow::name).orElse("unknown record type");
  }

  /** The positions of an image in plain words, such as "right thumb". */
  public String positions(ExaminedImage image) {
    return image.positions().stream().map(this::position).collect(Collectors.joining(", "));
  }

  public String position(int code) {
    return tables.positionName(code);
  }

  public String impression(OptionalInt code) {
    return code.isEmpty()
        ? ""
        : tables
            .codes("impressions")
            .find(Integer.toString(code.getAsInt()))
            .map(Code::name)
            .orElse("impression type " + code.getAsInt());
  }

  /** Size, resolution and compression in one line. */
  public String measures(ExaminedImage image) {
    StringBuilder line = new StringBuilder();
    if (image.width().isPresent() && image.height().isPresent()) {
      line.append(image.width().getAsInt()).append(" x ").append(image.height().getAsInt());
      line.append(" px");
      image
          .density()
          .ifPresent(
              density ->
                  line.append(
                      String.format(
                          Locale.US,
                          ", %.2f x %.2f in at %.0f ppi",
                          image.width().getAsInt() / density.horizontalPpi(),
                          image.height().getAsInt() / density.verticalPpi(),
                          density.horizontalPpi())));
    }
    image
        .statedFormat()
        .ifPresent(format -> line.append(line.isEmpty() ? "" : ", ").append(format.label()));
    image
        .compressionRatio()
        .filter(ratio -> ratio > 1.005)
        .ifPresent(ratio -> line.append(String.format(Locale.US, " %.1f:1", ratio)));
    return line.toString();
  }

  /** The place of a finding within its record. */
  public static String place(Location location) {
    StringBuilder place = new StringBuilder();
    location.field().ifPresent(field -> place.append("field ").append(field));
    location.subfield().ifPresent(number -> place.append(", subfield ").append(number));
    location.item().ifPresent(number -> place.append(", item ").append(number));
    String lead = place.isEmpty() ? "" : ", ";
    if (location.text().isPresent()) {
      TextPlace text = location.text().get();
      place.append(lead).append("at line ").append(text.line());
      place.append(", column ").append(text.column());
      if (!text.path().isEmpty()) {
        place.append(", in ").append(lastElements(text.path()));
      }
    } else {
      location
          .bytes()
          .ifPresent(bytes -> place.append(lead).append("at byte ").append(bytes.offset()));
    }
    return place.toString();
  }

  /** The finger, where the finding is about one, and the place within its record. */
  public String placeWithFinger(Location location) {
    String place = place(location);
    return location.position().isEmpty()
        ? place
        : names.finger(location.position().getAsInt()) + (place.isEmpty() ? "" : ", " + place);
  }

  /** The name of a print: finger first. */
  public PrintNames names() {
    return names;
  }

  /** The innermost elements of a path, which is as much as a line has room for. */
  private static String lastElements(String path) {
    String[] elements = path.split("/");
    return String.join(
        "/", List.of(elements).subList(Math.max(0, elements.length - 3), elements.length));
  }

  /** A rule that a profile made laxer, in one line. */
  public String relaxed(RelaxedRule rule) {
    return String.format(
        Locale.US,
        "%s %s: %s, published %s",
        rule.ruleId(),
        ruleTitle(rule),
        rule.now(),
        rule.published());
  }

  public String ruleTitle(RelaxedRule rule) {
    return tables.catalogue().rule(rule.ruleId()).title();
  }

  /** The place of a finding within the file: the finger in words, then the record. */
  public String whereabouts(Location location) {
    String record = record(location);
    StringBuilder place = new StringBuilder(record);
    if (location.position().isPresent()) {
      String print = position(location.position().getAsInt());
      place.setLength(0);
      place.append(print).append(record.isEmpty() ? "" : " (" + record + ")");
    }
    String within = place(location);
    if (!within.isEmpty()) {
      place.append(place.isEmpty() ? "" : ", ").append(within);
    }
    return place.isEmpty() ? "the file as a whole" : place.toString();
  }

  private static String record(Location location) {
    StringBuilder place = new StringBuilder();
    location.record().ifPresent(record -> place.append("record ").append(record));
    location
        .recordType()
        .ifPresent(type -> place.append(place.isEmpty() ? "" : ", ").append("Type-").append(type));
    location.idc().ifPresent(idc -> place.append(String.format(Locale.US, ", IDC %02d", idc)));
    return place.toString();
  }

  /** A place in few words: the finger, else the field, else the record. */
  public String briefly(Location location) {
    if (location.position().isPresent()) {
      return position(location.position().getAsInt());
    }
    if (location.field().isPresent()) {
      return "field " + location.field().get();
    }
    return location.record().isPresent()
        ? "record " + location.record().getAsInt()
        : "the file as a whole";
  }

  public String recordTitle(LogicalRecord record) {
    String idc =
        record.idc().isPresent()
            ? String.format(Locale.US, ", IDC %02d", record.idc().getAsInt())
            : "";
    return String.format(
        Locale.US,
        "Record %d: Type-%d%s  %s",
        record.ordinal(),
        record.type(),
        idc,
        recordType(record.type()));
  }

  public static String extent(LogicalRecord record) {
    return String.format(
        Locale.US,
        "bytes %d to %d, %s; %s",
        record.range().offset(),
        record.range().end() - 1,
        Counted.of(record.range().length(), "byte"),
        Counted.of(record.fields().size(), "field"));
  }

  public static String counts(FindingsReport report) {
    if (report.findings().isEmpty()) {
      return "No findings.";
    }
    TreeMap<Severity, Integer> counts = new TreeMap<>();
    report.findings().forEach(finding -> counts.merge(finding.severity(), 1, Integer::sum));
    return counts.entrySet().stream()
        .map(count -> count.getValue() + " " + count.getKey())
        .collect(Collectors.joining(", ", "Findings: ", "."));
  }

  public static String heldTo(FindingsReport report) {
    return report
        .profile()
        .map(
            profile ->
                profile.title()
                    + (report.profileNamed() ? "" : " (inferred from the file's contents)"))
        .orElse("the standard only; no set of prints could be inferred");
  }

  /** How many other findings a cause explains. */
  public static Optional<String> explains(Finding finding) {
    if (finding.explains().isEmpty() || finding.explains().getAsInt() == 0) {
      return Optional.empty();
    }
    int others = finding.explains().getAsInt();
    return Optional.of(
        others == 1
            ? "This explains 1 further finding, which is not listed."
            : String.format(
                Locale.US, "This explains %d further findings, which are not listed.", others));
  }

  /** The first places of a fault that is repeated, and how many there are. */
  public String places(Finding finding) {
    List<Location> first =
        Stream.concat(
                Stream.of(finding.location()), finding.repeats().stream().map(Finding::location))
            .limit(FIRST_PLACES)
            .toList();
    int more = finding.count() - first.size();
    return String.format(
        Locale.US,
        "%d: %s%s",
        finding.count(),
        first.stream().map(ReportPhrases::repeated).collect(Collectors.joining("; ")),
        more == 0 ? "" : "; and " + more + " more");
  }

  /** As {@link #places}, behind the place of the first; nothing for a single one. */
  public String furtherPlaces(Finding finding) {
    return finding.count() == 1 ? "" : " (places: " + places(finding) + ")";
  }

  private static String repeated(Location place) {
    List<String> words = new ArrayList<>();
    place.record().ifPresent(record -> words.add("record " + record));
    place.subfield().ifPresent(subfield -> words.add("subfield " + subfield));
    place.item().ifPresent(item -> words.add("item " + item));
    return String.join(" ", words);
  }

  /** That completeness was not judged by a list, and why; empty where it was. */
  public static Optional<String> completenessGap(FindingsReport report) {
    return completeness(report).map(how -> "Completeness was " + how);
  }

  /** The same for where it is called completeness already. */
  public static Optional<String> completeness(FindingsReport report) {
    String how =
        report.profile().isPresent() ? "checked against the file's contents only" : "not checked";
    return report.completenessGap().map(why -> how + ": " + why);
  }

  public static String ids(List<Finding> findings) {
    String ids = String.join(", ", findings.stream().map(Finding::ruleId).distinct().toList());
    int places = findings.stream().mapToInt(Finding::count).sum();
    return places == 1 ? ids : ids + ", " + places + " places";
  }

  /**
   * The numbers that the words of the finding do not tell; its limits stand in what it requires.
   */
  public static List<String> measured(Finding finding) {
    // Of ridges the words tell all that decides.
    return finding.rule().area().equals(RIDGES)
        ? List.of()
        : finding.evidence().stream()
            .filter(measure -> !finding.observed().text().contains(measure.name()))
            .map(ReportPhrases::measured)
            .toList();
  }

  private static String measured(Measure measure) {
    boolean share = measure.unit().equals("share");
    String unit = measure.unit().isEmpty() ? "" : share ? " %" : " " + measure.unit();
    double value = share ? PERCENT * measure.value() : measure.value();
    String threshold =
        measure.name().startsWith("similarity") && measure.limit().isPresent()
            ? " (a match needs " + number(measure.limit().getAsDouble()) + ")"
            : "";
    return measure.name() + " " + number(value) + unit + threshold;
  }

  /** Counts without a point, and never a power of ten. */
  private static String number(double value) {
    boolean whole = value == Math.rint(value) || Math.abs(value) >= FOUR_DIGITS;
    return String.format(Locale.US, whole ? "%.0f" : "%.4g", value);
  }

  /** The title of a document, by its key. */
  public String title(String document) {
    SpecTables.Document found = documents.get(document);
    return found == null ? document : found.title();
  }
}
