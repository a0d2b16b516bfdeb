package ridgeproof.report.catalogue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.descriptive.ParticularRow;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.RecordTypeRow;
import ridgeproof.spec.rule.Aspect;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.rule.Severity;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Source.Knowledge;

/** The page {@code docs/coverage.md}: how much of the tables is published, and what is not. */
public final class CoveragePage {

  private final SpecTables tables;
  private final StringBuilder out = new StringBuilder();

  public CoveragePage(SpecTables tables) {
    this.tables = tables;
  }

  /** Rows of one table by how they are known. */
  private static final class Count {
    private final Map<Knowledge, Integer> rows = new EnumMap<>(Knowledge.class);

    void add(Source source) {
      rows.merge(source.known(), 1, Integer::sum);
    }

    void addAll(Count other) {
      other.rows.forEach((known, number) -> rows.merge(known, number, Integer::sum));
    }

    int of(Knowledge known) {
      return rows.getOrDefault(known, 0);
    }

    int all() {
      return rows.values().stream().mapToInt(Integer::intValue).sum();
    }

    String cells() {
      StringBuilder cells = new StringBuilder();
      cells.append(all()).append(" | ").append(of(Knowledge.PUBLISHED)).append(" | ");
      cells.append(of(Knowledge.DISPUTED)).append(" | ").append(of(Knowledge.FROM_MEMORY));
      cells.append(" | ").append(of(Knowledge.COMMON_PRACTICE)).append(" | ");
      return cells.append(percent()).append(" |\n").toString();
    }

    private String percent() {
      return String.format(Locale.ROOT, "%.1f %%", 100.0 * of(Knowledge.PUBLISHED) / all());
    }
  }

  /** The page in Markdown. */
  public String markdown() {
    out.setLength(0);
    out.append("# How much is known\n\n");
    out.append("Written by `ridgeproof rules --coverage`; edit the tables, not this page.\n\n");
    out.append("`published`: a test compares the row with a published list. `disputed`: sources ");
    out.append("disagree. `from memory`: no list was at hand. `common practice`: the trade knows ");
    out.append("it. A finding that rests on a disputed or remembered row alone is never ");
    out.append("BLOCKING. Intended differences from the lists are in ");
    out.append("`published/differences.csv` of `spec-tables`, each with its reason.\n\n");
    appendCodes();
    appendLayouts();
    appendParticulars();
    appendRules();
    appendRest();
    return out.toString();
  }

  private void heading(String title, String first) {
    out.append("## ").append(title).append("\n\n| ").append(first);
    out.append(" | rows | published | disputed | from memory | common practice | published |\n");
    out.append("|---|---:|---:|---:|---:|---:|---:|\n");
  }

  private void line(String name, Count count) {
    out.append("| ").append(name).append(" | ").append(count.cells());
  }

  private void appendCodes() {
    heading("Codes", "table");
    Count sum = new Count();
    for (SpecTables.CodeTableTitle title : tables.codeTables()) {
      if (!title.table().equals("countries")) {
        Count count = new Count();
        tables.codes(title.table()).codes().stream().map(Code::source).forEach(count::add);
        line(title.table(), count);
        sum.addAll(count);
      }
    }
    line("**all tables**", sum);
    out.append("\nCountries are those of the running JDK (ISO 3166-1).\n\n");
  }

  private void appendLayouts() {
    heading("Fields: tags and mnemonics", "record type");
    Count seen = new Count();
    Count all = new Count();
    for (RecordTypeRow type : tables.recordTypes()) {
      Count fields = new Count();
      for (FieldRow row : tables.layout(type.type()).rows()) {
        if (!row.isRange() && row.item().isEmpty()) {
          fields.add(row.source());
        }
      }
      if (fields.all() > 0) {
        line("Type-" + type.type() + " " + type.name(), fields);
        all.addAll(fields);
        if (fields.of(Knowledge.PUBLISHED) > 0) {
          seen.addAll(fields);
        }
      }
    }
    line("**record types with a published message**", seen);
    line("**all record types**", all);
    out.append('\n');
    appendAspects();
  }

