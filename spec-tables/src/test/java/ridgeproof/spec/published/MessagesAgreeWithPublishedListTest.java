package ridgeproof.spec.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.rule.BureauMessage;
import ridgeproof.spec.table.Source.Knowledge;

class MessagesAgreeWithPublishedListTest {

  @Test
  void thePublishedCodesAreThoseOfTheList() {
    Set<String> published =
        PublishedLists.open().rows("reject-messages.csv").stream()
            .map(row -> row.get("code"))
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> ours =
        SpecTables.open().bureauMessages().stream()
            .filter(message -> message.source().known() == Knowledge.PUBLISHED)
            .flatMap(message -> message.code().stream())
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(published, ours);
  }

  @Test
  void whatIsNotInTheListIsNotCalledPublished() {
    for (BureauMessage message : SpecTables.open().bureauMessages()) {
      boolean listed = message.code().isPresent() && !message.isFamily();
      assertEquals(listed, message.source().known() == Knowledge.PUBLISHED, message.title());
    }
  }
}
