package ridgeproof.spec.agency;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.rule.Severity;

class AgencyProfileReaderTest {

  private static final SpecTables TABLES = SpecTables.open();
  private static final String HEAD =
      """
      name = "tidewater"
      title = "Tidewater Harbour Pilots' licensing office"
      """;
  private static final Path EXAMPLE = Path.of("../docs/examples/tidewater-pilots.toml");

  private static AgencyProfile usable(String toml) {
    ProfileReading reading = AgencyProfileReader.read(toml, TABLES);
    return assertInstanceOf(ProfileReading.Usable.class, reading, reading.toString()).profile();
  }

  private static ProfileReading.Problem firstProblem(String toml) {
    ProfileReading reading = AgencyProfileReader.read(toml, TABLES);
    return assertInstanceOf(ProfileReading.Unusable.class, reading, reading.toString())
        .problems()
        .get(0);
  }

  private static boolean satisfiesSchema(String toml) throws IOException {
    try (InputStream stream =
        AgencyProfileReader.class.getResourceAsStream(AgencyProfileReader.SCHEMA)) {
      JsonSchema schema =
          JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(stream);
      return schema.validate(new TomlMapper().readTree(toml)).isEmpty();
    }
  }

  @Test
  void theExampleCanBeUsed() throws IOException {
    AgencyProfile profile = usable(Files.readString(EXAMPLE));
    assertEquals("tidewater-pilots", profile.name());
    assertEquals(15, profile.prints().size());
    assertEquals(
        List.of("2.9101", "2.037"),
        profile.fields().stream().map(f -> f.number().toString()).toList());
    assertEquals(Map.of("WSQ", 16.0), profile.limits().compression());
    assertEquals(Set.of(500), profile.limits().resolutions());
    assertEquals(OptionalInt.of(90), profile.limits().printAgeDays());
    assertEquals(Severity.BLOCKING, profile.severities().get("RP-TXN-003"));
    assertEquals(List.of(new RelaxedRule("RP-PTL-006", "ADVICE", "NOTE")), profile.relaxed());
  }

  @Test
  void theExampleSatisfiesTheSchema() throws IOException {
    assertTrue(satisfiesSchema(Files.readString(EXAMPLE)));
  }

  @Test
  void theReasonsForReleasingAHeldFileAreAList() throws IOException {
    String toml = HEAD + "release_reasons = [\"Finger injured\", \"Asked for\"]\n";
    assertEquals(List.of("Finger injured", "Asked for"), usable(toml).releaseReasons());
    assertTrue(satisfiesSchema(toml));
    String wrong = HEAD + "release_reasons = [\"\"]\n";
    assertEquals(
        "release_reasons must be a list of texts in quotes", firstProblem(wrong).message());
  }

  @Test
  void aNameAndATitleAreEnough() throws IOException {
    assertEquals(List.of(), usable(HEAD).prints());
    assertTrue(satisfiesSchema(HEAD));
  }

  @Test
  void raisingASeverityIsNotRelaxing() {
    assertEquals(List.of(), usable(HEAD + "[severities]\nRP-IMG-016 = \"BLOCKING\"\n").relaxed());
  }

  @Test
  void aHigherCompressionCeilingIsListedAsRelaxed() {
    List<RelaxedRule> relaxed = usable(HEAD + "[limits.compression]\nWSQ = 20.0\n").relaxed();
    assertEquals(
        List.of(new RelaxedRule("RP-IMG-016", "WSQ up to 18.8 : 1", "WSQ up to 20.0 : 1")),
        relaxed);
  }

  @Test
  void olderPrintsThanUsualAreListedAsRelaxed() {
    List<RelaxedRule> relaxed = usable(HEAD + "[limits]\nprint_age_days = 730\n").relaxed();
    assertEquals(List.of(new RelaxedRule("RP-PTL-024", "365 days", "730 days")), relaxed);
  }

