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
}
