package ridgeproof.spec.descriptive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.Presence.Demand;

class DescriptiveTextTablesTest {

  private static final SpecTables TABLES = SpecTables.open();
  private static final int VERSION = 502;

  @TestFactory
  Stream<DynamicTest> everyTypeOfTransactionNamesFieldsOfTheLayoutOnceEach() {
    return TABLES.codes("transaction-types").codes().stream()
        .map(type -> DynamicTest.dynamicTest(type.code(), () -> checkType(type.code())));
  }

  private static void checkType(String type) {
    List<ParticularRow> rows = TABLES.particulars().ofTransaction(type);
    assertEquals(rows.size(), rows.stream().map(ParticularRow::field).distinct().count());
    for (ParticularRow row : rows) {
      assertTrue(
          TABLES.layout(2).field(row.field(), VERSION).filter(f -> !f.isRange()).isPresent(),
          row.toString());
      assertTrue(TABLES.documents().containsKey(row.source().document()), row.toString());
    }
  }

  @Test
  void anApplicantSubmissionNeedsANameAndACriminalOneAnArrest() {
    assertTrue(needs("NFUF", "2.018"));
    assertTrue(needs("nfuf", "2.037"));
    assertTrue(needs("CAR", "2.045"));
    assertTrue(!needs("NFUF", "2.045"));
    assertEquals(List.of(), TABLES.particulars().ofTransaction("XYZ"));
  }

  private static boolean needs(String type, String field) {
    return TABLES.particulars().ofTransaction(type).stream()
        .filter(row -> row.field().equals(FieldNumber.parse(field)))
        .anyMatch(row -> row.presence().demandFor(reference -> List.of()) == Demand.MANDATORY);
  }

  @Test
  void everyNumberRuleSpeaksOfAFieldOfTheLayoutAndCitesAKnownDocument() {
    assertTrue(TABLES.particulars().numberRules().size() > 30);
    for (NumberRule rule : TABLES.particulars().numberRules()) {
      assertTrue(TABLES.layout(rule.field().recordType()).knows(rule.field()), rule.toString());
      assertTrue(TABLES.documents().containsKey(rule.source().document()), rule.toString());
    }
  }

  @Test
  void everyDateOrderNamesARuleOfTheCatalogue() {
    assertTrue(TABLES.particulars().dateOrders().size() > 5);
    for (DateOrder order : TABLES.particulars().dateOrders()) {
      assertTrue(TABLES.catalogue().find(order.rule()).isPresent(), order.toString());
    }
  }

  @Test
  void aPlausibleRangeMayHoldForOneKindOfTransactionOrForAll() {
    assertTrue(TABLES.particulars().plausible("age", "applicant").orElseThrow().holds(30));
    assertTrue(!TABLES.particulars().plausible("age", "applicant").orElseThrow().holds(3));
    assertTrue(TABLES.particulars().plausible("age", "miscellaneous").orElseThrow().holds(3));
    assertTrue(TABLES.particulars().plausible("body-mass", "anything").isPresent());
    assertTrue(TABLES.particulars().plausible("age", "response").isEmpty());
  }
}
