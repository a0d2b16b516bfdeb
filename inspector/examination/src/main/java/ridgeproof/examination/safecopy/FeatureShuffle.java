package ridgeproof.examination.safecopy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import ridgeproof.spec.consistency.FeaturePoints;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.Subfield;

/**
 * Takes the places of features apart: X, Y and direction are dealt out anew, each by itself, and
 * moved a little within the bounds that they had. What lies where it cannot is dealt out among its
 * like, so that it still does.
 */
final class FeatureShuffle {

  private static final int PACKED_COORDINATE = 4;
  private static final int MOVED_AT_MOST = 40;
  private static final int FEW = 4;

  private final FeaturePoints points;
  private final Random random;

  FeatureShuffle(FeaturePoints points, Random random) {
    this.points = points;
    this.random = random;
  }

  /** Digits of an item that state one number. */
  private record Part(Item item, int from, int to, boolean coordinate) {
    String digits() {
      return item.text().substring(from, to);
    }
  }

  /**
   * The items that change, with their new text; items that are no coordinates are not among them.
   *
   * @param displaced subfields, from 1, that a finding stands at
   */
  Map<Item, String> shuffled(Field field, Set<Integer> displaced) {
    Map<List<Object>, List<Part>> groups = new HashMap<>();
    List<List<Object>> order = new ArrayList<>();
    for (int i = 1; i <= field.subfields().size(); i++) {
      int kind = 0;
      for (Part part : parts(field.subfields().get(i - 1))) {
        List<Object> group = List.of(displaced.contains(i), kind++, part.to() - part.from());
        if (!groups.containsKey(group)) {
          order.add(group);
        }
        groups.computeIfAbsent(group, key -> new ArrayList<>()).add(part);
      }
    }
    Map<Item, String> changed = new HashMap<>();
    order.forEach(group -> deal(groups.get(group), changed));
    return changed;
  }

  private List<Part> parts(Subfield subfield) {
    List<Part> parts = new ArrayList<>();
    int first = points.firstItem();
    if (!points.packed()) {
      for (int number = first; number <= first + 1; number++) {
        whole(subfield, number, parts);
      }
    } else if (isDigits(subfield.text(first)) && subfield.text(first).length() >= 8) {
      Item item = subfield.items().get(first - 1);
      int end = item.text().length();
      parts.add(new Part(item, 0, PACKED_COORDINATE, true));
      parts.add(new Part(item, PACKED_COORDINATE, 2 * PACKED_COORDINATE, true));
      if (end > 2 * PACKED_COORDINATE) {
        parts.add(new Part(item, 2 * PACKED_COORDINATE, end, false));
      }
    }
    return parts;
  }

  private static void whole(Subfield subfield, int number, List<Part> parts) {
    String text = subfield.text(number);
    if (isDigits(text)) {
      parts.add(new Part(subfield.items().get(number - 1), 0, text.length(), true));
    }
  }

  private static boolean isDigits(String text) {
    return !text.isEmpty()
        && text.length() <= 12
        && text.chars().allMatch(c -> c >= '0' && c <= '9');
  }

  private void deal(List<Part> parts, Map<Item, String> changed) {
    List<Long> numbers = new ArrayList<>();
    parts.forEach(part -> numbers.add(Long.parseLong(part.digits())));
    long least = Collections.min(numbers);
    long most = Collections.max(numbers);
    boolean few = parts.size() < FEW;
    Collections.shuffle(numbers, random);
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      int width = part.to() - part.from();
      long number = numbers.get(i);
      if (few) {
        number -= (long) (random.nextDouble() * number / 2);
      } else if (part.coordinate()) {
        number += random.nextInt(2 * MOVED_AT_MOST + 1) - MOVED_AT_MOST;
        number = Math.max(least, Math.min(most, number));
      }
      String digits = fitted(number, width);
      String before = changed.getOrDefault(part.item(), part.item().text());
      changed.put(
          part.item(), before.substring(0, part.from()) + digits + before.substring(part.to()));
    }
  }

  private static String fitted(long number, int width) {
    String digits = Long.toString(number);
    return "0".repeat(Math.max(0, width - digits.length())) + digits;
  }
}
