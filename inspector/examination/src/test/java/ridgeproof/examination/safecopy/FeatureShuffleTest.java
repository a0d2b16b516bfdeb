package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.consistency.FeaturePoints;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.Subfield;

class FeatureShuffleTest {

  private static final int MINUTIAE = 60;
  private static final int OUTSIDE = 9_000;
  private static final FeaturePoints MINUTIA = points(new FieldNumber(9, 12));

  private static FeaturePoints points(FieldNumber field) {
    return SpecTables.open().agreements().featurePoints().stream()
        .filter(points -> points.field().equals(field))
        .findFirst()
        .orElseThrow();
  }

  /** Minutiae here and there in 20 mm, and where asked a last one far outside. */
  private static Field minutiae(int count, boolean oneOutside) {
    Random random = new Random(12);
    List<Subfield> subfields = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      boolean outside = oneOutside && i == count;
      int x = outside ? OUTSIDE : 100 + random.nextInt(1900);
      String place = "%04d%04d%03d".formatted(x, 100 + random.nextInt(1900), random.nextInt(360));
      ByteRange range = new ByteRange(20 * i, 14);
      subfields.add(new Subfield(List.of(new Item("" + i, range), new Item(place, range)), range));
    }
    ByteRange whole = new ByteRange(0, 20 * count);
    return new Field(new FieldNumber(9, 12), "9.012", whole, whole, subfields);
  }

  private static List<String> places(Field field) {
    return field.subfields().stream().map(subfield -> subfield.text(2)).toList();
  }

  private static List<String> shuffled(Field field, Set<Integer> displaced) {
    Map<Item, String> changed =
        new FeatureShuffle(MINUTIA, new Random(7)).shuffled(field, displaced);
    return field.subfields().stream()
        .map(subfield -> changed.get(subfield.items().get(1)))
        .toList();
  }

  @Test
  void noMinutiaIsWhereOneWas() {
    Field field = minutiae(MINUTIAE, false);
    Set<String> before = new HashSet<>();
    places(field).forEach(place -> before.add(place.substring(0, 8)));
    List<String> after = shuffled(field, Set.of());
    assertEquals(MINUTIAE, after.size());
    long same = after.stream().filter(place -> before.contains(place.substring(0, 8))).count();
    assertEquals(0, same);
  }

  @Test
  void allMinutiaeStayWithinTheBoundsTheyHad() {
    for (String place : shuffled(minutiae(MINUTIAE, false), Set.of())) {
      assertEquals(11, place.length());
      assertTrue(Integer.parseInt(place.substring(0, 4)) < 2000, place);
      assertTrue(Integer.parseInt(place.substring(4, 8)) < 2000, place);
      assertTrue(Integer.parseInt(place.substring(8)) < 360, place);
    }
  }

  @Test
  void whatWasFoundOutsideStaysOutsideAndAloneThere() {
    List<String> after = shuffled(minutiae(MINUTIAE, true), Set.of(MINUTIAE));
    for (int i = 1; i <= MINUTIAE; i++) {
      boolean outside = Integer.parseInt(after.get(i - 1).substring(0, 4)) > 2000;
      assertEquals(i == MINUTIAE, outside, i + ": " + after.get(i - 1));
    }
  }

  @Test
  void aSingleMinutiaIsMovedToo() {
    Field field = minutiae(1, false);
    assertNotEquals(places(field), shuffled(field, Set.of()));
  }

  private static final int SEEDS = 300;

  /** Seeds that follow each other begin alike. */
  private static final long FAR_APART = 7_919_000_017_011L;

  /** A field whose subfields have these items. */
  private static Field field(FeaturePoints points, List<List<String>> subfields) {
    ByteRange range = new ByteRange(0, 0);
    return new Field(
        points.field(),
        points.field().toString(),
        range,
        range,
        subfields.stream()
            .map(
                items ->
                    new Subfield(items.stream().map(text -> new Item(text, range)).toList(), range))
            .toList());
  }

  /** The items after a shuffle; the same where they do not change. */
  private static List<List<String>> after(FeaturePoints points, Field field, int seed) {
    Map<Item, String> changed =
        new FeatureShuffle(points, new Random(FAR_APART * seed)).shuffled(field, Set.of());
    return field.subfields().stream()
        .map(
            subfield ->
                subfield.items().stream()
                    .map(item -> changed.getOrDefault(item, item.text()))
                    .toList())
        .toList();
  }

  private static Field packed(String... places) {
    List<List<String>> subfields = new ArrayList<>();
    for (int i = 0; i < places.length; i++) {
      subfields.add(List.of("M" + i, places[i]));
    }
    return field(MINUTIA, subfields);
  }

  /** A part of the item with the place, of each minutia. */
  private static List<Integer> part(Field field, int seed, int from, int to) {
    return after(MINUTIA, field, seed).stream()
        .map(items -> Integer.parseInt(items.get(1).substring(from, to)))
        .toList();
  }

  @Test
  void directionsAreDealtOutAmongFourOrMoreMinutiae() {
    Field field = packed("10001000011", "20001000022", "30001000033", "40001000044");
    Set<List<Integer>> orders = new HashSet<>();
    for (int seed = 0; seed < SEEDS; seed++) {
      List<Integer> directions = part(field, seed, 8, 11);
      assertEquals(Set.of(11, 22, 33, 44), Set.copyOf(directions));
      orders.add(directions);
    }
    assertEquals(24, orders.size());
  }

  @Test
  void coordinatesAreDealtOutAndMovedByAtMostFortyUnitsWithinTheirBounds() {
    Field field = packed("10001000011", "20001000022", "30001000033", "40001000044");
    Set<Integer> seen = new HashSet<>();
    Set<Integer> atFirst = new HashSet<>();
    for (int seed = 0; seed < 3000; seed++) {
      List<Integer> across = part(field, seed, 0, 4);
      seen.addAll(across);
      atFirst.add((across.get(0) + 500) / 1000);
      assertEquals(List.of(1000, 1000, 1000, 1000), part(field, seed, 4, 8));
    }
    Set<Integer> possible = new HashSet<>();
    for (int moved = -40; moved <= 40; moved++) {
      possible.add(Math.max(1000, 1000 + moved));
      possible.add(2000 + moved);
      possible.add(3000 + moved);
      possible.add(Math.min(4000, 4000 + moved));
    }
    assertEquals(possible, seen);
    assertEquals(Set.of(1, 2, 3, 4), atFirst);
  }

  @Test
  void ofFewMinutiaeEachNumberShrinksByUpToAHalf() {
    Field field = packed("10002000300");
    Set<Integer> seen = new HashSet<>();
    for (int seed = 0; seed < 3000; seed++) {
      int across = part(field, seed, 0, 4).get(0);
      int down = part(field, seed, 4, 8).get(0);
      int direction = part(field, seed, 8, 11).get(0);
      assertTrue(across > 500 && across <= 1000, across + "");
      assertTrue(down > 1000 && down <= 2000, down + "");
      assertTrue(direction > 150 && direction <= 300, direction + "");
      seen.add(across);
    }
    assertTrue(seen.size() > 450, seen.size() + "");
  }

  @Test
  void threeMinutiaeAreFew() {
    Field field = packed("10001000100", "10001000100", "10001000100");
    Set<Integer> directions = new HashSet<>();
    for (int seed = 0; seed < SEEDS; seed++) {
      directions.addAll(part(field, seed, 8, 11));
    }
    assertTrue(directions.size() > 45, directions.toString());
  }

  @Test
  void aPlaceOfEightDigitsHasNoDirection() {
    FeaturePoints core = points(new FieldNumber(9, 8));
    Field field = field(core, List.of(List.of("10002000")));
    for (int seed = 0; seed < SEEDS; seed++) {
      Map<Item, String> changed =
          new FeatureShuffle(core, new Random(FAR_APART * seed)).shuffled(field, Set.of());
      String place = changed.get(field.subfields().get(0).items().get(0));
      assertTrue(place.matches("(0[5-9][0-9]{2}|1000)(1[0-9]{3}|2000)"), place);
    }
  }

  @Test
  void whatIsNoPlaceIsLeftToOthers() {
    for (String text : List.of("1000200", "1000200A", "", "1000200:", "1000/000")) {
      Field field = packed(text);
      assertEquals(
          Map.of(), new FeatureShuffle(MINUTIA, new Random(1)).shuffled(field, Set.of()), text);
    }
    assertEquals(1, changes(packed("100020000300")));
    assertEquals(0, changes(packed("1000200003000")));
  }

  private static int changes(Field field) {
    return new FeatureShuffle(MINUTIA, new Random(1)).shuffled(field, Set.of()).size();
  }

  @Test
  void aPairOfItemsIsDealtOutEachByItself() {
    FeaturePoints pairs = points(new FieldNumber(9, 137));
    List<List<String>> minutiae = new ArrayList<>();
    for (int i = 1; i <= 4; i++) {
      minutiae.add(List.of("00" + i, i + "00", "0" + i + "50", "7" + i, "1"));
    }
    Field field = field(pairs, minutiae);
    Set<List<String>> across = new HashSet<>();
    Set<List<String>> down = new HashSet<>();
    for (int seed = 0; seed < SEEDS; seed++) {
      List<List<String>> after = after(pairs, field, seed);
      for (int i = 0; i < 4; i++) {
        List<String> items = after.get(i);
        assertEquals("00" + (i + 1), items.get(0));
        assertTrue(items.get(1).matches("[1-4][0-9]{2}"), items.get(1));
        assertTrue(items.get(2).matches("0[1-4][0-9]{2}"), items.get(2));
        assertEquals(List.of("7" + (i + 1), "1"), items.subList(3, 5));
      }
      across.add(after.stream().map(items -> items.get(1)).toList());
      down.add(after.stream().map(items -> items.get(2)).toList());
    }
    assertTrue(across.size() > 250 && down.size() > 250);
  }

  @Test
  void ofAPairTheItemThatIsNoNumberStays() {
    FeaturePoints pairs = points(new FieldNumber(9, 137));
    Field field = field(pairs, List.of(List.of("001", "ADA", "1000", "90")));
    List<String> after = after(pairs, field, 3).get(0);
    assertEquals("ADA", after.get(1));
    assertNotEquals("1000", after.get(2));
  }
}
