package ridgeproof.transaction.xml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ridgeproof.spec.xml.XmlForm;
import ridgeproof.spec.xml.XmlRow;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.Subfield;

/** A subfield while its elements come in. */
final class SubfieldBuilder {

  /** More parts of one item than any repetition brings within the limits. */
  private static final long PARTS = 100;

  private record Part(String text, String before, ByteRange range) {}

  private final TreeMap<Integer, TreeMap<Long, Part>> items = new TreeMap<>();
  private final Map<Integer, Integer> repetitions = new HashMap<>();
  private boolean onlyBeside = true;

  /**
   * Adds a value.
   *
   * @param repeated the element that makes more items; 0 without one
   * @return whether there was room for it
   */
  boolean add(XmlRow row, int repeated, String text, ByteRange range) {
    int repetition = repeated == 0 ? 0 : repetition(repeated);
    int item = row.item() + (row.part() > 0 ? 0 : repetition * row.period());
    long place = row.part() == 0 ? 0 : repetition * PARTS + row.part();
    TreeMap<Long, Part> parts = items.computeIfAbsent(item, key -> new TreeMap<>());
    Part there = parts.get(place);
    if (there != null && row.form() != XmlForm.Plain.LIST) {
      return false;
    }
    parts.put(
        place,
        there == null
            ? new Part(text, row.before(), range)
            : new Part(there.text() + "," + text, row.before(), spanning(there.range(), range)));
    onlyBeside &= row.use() == XmlRow.Use.WITH_OTHERS;
    return true;
  }

  private int repetition(int element) {
    return repetitions.computeIfAbsent(element, key -> repetitions.size());
  }

  /** Whether it holds nothing but what counts only beside other values. */
  boolean isOnlyBeside() {
    return onlyBeside;
  }

  Subfield build() {
    List<Item> built = new ArrayList<>();
    ByteRange whole = null;
    for (Map.Entry<Integer, TreeMap<Long, Part>> entry : items.entrySet()) {
      Item item = item(entry.getValue());
      while (built.size() < entry.getKey() - 1) {
        built.add(new Item("", new ByteRange(item.range().offset(), 0)));
      }
      built.add(item);
      whole = whole == null ? item.range() : spanning(whole, item.range());
    }
    return new Subfield(built, whole);
  }

  private static Item item(TreeMap<Long, Part> parts) {
    StringBuilder text = new StringBuilder();
    ByteRange range = null;
    for (Part part : parts.values()) {
      if (!part.text().isEmpty()) {
        text.append(text.length() == 0 ? "" : part.before()).append(part.text());
      }
      range = range == null ? part.range() : spanning(range, part.range());
    }
    return new Item(text.toString(), range);
  }

  static ByteRange spanning(ByteRange first, ByteRange second) {
    return ByteRange.between(
        Math.min(first.offset(), second.offset()), Math.max(first.end(), second.end()));
  }
}
