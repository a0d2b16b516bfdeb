package ridgeproof.transaction.record;

import java.util.List;

/** A subfield: one repetition of a field, with its information items in order. */
public record Subfield(List<Item> items, ByteRange range) {

  public Subfield {
    items = List.copyOf(items);
  }

  /**
   * The text of an item, empty where the subfield has fewer items.
   *
   * @param number counted from 1
   */
  public String text(int number) {
    return number <= items.size() ? items.get(number - 1).text() : "";
  }
}
