package ridgeproof.spec.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;
import ridgeproof.spec.table.VersionRange;

/** A table of codes, each with the versions of the standard that know it. */
public final class CodeTable {

  private static final Set<String> COMMON =
      Set.of("code", "name", "since", "until", "source", "known");

  private final String name;
  private final List<Code> codes;
  private final Map<String, List<Code>> byCode;

  CodeTable(String name, List<Code> codes) {
    this.name = name;
    this.codes = List.copyOf(codes);
    Map<String, List<Code>> index = new HashMap<>();
    for (Code code : codes) {
      index.computeIfAbsent(normal(code.code()), key -> new ArrayList<>(1)).add(code);
    }
    this.byCode = index;
  }

  public static CodeTable load(String name) {
    Table table = Table.resource("codes/" + name + ".csv");
    List<Code> codes = new ArrayList<>();
    List<String> own = table.columns().stream().filter(c -> !COMMON.contains(c)).toList();
    for (Table.Row row : table.rows()) {
      Map<String, String> properties = new HashMap<>();
      own.forEach(column -> properties.put(column, row.text(column)));
      codes.add(
          new Code(
              row.required("code"),
              row.required("name"),
              row.versions(),
              row.source(),
              Collections.unmodifiableMap(properties)));
    }
    return new CodeTable(name, codes);
  }

  /** The countries that the running JDK knows, by their ISO 3166-1 codes of three letters. */
  public static CodeTable countries() {
    Source source = new Source("ISO3166", "", Source.Knowledge.PUBLISHED);
    List<Code> codes = new ArrayList<>();
    for (String alpha2 : Locale.getISOCountries()) {
      Locale country = new Locale("", alpha2);
      codes.add(
          new Code(
              country.getISO3Country(),
              country.getDisplayCountry(Locale.ENGLISH),
              VersionRange.ALL,
              source,
              Map.of("alpha2", alpha2)));
    }
    return new CodeTable("countries", codes);
  }

  public String name() {
    return name;
  }

  public List<Code> codes() {
    return codes;
  }

  /** The code as that version of the standard has it; {@code 7} finds {@code 07}. */
  public Optional<Code> find(String code, int version) {
    return byCode.getOrDefault(normal(code), List.of()).stream()
        .filter(row -> row.versions().contains(version))
        .findFirst();
  }

  /** The code as any version has it. */
  public Optional<Code> find(String code) {
    return byCode.getOrDefault(normal(code), List.of()).stream().findFirst();
  }

  private static String normal(String code) {
    int start = 0;
    while (start < code.length() - 1 && code.charAt(start) == '0' && isNumber(code)) {
      start++;
    }
    return code.substring(start).toUpperCase(Locale.ROOT);
  }

  private static boolean isNumber(String code) {
    return code.chars().allMatch(c -> c >= '0' && c <= '9');
  }
}
