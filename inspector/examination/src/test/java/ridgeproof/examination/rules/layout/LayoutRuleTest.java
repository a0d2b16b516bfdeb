package ridgeproof.examination.rules.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.examination.SampleCard;

class LayoutRuleTest {

  private static final int HEADER = 1;
  private static final int PARTICULARS = 2;
  private static final int DOMAIN = 13;

  /** The findings of layouts, where the name and the density of the first print are wrong. */
  private static List<String> found(SampleCard card) {
    return card
        .with(PARTICULARS, draft -> draft.with(18, "SPECIMEN,AD4"))
        .with(3, print -> print.with(9, "5x0"))
        .examine()
        .everyFinding()
        .stream()
        .filter(finding -> finding.ruleId().startsWith("RP-FLD-"))
        .map(finding -> finding.ruleId() + " " + finding.location().field().orElseThrow())
        .toList();
  }

  private static SampleCard ofDomain(String domain) {
    return SampleCard.rolledTagged()
        .with(HEADER, header -> header.with(DOMAIN, List.of(List.of(domain, ""))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"NORAM", "noram"})
  void aDocumentBindsTheTransactionsOfItsDomain(String domain) {
    assertEquals(List.of("RP-FLD-005 2.018", "RP-FLD-005 14.009"), found(ofDomain(domain)));
  }

  @Test
  void aTransactionThatNamesNoDomainIsOfTheUsualOne() {
    SampleCard card = SampleCard.rolledTagged().with(HEADER, header -> header.without(DOMAIN));
    assertEquals(List.of("RP-FLD-005 2.018", "RP-FLD-005 14.009"), found(card));
  }

  @Test
  void aTransactionOfAnotherDomainIsBoundByTheStandardAlone() {
    assertEquals(List.of("RP-FLD-005 14.009"), found(ofDomain("TIDEWATER")));
  }

  @Test
  void theRulesOfThisPackageAreTheRowsOfTheCatalogueThatTheyReport() {
    Set<String> named = new TreeSet<>();
    LayoutRules.all().forEach(rule -> named.addAll(rule.ids()));
    Set<String> expected = new TreeSet<>(List.of("RP-FLD-016", "RP-TXN-001", "RP-TXN-002"));
    expected.addAll(List.of("RP-TXN-008", "RP-TXN-016", "RP-TXN-017", "RP-TXN-018"));
    expected.addAll(List.of("RP-COD-001", "RP-COD-002", "RP-COD-003"));
    expected.addAll(List.of("RP-PTL-050", "RP-PTL-051", "RP-PTL-052", "RP-PTL-053"));
    for (int i = 1; i <= 13; i++) {
      expected.add("RP-FLD-%03d".formatted(i));
    }
    assertEquals(expected, named);
  }
}
