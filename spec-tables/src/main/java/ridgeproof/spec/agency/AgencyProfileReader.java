package ridgeproof.spec.agency;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.SubmissionProfile.NeededPrint;
import ridgeproof.spec.agency.ProfileReading.Problem;
import ridgeproof.spec.descriptive.Plausible;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.Presence;
import ridgeproof.spec.layout.ValueRule;
import ridgeproof.spec.limit.CompressionLimit;
import ridgeproof.spec.limit.ResolutionClass;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.rule.Severity;

/** Reads agency profiles, which {@code agency-profile.schema.json} describes. */
public final class AgencyProfileReader {

  /** Where the schema of a profile stands on the class path. */
  public static final String SCHEMA = "/ridgeproof/spec/profiles/agency-profile.schema.json";

  private static final int LAST_POSITION = 15;
  private static final Set<String> KINDS = Set.of("rolled", "plain", "slap");
  private static final Set<String> FORMATS = Set.of("WSQ", "JPEG", "JPEG_2000");
  private static final double MAX_RATIO = 100;
  private static final int MAX_DAYS = 36_500;
  private static final int MAX_PPI = 4000;
  private static final String COMPRESSION_RULE = "RP-IMG-016";
  private static final double MIN_MATCH = 10;
  private static final double MAX_MATCH = 500;
  private static final String MATCH_RULE = "RP-SEQ-009";
  private static final String PRINT_AGE_RULE = "RP-PTL-024";

  private final SpecTables tables;
  private final List<Problem> problems = new ArrayList<>();
  private final List<RelaxedRule> relaxed = new ArrayList<>();

  private AgencyProfileReader(SpecTables tables) {
    this.tables = tables;
  }

  /** Reads the text of a TOML file. */
  public static ProfileReading read(String toml, SpecTables tables) {
    return new AgencyProfileReader(tables).read(toml);
  }

  private ProfileReading read(String toml) {
    JsonNode document;
    try {
      document = new TomlMapper().readTree(toml);
    } catch (JsonProcessingException e) {
      return new ProfileReading.Unusable(List.of(problem(e)));
    }
    AgencyProfile profile =
        profile(new TomlTable(document, List.of(), new TomlPlaces(toml), problems));
    if (problems.isEmpty()) {
      return new ProfileReading.Usable(profile);
    }
    problems.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
    return new ProfileReading.Unusable(List.copyOf(problems));
  }

  private static Problem problem(JsonProcessingException failure) {
    String message =
        "not valid TOML: "
            + failure.getOriginalMessage().lines().findFirst().orElse("no reason given");
    return failure.getLocation() == null
        ? new Problem(1, 1, message)
        : new Problem(
            Math.max(1, failure.getLocation().getLineNr()),
            Math.max(1, failure.getLocation().getColumnNr()),
            message);
  }

  private AgencyProfile profile(TomlTable root) {
    String name = root.requiredText("name").orElse("");
    String title = root.requiredText("title").orElse("");
    root.text("description");
    List<NeededPrint> prints = new ArrayList<>(base(root));
    root.tables("prints").forEach(table -> print(table).ifPresent(prints::add));
    Map<FieldNumber, AgencyField> fields = new LinkedHashMap<>();
    for (TomlTable table : root.tables("fields")) {
      Optional<AgencyField> field = field(table);
      if (field.isPresent() && fields.put(field.get().number(), field.get()) != null) {
        table.atValue("field", field.get().number() + " is a duplicate");
      }
    }
    Map<String, Severity> severities = new LinkedHashMap<>();
    root.table("severities").ifPresent(table -> severities(table, severities));
    AgencyLimits limits = root.table("limits").map(this::limits).orElse(AgencyLimits.NONE);
    List<String> releaseReasons = root.texts("release_reasons");
    List<AcceptedDeviation> accepted = new ArrayList<>();
    root.tables("accepted").forEach(table -> accepted(table).ifPresent(accepted::add));
    root.rejectOthers();
    return new AgencyProfile(
        name,
        title,
        root.keys().contains("base"),
        prints,
        List.copyOf(fields.values()),
        severities,
        limits,
        releaseReasons,
        accepted,
        relaxed);
  }

  private List<NeededPrint> base(TomlTable root) {
    Optional<String> name = root.text("base");
    if (name.isEmpty()) {
      return List.of();
    }
    Optional<SubmissionProfile> base = tables.profileNamed(name.get());
    if (base.isEmpty()) {
      root.atValue("base", tables.noProfile(name.get()));
    }
    return base.map(SubmissionProfile::prints).orElse(List.of());
  }

  private Optional<NeededPrint> print(TomlTable table) {
    OptionalInt position = table.integer("position", 1, LAST_POSITION);
    if (!table.keys().contains("position")) {
      table.requiredText("position");
    }
    Optional<String> kind = table.requiredText("kind");
    if (kind.isPresent() && !KINDS.contains(kind.get())) {
      table.atValue("kind", "kind must be rolled, plain or slap");
    }
    List<Integer> or = table.integers("or", 1, LAST_POSITION);
    table.rejectOthers();
    return position.isPresent() && kind.isPresent()
        ? Optional.of(new NeededPrint(position.getAsInt(), kind.get(), List.copyOf(or)))
        : Optional.empty();
  }

