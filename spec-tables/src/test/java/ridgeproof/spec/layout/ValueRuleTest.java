package ridgeproof.spec.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ValueRuleTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{0, 1, 2}          | 2                | true",
        "{0, 1, 2}          | 02               | true",
        "{0, 1, 2}          | 3                | false",
        "{AB, 1..5}         | ab               | true",
        "{AB, 1..5}         | 6                | false",
        "0..99              | 99               | true",
        "0..99              | 100              | false",
        "1..*               | 70000            | true",
        "9.80..39.37        | 19.69            | true",
        "0..99              | x                | false",
        "date               | 20240229         | true",
        "date               | 20230229         | false",
        "date               | 2024-02-29       | false",
        "gmt                | 20240229235959Z  | true",
        "gmt                | 20240229240000Z  | false",
        "gmt                | 20240229235959   | false",
        "pattern [A-Z]{2}   | AB               | true",
        "pattern [A-Z]{2}   | ABC              | false",
        "{0} or 10..20      | 0                | true",
        "pattern [A-Z]{2} -- two or more or less or {7} | 7 | true",
        "pattern [A-Z]{2} -- two or more or less or {7} | AB | true",
        "{0} or 10..20      | 5                | false",
        "table sizes        | L                | true",
        "table sizes        | Q                | false",
      })
  void aValueIsHeldToTheRuleAsItIsWritten(String rule, String value, boolean expected) {
    assertEquals(
        expected,
        ValueRule.parse(rule.strip())
            .matches(value.strip(), (table, code) -> table.equals("sizes") && code.equals("L")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "0-9", "{}", "{1,,2}", "a..b", "pattern [", "something"})
  void whatIsNoRuleIsRefused(String text) {
    assertThrows(IllegalArgumentException.class, () -> ValueRule.parse(text));
  }
}
