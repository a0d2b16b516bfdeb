package ridgeproof.examination.rules.image;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class ImageRulesTest {

  /** What is known only of several images together is a cause, and no rule of these. */
  @Test
  void theRulesOfImagesAreTheRowsOfTheCatalogueThatTheyReport() {
    Set<String> named = new TreeSet<>();
    ImageRules.all().forEach(rule -> named.addAll(rule.ids()));
    Set<String> expected = new TreeSet<>();
    for (int i = 1; i <= 18; i++) {
      expected.add("RP-IMG-%03d".formatted(i));
    }
    expected.addAll(List.of("RP-IMG-023", "RP-IMG-024", "RP-IMG-030", "RP-IMG-031"));
    expected.addAll(List.of("RP-IMG-032", "RP-IMG-033", "RP-IMG-034", "RP-IMG-035"));
    expected.addAll(List.of("RP-IMG-036", "RP-IMG-038", "RP-IMG-041", "RP-IMG-042"));
    expected.addAll(List.of("RP-IMG-043", "RP-IMG-050", "RP-IMG-070"));
    assertEquals(expected, named);
  }
}