  private Optional<AgencyField> field(TomlTable table) {
    Optional<String> written = table.requiredText("field");
    Optional<FieldNumber> number =
        written.flatMap(text -> table.tried("field", text, FieldNumber::parse));
    Optional<String> name = table.requiredText("name");
    Presence presence =
        table.parsed("condition", Presence::parse).orElseGet(() -> Presence.parse("optional"));
    Optional<ValueRule> values = table.parsed("values", this::valueRule);
    String meaning = table.text("meaning").orElse(values.map(ValueRule::inWords).orElse("a value"));
    boolean personal = table.flag("personal");
    String place = table.text("source").orElse("");
    if (!table.keys().contains("condition") && !table.keys().contains("values")) {
      table.atKey("field", "neither condition nor values: this entry would require nothing");
    }
    table.rejectOthers();
    return number.map(
        found ->
            new AgencyField(found, name.orElse(""), presence, values, meaning, personal, place));
  }

  private ValueRule valueRule(String text) {
    ValueRule rule = ValueRule.parse(text);
    requireTables(rule);
    return rule;
  }

  private void requireTables(ValueRule rule) {
    if (rule instanceof ValueRule.AnyOf any) {
      any.rules().forEach(this::requireTables);
    }
    if (rule instanceof ValueRule.InTable in && !tables.hasCodeTable(in.table())) {
      throw new IllegalArgumentException("no code table " + in.table());
    }
  }

  private void severities(TomlTable table, Map<String, Severity> severities) {
    for (String id : table.keys()) {
      Optional<RuleRow> rule = tables.catalogue().find(id);
      Optional<Severity> severity = table.parsed(id, AgencyProfileReader::severity);
      if (rule.isEmpty()) {
        table.atKey(id, "no rule " + id + "; to list all: ridgeproof rules");
      } else if (severity.isPresent()) {
        severities.put(id, severity.get());
        relaxed(id, rule.get().severity(), severity.get());
      }
    }
  }

  private Optional<AcceptedDeviation> accepted(TomlTable table) {
    Optional<String> rule = table.requiredText("rule");
    if (rule.isPresent() && tables.catalogue().find(rule.get()).isEmpty()) {
      table.atValue("rule", "no rule " + rule.get() + "; ridgeproof rules lists them");
    }
    Optional<String> station = table.text("station");
    Optional<String> reason = table.requiredText("reason");
    Optional<String> written = table.requiredText("last_day");
    Optional<LocalDate> lastDay =
        written.flatMap(text -> table.tried("last_day", text, AgencyProfileReader::day));
    table.rejectOthers();
    return rule.isPresent() && reason.isPresent() && lastDay.isPresent()
        ? Optional.of(new AcceptedDeviation(rule.get(), station, reason.get(), lastDay.get()))
        : Optional.empty();
  }

  private static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException("not a day such as 2026-12-31");
    }
  }

  private void relaxed(String id, Severity published, Severity now) {
    if (published.worseThan(now)) {
      relaxed.add(new RelaxedRule(id, published.name(), now.name()));
    }
  }

  private static Severity severity(String text) {
    for (Severity severity : Severity.values()) {
      if (severity.name().equals(text)) {
        return severity;
      }
    }
    throw new IllegalArgumentException("not BLOCKING, LIKELY, ADVICE or NOTE");
  }

  private AgencyLimits limits(TomlTable table) {
    Map<String, Double> compression = new LinkedHashMap<>();
    table.table("compression").ifPresent(ratios -> compression(ratios, compression));
    Set<Integer> resolutions = new LinkedHashSet<>(table.integers("resolutions", 1, MAX_PPI));
    List<Integer> published =
        tables.resolutionClasses().stream()
            .map(ResolutionClass::ppi)
            .map(Double::intValue)
            .toList();
    if (!published.containsAll(resolutions)) {
      table.atValue(
          "resolutions", "a profile can only choose among the published resolutions " + published);
    }
    OptionalInt printAge = table.integer("print_age_days", 1, MAX_DAYS);
    double usual =
        tables.particulars().plausible("print-age", "applicant").map(Plausible::most).orElse(0.0);
    if (printAge.isPresent() && printAge.getAsInt() > usual) {
      relaxed.add(
          new RelaxedRule(
              PRINT_AGE_RULE,
              String.format(Locale.ROOT, "%.0f days", usual),
              printAge.getAsInt() + " days"));
    }
    OptionalDouble match = fingerMatch(table);
    table.rejectOthers();
    return new AgencyLimits(compression, resolutions, printAge, match);
  }

  private OptionalDouble fingerMatch(TomlTable table) {
    OptionalDouble match = table.number("finger_match", MIN_MATCH, MAX_MATCH);
    double usual = tables.pixelLimits().value("finger-match");
    if (match.isPresent() && match.getAsDouble() < usual) {
      relaxed.add(
          new RelaxedRule(
              MATCH_RULE,
              String.format(Locale.ROOT, "similarity %.0f", usual),
              String.format(Locale.ROOT, "similarity %.0f", match.getAsDouble())));
    }
    return match;
  }

  private void compression(TomlTable table, Map<String, Double> compression) {
    for (String format : table.keys()) {
      OptionalDouble ratio = table.number(format, 1, MAX_RATIO);
      if (!FORMATS.contains(format)) {
        table.atKey(format, "no format " + format + "; available: " + String.join(", ", sorted()));
      } else if (ratio.isPresent()) {
        compression.put(format, ratio.getAsDouble());
        tables.compressionCeilings().stream()
            .filter(ceiling -> ceiling.format().equals(format))
            .map(CompressionLimit::most)
            .filter(most -> ratio.getAsDouble() > most)
            .forEach(most -> raised(format, most, ratio.getAsDouble()));
      }
    }
  }

  private void raised(String format, double published, double now) {
    relaxed.add(
        new RelaxedRule(
            COMPRESSION_RULE,
            String.format(Locale.ROOT, "%s up to %.1f : 1", format, published),
            String.format(Locale.ROOT, "%s up to %.1f : 1", format, now)));
  }

  private static List<String> sorted() {
    return FORMATS.stream().sorted().toList();
  }
}