  @Test
  void whatTheParserCannotReadIsReportedWithLineAndColumn() {
    ProfileReading.Problem problem = firstProblem(HEAD + "base = rolled-card\n");
    assertEquals(3, problem.line());
    assertEquals(8, problem.column(), problem.toString());
    assertTrue(problem.inFile("p.toml").startsWith("p.toml:3:8: "), problem.toString());
    assertTrue(problem.message().lines().count() == 1, problem.message());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          base = "card"                                        | 3 |  8 | no profile card
          nmae = "x"                                           | 3 |  1 | unknown key nmae
          prints = 5                                           | 3 | 10 | prints must be written as tables
          [limits]~print_age_days = "90"                       | 4 | 18 | print_age_days must be a whole number
          [limits]~print_age_days = 0                          | 4 | 18 | print_age_days must be a whole number
          [limits]~resolutions = [500, 600]                    | 4 | 15 | a profile can only choose
          [limits.compression]~PGM = 3                         | 4 |  1 | no format PGM
          [limits.compression]~WSQ = 0.5                       | 4 |  7 | WSQ must be a number
          limits = { compression = { WSQ = "no" } }            | 3 | 10 | WSQ must be a number
          [severities]~RP-PTL-006 = "LOW"                      | 4 | 14 | RP-PTL-006 "LOW": not BLOCKING
          [severities]~"RP-XXX-001" = "NOTE"                   | 4 |  1 | no rule RP-XXX-001
          [[prints]]~position = 16~kind = "slap"               | 4 | 12 | position must
          [[prints]]~kind = "slap"                             | 3 |  1 | position is missing
          [[prints]]~position = 1~kind = "flat"                | 5 |  8 | kind must be
          [[fields]]~field = "2.37x"~name = "a"~values = "date" | 4 |  9 | field "2.37x": not a field number
          [[fields]]~field = "2.037"~name = "a"                | 4 |  1 | neither condition nor values
          [[fields]]~field = "2.037"~values = "date"           | 3 |  1 | name is missing
          [[fields]]~field = "2.037"~name = "a"~condition = "needed" | 6 | 13 | condition "needed": begins with
          [[fields]]~field = "2.037"~name = "a"~condition = "mandatory if" | 6 | 13 | condition "mandatory if"
          [[fields]]~field = "2.037"~name = "a"~values = "pattern [" | 6 | 10 | values "pattern [": pattern
          [[fields]]~field = "2.037"~name = "a"~values = "table pilots" | 6 | 10 | values "table pilots": no code table
          [[fields]]~field = "2.037"~name = "a"~values = "date"~personal = "y" | 7 | 12 | personal must be true or false
          """)
  void whatCannotBeUsedIsReportedWithLineAndColumn(
      String body, int line, int column, String message) {
    ProfileReading.Problem problem = firstProblem(HEAD + body.replace('~', '\n') + "\n");
    assertTrue(problem.message().startsWith(message), problem.toString());
    assertEquals(
        List.of(line, column), List.of(problem.line(), problem.column()), problem.message());
  }

  @Test
  void theSecondEntryOfAnArrayOfTablesHasItsOwnPlace() {
    String toml =
        HEAD
            + """
              # a comment with = and [brackets]
              description = \"""
              several lines = [
              \"""
              [[prints]]
              position = 1 # "quoted"
              kind = 'rolled'
              [[prints]]
              kind = "rolled"
              position = 99
              """;
    ProfileReading.Problem problem = firstProblem(toml);
    assertEquals(List.of(12, 12), List.of(problem.line(), problem.column()), problem.toString());
  }

  @Test
  void everyProblemIsFound() {
    ProfileReading reading = AgencyProfileReader.read("base = \"x\"\nnmae = 1\n", TABLES);
    assertEquals(4, ((ProfileReading.Unusable) reading).problems().size(), reading.toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "base = \"card\"",
        "nmae = \"x\"",
        "title = 5",
        "[limits]\nprint_age_days = 0",
        "[limits]\nresolutions = [600]",
        "[limits.compression]\nPGM = 3",
        "[severities]\nRP-PTL-006 = \"LOW\"",
        "[[prints]]\nposition = 16\nkind = \"slap\"",
        "[[fields]]\nfield = \"2.037\"\nname = \"a\"",
        "[[fields]]\nfield = \"2.037\"\nname = \"a\"\ncondition = \"needed\"",
      })
  void schemaAndReaderRefuseTheSame(String body) throws IOException {
    String toml = (body.startsWith("title") ? "name = \"x\"\n" : HEAD) + body + "\n";
    assertTrue(!satisfiesSchema(toml));
    firstProblem(toml);
  }
}
