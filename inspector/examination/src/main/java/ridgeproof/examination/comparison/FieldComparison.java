package ridgeproof.examination.comparison;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Stream;
import ridgeproof.finding.Quantity;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

/** Compares the fields of two records; image data is compared elsewhere. */
final class FieldComparison {

  private final LogicalRecord inFirst;
  private final LogicalRecord inSecond;
  private final IgnoredFields ignored;
  private final boolean images;
  private final List<ValueDifference> differences = new ArrayList<>();

  private FieldComparison(
      LogicalRecord first, LogicalRecord second, IgnoredFields ignored, boolean images) {
    this.inFirst = first;
    this.inSecond = second;
    this.ignored = ignored;
    this.images = images;
  }

  /**
   * @param images whether the first data of each record is an image
   */
  static List<ValueDifference> of(
      LogicalRecord first, LogicalRecord second, IgnoredFields ignored, boolean images) {
    FieldComparison comparison = new FieldComparison(first, second, ignored, images);
    Map<FieldNumber, List<Field>> left = byNumber(first);
    Map<FieldNumber, List<Field>> right = byNumber(second);
    TreeSet<FieldNumber> numbers = new TreeSet<>(left.keySet());
    numbers.addAll(right.keySet());
    for (FieldNumber number : numbers) {
      comparison.compare(
          number, left.getOrDefault(number, List.of()), right.getOrDefault(number, List.of()));
    }
    return List.copyOf(comparison.differences);
  }

  private static Map<FieldNumber, List<Field>> byNumber(LogicalRecord record) {
    Map<FieldNumber, List<Field>> fields = new LinkedHashMap<>();
    for (Field field : record.fields()) {
      fields.computeIfAbsent(field.number(), key -> new ArrayList<>()).add(field);
    }
    return fields;
  }

  private void compare(FieldNumber number, List<Field> first, List<Field> second) {
    for (int i = 0; i < Math.max(first.size(), second.size()); i++) {
      if (i >= second.size()) {
        add(number, Text.of(first.get(i)), null);
      } else if (i >= first.size()) {
        add(number, null, Text.of(second.get(i)));
      } else if (first.get(i).isData() != second.get(i).isData()) {
        add(number, Text.of(first.get(i)), Text.of(second.get(i)));
      } else if (first.get(i).isData()) {
        data(number, first.get(i), second.get(i));
      } else {
        subfields(number, first.get(i).subfields(), second.get(i).subfields());
      }
    }
  }

  private void data(FieldNumber number, Field first, Field second) {
    boolean image = images && first == dataOf(inFirst) && second == dataOf(inSecond);
    boolean same = inFirst.dataOf(first).hasSameBytes(inSecond.dataOf(second));
    if (!image && !same) {
      add(number, Text.of(first), new Text(second.value().length() + " other bytes of data", 0));
    }
  }

  private static Field dataOf(LogicalRecord record) {
    return record.fields().stream().filter(Field::isData).findFirst().orElse(null);
  }

  /**
   * Subfields the same at the beginning and at the end are set aside, so that one more shows as
   * one.
   */
  private void subfields(FieldNumber number, List<Subfield> first, List<Subfield> second) {
    int start = 0;
    int least = Math.min(first.size(), second.size());
    while (start < least && same(first.get(start), second.get(start))) {
      start++;
    }
    int end = 0;
    while (end < least - start
        && same(first.get(first.size() - 1 - end), second.get(second.size() - 1 - end))) {
      end++;
    }
    for (int i = start; i < Math.max(first.size(), second.size()) - end; i++) {
      boolean inFirst = i < first.size() - end;
      boolean inSecond = i < second.size() - end;
      boolean alone = first.size() == 1 && second.size() == 1;
      OptionalInt place = alone ? OptionalInt.empty() : OptionalInt.of(i + 1);
      if (inFirst && inSecond) {
        items(number, place, first.get(i), second.get(i));
      } else {
        add(
            number,
            place,
            OptionalInt.empty(),
            inFirst ? Text.of(first.get(i)) : null,
            inSecond ? Text.of(second.get(i)) : null);
      }
    }
  }

  private void items(FieldNumber number, OptionalInt place, Subfield first, Subfield second) {
    int most = Math.max(first.items().size(), second.items().size());
    for (int item = 1; item <= most; item++) {
      String left = item <= first.items().size() ? first.text(item) : null;
      String right = item <= second.items().size() ? second.text(item) : null;
      if (left == null || !left.equals(right)) {
        add(
            number,
            place,
            most == 1 ? OptionalInt.empty() : OptionalInt.of(item),
            left == null ? null : new Text(left, item),
            right == null ? null : new Text(right, item));
      }
    }
  }

  private static boolean same(Subfield first, Subfield second) {
    return texts(first).equals(texts(second));
  }

  private static List<String> texts(Subfield subfield) {
    return subfield.items().stream().map(Item::text).toList();
  }

  /**
   * What a field, subfield or item says.
   *
   * @param items the highest number of an item in it; 0 where it only says how long data is
   */
  private record Text(String text, int items) {

    static Text of(Subfield subfield) {
      return new Text(String.join(" | ", texts(subfield)), subfield.items().size());
    }

    static Text of(Field field) {
      if (field.isData()) {
        return new Text(Quantity.of(field.value().length(), "byte") + " of data", 0);
      }
      List<Text> parts = field.subfields().stream().map(Text::of).toList();
      return new Text(
          String.join(" || ", parts.stream().map(Text::text).toList()),
          parts.stream().mapToInt(Text::items).max().orElse(0));
    }
  }

  private void add(FieldNumber number, Text first, Text second) {
    add(number, OptionalInt.empty(), OptionalInt.empty(), first, second);
  }

  private void add(
      FieldNumber number, OptionalInt subfield, OptionalInt item, Text first, Text second) {
    differences.add(
        new ValueDifference(
            number,
            subfield,
            item,
            Optional.ofNullable(first).map(Text::text),
            Optional.ofNullable(second).map(Text::text),
            Stream.of(first, second).filter(Objects::nonNull).mapToInt(Text::items).max().orElse(0),
            ignored.contains(number)));
  }
}
