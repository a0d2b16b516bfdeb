package ridgeproof.spec.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.table.Source;

/** Every code table against the published lists that it is made of, both ways. */
class CodesAgreeWithPublishedListsTest {

  private static final SpecTables TABLES = SpecTables.open();
  private static final int ANY = -1;

  /** The lists that make up a table, as one edition of the standard has them. */
  private static Map<String, Map<Integer, List<String>>> listsOfTables() {
    Map<String, Map<Integer, List<String>>> tables = new LinkedHashMap<>();
    for (Map<String, String> row : Differences.resource("code-lists.csv")) {
      int version = row.get("version").isEmpty() ? ANY : Integer.parseInt(row.get("version"));
      tables
          .computeIfAbsent(row.get("table"), key -> new LinkedHashMap<>())
          .computeIfAbsent(version, key -> new ArrayList<>())
          .add(row.get("list"));
    }
    return tables;
  }

  @Test
  void eachTableHasTheCodesOfItsListsAndNoOthers() {
    CodeLists published = new CodeLists(PublishedLists.open());
    Differences differences = new Differences("missing code", "extra code", "meaning");
    listsOfTables()
        .forEach(
            (table, byVersion) ->
                byVersion.forEach(
                    (version, lists) -> compare(table, version, lists, published, differences)));
    differences.assertListed();
  }

  private static void compare(
      String table, int version, List<String> lists, CodeLists published, Differences differences) {
    Map<String, Code> own = new LinkedHashMap<>();
    TABLES.codes(table).codes().stream()
        .filter(code -> version == ANY || code.versions().contains(version))
        .forEach(code -> own.put(CodeLists.normal(code.code()), code));
    Set<String> listed = new TreeSet<>();
    for (String list : lists) {
      published
          .list(list)
          .forEach(
              (code, meaning) -> {
                String key = CodeLists.normal(code);
                listed.add(key);
                if (!own.containsKey(key)) {
                  differences.add("missing code", table, key, meaning + " (" + list + ")");
                } else if (!meaning.isEmpty()
                    && !MeaningStems.share(own.get(key).name(), meaning)) {
                  differences.add(
                      "meaning", table, key, own.get(key).name() + " | " + meaning + " " + list);
                }
              });
    }
    own.keySet().stream()
        .filter(code -> !listed.contains(code))
        .forEach(code -> differences.add("extra code", table, code, own.get(code).name()));
  }

  @Test
  void aCodeIsPublishedExactlyWhereItsTableIsComparedWithAListThatHasIt() {
    CodeLists published = new CodeLists(PublishedLists.open());
    Map<String, Set<String>> lists =
        listsOfTables().entrySet().stream()
            .collect(
                Collectors.toMap(
                    Map.Entry::getKey,
                    e ->
                        e.getValue().values().stream()
                            .flatMap(List::stream)
                            .collect(Collectors.toCollection(TreeSet::new))));
    List<String> wrong = new ArrayList<>();
    for (SpecTables.CodeTableTitle title : TABLES.codeTables()) {
      if (title.table().equals("countries")) {
        continue; // the JDK's, checked by CountriesAndStatesTest
      }
      Set<String> own = lists.getOrDefault(title.table(), Set.of());
      for (Code code : TABLES.codes(title.table()).codes()) {
        boolean claimed = code.source().known() == Source.Knowledge.PUBLISHED;
        String cited = code.source().document() + ": " + code.source().place();
        boolean inCited = own.contains(cited) && has(published.list(cited), code);
        boolean inAny = own.stream().anyMatch(list -> has(published.list(list), code));
        if (claimed ? !inCited : inAny) {
          wrong.add(title.table() + " " + code.code() + ": " + code.source());
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static boolean has(Map<String, String> list, Code code) {
    String key = CodeLists.normal(code.code());
    return list.keySet().stream().anyMatch(other -> CodeLists.normal(other).equals(key));
  }

  @Test
  void nineCodesInTenArePublished() {
    long all = 0;
    long published = 0;
    for (SpecTables.CodeTableTitle title : TABLES.codeTables()) {
      if (!title.table().equals("countries")) {
        for (Code code : TABLES.codes(title.table()).codes()) {
          all++;
          published += code.source().known() == Source.Knowledge.PUBLISHED ? 1 : 0;
        }
      }
    }
    assertTrue(published >= 0.9 * all, published + " of " + all);
  }
}
