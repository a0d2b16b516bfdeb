package ridgeproof.spec.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.spec.layout.Presence.Demand;

class ConditionTest {

  private static final Map<String, List<String>> VALUES =
      Map.of("14.013", List.of("13", "07"), "14.003", List.of("1"), "1.004", List.of("FAUF"));

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "14.013 in {13, 14}                            | true",
        "14.013 in {1..10}                             | true",
        "14.013 in {20..30}                            | false",
        "14.013 = 7                                    | true",
        "14.013 != 7                                   | false",
        "14.013 != 8                                   | true",
        "14.099 != 8                                   | false",
        "14.013 < 8                                    | true",
        "14.013 >= 14                                  | false",
        "14.013 present                                | true",
        "14.099 absent                                 | true",
        "1.004 = fauf                                  | true",
        "version >= 0500                               | true",
        "version < 0500                                | false",
        "not 14.013 present                            | false",
        "14.099 present or 14.003 = 1 and 1.004 = FAUF | true",
        "(14.099 present or 14.003 = 1) and 1.004 = X  | false",
        "item 2 = A                                    | true",
      })
  void anExpressionHoldsAsItReads(String text, boolean expected) {
    assertEquals(expected, ConditionParser.parse(text.strip()).holds(ConditionTest::valuesOf));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "14.013", "14.013 in", "14.013 in {1", "14.013 is 3", "(14.013 = 3", "a = b"})
  void whatIsNoExpressionIsRefused(String text) {
    assertThrows(IllegalArgumentException.class, () -> ConditionParser.parse(text));
  }

  @Test
  void theFirstClauseThatAppliesDecides() {
    Presence presence =
        Presence.parse("forbidden if 14.099 present; mandatory if 14.013 in {13}; deprecated");
    assertEquals(Demand.MANDATORY, presence.demandFor(ConditionTest::valuesOf));
    assertEquals(Demand.DEPRECATED, presence.demandFor(reference -> List.of()));
  }

  @Test
  void nothingSaidIsOptional() {
    assertEquals(Demand.OPTIONAL, Presence.parse("").demandFor(ConditionTest::valuesOf));
  }

  private static List<String> valuesOf(Reference reference) {
    if (reference instanceof Reference.OfVersion) {
      return List.of("500");
    }
    if (reference instanceof Reference.OfSameSubfield same) {
      return same.item() == 2 ? List.of("A") : List.of();
    }
    FieldNumber number = ((Reference.OfField) reference).number();
    return VALUES.getOrDefault(number.toString(), List.of());
  }
}
