package ridgeproof.examination.rules.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.Subfield;

/** One item, and a group of two that may come three times: seven items at most. */
class ItemPlanTest {

  private static final ItemPlan PLAN =
      ItemPlan.of(
          List.of(
              SpecimenRows.item(1, "mandatory"),
              SpecimenRows.repeated(2, 3),
              SpecimenRows.repeated(3, 3)));

  /** Each place as the number of the item, that of its row, and the round. */
  private static List<String> places(ItemPlan plan, int size) {
    return plan.places(size).stream()
        .map(p -> p.number() + " by row " + p.row().item().getAsInt() + " in " + p.round())
        .toList();
  }

  private static final List<String> ONCE =
      List.of("1 by row 1 in 1", "2 by row 2 in 1", "3 by row 3 in 1");
  private static final List<String> SECOND = List.of("4 by row 2 in 2", "5 by row 3 in 2");
  private static final List<String> THIRD = List.of("6 by row 2 in 3", "7 by row 3 in 3");

  private static List<String> all(List<List<String>> rounds) {
    return rounds.stream().flatMap(List::stream).toList();
  }

  @Test
  void eachRowHasItsFirstPlaceWhateverTheSubfieldHas() {
    assertEquals(ONCE, places(PLAN, 1));
    assertEquals(ONCE, places(PLAN, 3));
  }

  @Test
  void aRoundThatTheSubfieldBeginsIsPlannedWhole() {
    assertEquals(all(List.of(ONCE, SECOND)), places(PLAN, 4));
    assertEquals(all(List.of(ONCE, SECOND)), places(PLAN, 5));
    assertEquals(all(List.of(ONCE, SECOND, THIRD)), places(PLAN, 6));
  }

  @Test
  void noMoreRoundsArePlannedThanTheGroupMayHave() {
    assertEquals(7, PLAN.most());
    assertEquals(all(List.of(ONCE, SECOND, THIRD)), places(PLAN, 12));
  }

  @Test
  void itemsThatComeOnceAreNoGroup() {
    ItemPlan plan =
        ItemPlan.of(List.of(SpecimenRows.item(1, "mandatory"), SpecimenRows.item(2, "optional")));
    assertEquals(2, plan.most());
    assertEquals(List.of("1 by row 1 in 1", "2 by row 2 in 1"), places(plan, 9));
  }

  @Test
  void aRoundSaysSomethingWhereAnyItemOfItDoes() {
    assertTrue(PLAN.says(subfield("1", "a", "b", "c", ""), 2));
    assertTrue(PLAN.says(subfield("1", "a", "b", "", "d"), 2));
    assertTrue(PLAN.says(subfield("1", "a", "b", "", "", "", "d"), 3));
  }

  @Test
  void aRoundWhoseItemsAreAllEmptySaysNothingWhateverItsNeighborsSay() {
    assertFalse(PLAN.says(subfield("1", "a", "b"), 2));
    assertFalse(PLAN.says(subfield("1", "a", "b", "", "", "c", "d"), 2));
    assertFalse(PLAN.says(subfield("1", "a", "b", "c", "d", "", "", "x"), 3));
  }

  private static Subfield subfield(String... texts) {
    ByteRange range = new ByteRange(0, 1);
    return new Subfield(Stream.of(texts).map(text -> new Item(text, range)).toList(), range);
  }
}
