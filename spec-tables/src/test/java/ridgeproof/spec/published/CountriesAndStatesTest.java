package ridgeproof.spec.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.Code;

/** Countries as the JDK carries ISO 3166-1, states and provinces as NCIC lists them. */
class CountriesAndStatesTest {

  private static final SpecTables TABLES = SpecTables.open();
  private static final Pattern ALPHA3 = Pattern.compile("enumeration value=\"([A-Z]{3})\"");

  @Test
  void theCountriesOfTheJdkAreThoseOfAPublishedListExceptForWhatChangedSince() throws Exception {
    PublishedLists shared = PublishedLists.open();
    String schema =
        java.nio.file.Files.readString(shared.files("xml/schemas", "iso_3166.xsd").get(0));
    Set<String> published = new TreeSet<>();
    for (Matcher match = ALPHA3.matcher(schema); match.find(); ) {
      published.add(match.group(1));
    }
    Set<String> own =
        TABLES.codes("countries").codes().stream().map(Code::code).collect(Collectors.toSet());
    Differences differences = new Differences("country");
    published.stream()
        .filter(code -> !own.contains(code))
        .forEach(code -> differences.add("country", "countries", code, "not in the JDK"));
    own.stream()
        .filter(code -> !published.contains(code))
        .forEach(code -> differences.add("country", "countries", code, "only in the JDK"));
    differences.assertListed();
  }

  @Test
  void eachStateProvinceAndTerritoryIsCalledWhatTheNcicCallsIt() {
    CodeLists published = new CodeLists(PublishedLists.open());
    Map<String, String> kinds =
        Map.of(
            "NCIC5: UnitedStatesCodeSimpleType", "state",
            "NCIC5: CanadianCodeSimpleType", "province",
            "NCIC5: USTerritoriesCodeSimpleType", "territory",
            "NCIC5: CountryCodeSimpleType", "country");
    Differences differences = new Differences("kind of place");
    kinds.forEach(
        (list, kind) ->
            published
                .list(list)
                .keySet()
                .forEach(
                    code -> {
                      String own =
                          TABLES.codes("birthplaces").find(code).orElseThrow().property("kind");
                      if (!own.equals(kind)) {
                        differences.add("kind of place", "birthplaces", code, own + ", " + kind);
                      }
                    }));
    differences.assertListed();
  }

  @Test
  void everyStateOfTheListOfStatesIsAPlaceOfBirth() {
    for (Code state : TABLES.codes("us-states").codes()) {
      assertEquals(
          true, TABLES.codes("birthplaces").find(state.code()).isPresent(), state.toString());
    }
  }
}
