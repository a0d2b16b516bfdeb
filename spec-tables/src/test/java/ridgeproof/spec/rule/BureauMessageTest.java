package ridgeproof.spec.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;

class BureauMessageTest {

  private static final SpecTables TABLES = SpecTables.open();

  @Test
  void everyMessageCanBeFoundAndHasASourceThatIsListed() {
    Set<String> codes = new HashSet<>();
    for (BureauMessage message : TABLES.bureauMessages()) {
      assertTrue(message.code().isPresent() || !message.words().isEmpty(), message.title());
      message.code().ifPresent(code -> assertTrue(codes.add(code), code));
      assertTrue(TABLES.documents().containsKey(message.source().document()), message.title());
    }
  }

  @Test
  void aFamilyOfRulesIsEveryRuleThatBeginsSo() {
    BureauMessage quality = byCode("L0008");
    List<String> ridges =
        TABLES.catalogue().rules().stream()
            .map(RuleRow::id)
            .filter(id -> id.startsWith("RP-RDG-"))
            .toList();
    assertTrue(quality.rules().containsAll(ridges));
    assertFalse(quality.rules().contains("RP-STR-004"));
  }

  @Test
  void aShortWordHasToBeWholeAndALongOneToBeginAWord() {
    BureauMessage birth =
        TABLES.bureauMessages().stream()
            .filter(message -> message.title().equals("Date of birth is not valid"))
            .findFirst()
            .orElseThrow();
    assertEquals(1, birth.agreement(Set.of("age", "of", "subject")));
    assertEquals(0, birth.agreement(Set.of("agency", "unknown")));
    assertEquals(2, birth.agreement(Set.of("dates", "birth")));
    assertEquals(0, birth.agreement(Set.of("date", "printed")));
  }

  @Test
  void aFamilyIsNoMessageOfItsOwn() {
    BureauMessage family =
        TABLES.bureauMessages().stream().filter(BureauMessage::isFamily).findFirst().orElseThrow();
    assertEquals("A*", family.code().orElseThrow());
    assertTrue(family.isFamilyOf("A0099"));
    assertFalse(family.isFamilyOf("E0099"));
    assertFalse(family.hasCode("A*"));
  }

  private static BureauMessage byCode(String code) {
    return TABLES.bureauMessages().stream()
        .filter(message -> message.hasCode(code))
        .findFirst()
        .orElseThrow();
  }
}
