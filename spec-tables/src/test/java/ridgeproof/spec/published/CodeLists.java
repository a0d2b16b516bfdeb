package ridgeproof.spec.published;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Every published code list, by the key of its document and the name of its type. */
final class CodeLists {

  private static final Map<String, String> FILES =
      Map.of(
          "NIEM6", "niem6-biometrics.csv",
          "NIEMB1", "niem-biometrics-1.0.csv",
          "EBTS10", "ebts10-codes.csv",
          "FBI2", "fbi-2.0.csv",
          "NCIC5", "ncic-5.0.1.csv");

  private static final String OLDER_TYPES = "EFTS71: appendix E";

  private final Map<String, Map<String, String>> lists = new TreeMap<>();

  CodeLists(PublishedLists shared) {
    FILES.forEach(
        (document, file) ->
            shared
                .rows(file)
                .forEach(
                    row ->
                        lists
                            .computeIfAbsent(
                                document + ": " + row.get("schema_type"),
                                key -> new LinkedHashMap<>())
                            .put(row.get("code"), row.get("meaning"))));
    Map<String, String> older = lists.computeIfAbsent(OLDER_TYPES, key -> new LinkedHashMap<>());
    shared
        .rows("tot-type2-occurs-efts71.csv")
        .forEach(row -> older.put(row.get("tot"), "")); // the list gives no titles
  }

  /**
   * Meanings by code.
   *
   * @param list {@code NIEM6: CSPCodeSimpleType}
   */
  Map<String, String> list(String list) {
    Map<String, String> codes = lists.get(list);
    if (codes == null) {
      throw new AssertionError("no published list " + list);
    }
    return codes;
  }

  /** As the other, empty where there is no such list. */
  Map<String, String> find(String list) {
    return lists.getOrDefault(list, Map.of());
  }

  /** As tables compare codes: numbers without leading zeros, text without regard to case. */
  static String normal(String code) {
    boolean number = code.chars().allMatch(c -> c >= '0' && c <= '9');
    String stripped = number ? code.replaceFirst("^0+(?=.)", "") : code;
    return stripped.toUpperCase(Locale.ROOT);
  }
}