  private void appendAspects() {
    Map<Aspect, int[]> aspects = new EnumMap<>(Aspect.class);
    Count items = new Count();
    for (RecordTypeRow type : tables.recordTypes()) {
      for (FieldRow row : tables.layout(type.type()).rows()) {
        if (!row.isRange()) {
          row.matched().aspects().forEach(a -> aspects.computeIfAbsent(a, k -> new int[1])[0]++);
          if (row.item().isPresent()) {
            items.add(row.source());
          }
        }
      }
    }
    heading("Items of fields: mnemonics", "rows");
    line("items", items);
    out.append("\nBeside tag and mnemonic these agree with a published message or schema: ");
    List<String> words = new ArrayList<>();
    aspects.forEach(
        (aspect, number) ->
            words.add(aspect.name().toLowerCase(Locale.ROOT) + " of " + number[0] + " rows"));
    out.append(String.join(", ", words)).append(". All else in the rows is from memory.\n\n");
  }

  private void appendParticulars() {
    heading("Type-2 fields by type of transaction", "type of transaction");
    Count sampled = new Count();
    Count others = new Count();
    Map<String, Source> types = new TreeMap<>(tables.particulars().transactions());
    types.forEach(
        (type, source) -> {
          Count count = new Count();
          tables.particulars().ofTransaction(type).stream()
              .map(ParticularRow::source)
              .forEach(count::add);
          line(type, count);
          (source.known() == Knowledge.PUBLISHED ? sampled : others).addAll(count);
        });
    line("**types with a published sample**", sampled);
    line("**types without**", others);
    out.append('\n');
  }

  private void appendRules() {
    heading("Rules", "severity");
    Map<Severity, Count> counts = new EnumMap<>(Severity.class);
    for (RuleRow rule : tables.catalogue().rules()) {
      counts.computeIfAbsent(rule.severity(), key -> new Count()).add(rule.source());
    }
    counts.forEach((severity, count) -> line(severity.name(), count));
    out.append("\nA rule of area STR needs no list: the bytes of the file contradict each other. ");
    out.append("A rule that a row of a table triggers is as well known as that row.\n\n");
  }

  /** What is left, by name. */
  private void appendRest() {
    out.append("## What is not published\n\n");
    Map<String, List<String>> rest = new LinkedHashMap<>();
    for (SpecTables.CodeTableTitle title : tables.codeTables()) {
      for (Code code : tables.codes(title.table()).codes()) {
        if (code.source().known() != Knowledge.PUBLISHED) {
          rest.computeIfAbsent("Codes of " + title.table(), k -> new ArrayList<>())
              .add(code.code());
        }
      }
    }
    for (RecordTypeRow type : tables.recordTypes()) {
      for (FieldRow row : tables.layout(type.type()).rows()) {
        if (!row.isRange() && row.item().isEmpty() && row.source().known() != Knowledge.PUBLISHED) {
          List<String> names =
              rest.computeIfAbsent("Fields of Type-" + type.type(), k -> new ArrayList<>());
          if (!names.contains(row.number().toString())) {
            names.add(row.number().toString());
          }
        }
      }
    }
    tables
        .particulars()
        .transactions()
        .forEach(
            (type, source) -> {
              List<String> fields =
                  tables.particulars().ofTransaction(type).stream()
                      .filter(row -> row.source().known() != Knowledge.PUBLISHED)
                      .map(row -> row.field() + " (" + row.source().known().label() + ")")
                      .toList();
              if (!fields.isEmpty() && source.known() == Knowledge.PUBLISHED) {
                rest.put("Type-2 fields of " + type, fields);
              }
            });
    rest.forEach(
        (where, names) ->
            out.append("- ")
                .append(where)
                .append(": ")
                .append(String.join(", ", names))
                .append('\n'));
  }
}
