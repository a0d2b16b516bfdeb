package ridgeproof.transaction.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.Separator;
import ridgeproof.transaction.record.Subfield;

/** Splits the value of a text field into subfields and items, and decodes their characters. */
final class TextValue {

  private final ParseContext context;

  TextValue(ParseContext context) {
    this.context = context;
  }

  /**
   * Reads a value.
   *
   * @param end the first position after it
   */
  List<Subfield> read(int start, int end, Location place) {
    List<Subfield> subfields = new ArrayList<>();
    Optional<Integer> odd = Optional.empty();
    int subfieldStart = start;
    List<Item> items = new ArrayList<>();
    int itemStart = start;
    for (int i = start; i <= end; i++) {
      int value = i == end ? Separator.RS : context.source.byteAt(i);
      if (value != Separator.US && value != Separator.RS) {
        if (odd.isEmpty() && isControl(value)) {
          odd = Optional.of(i);
        }
        continue;
      }
      if (!context.admitItem()) {
        break;
      }
      byte[] bytes = bytes(itemStart, i);
      if (odd.isEmpty() && !context.encoding().admits(bytes)) {
        odd = Optional.of(firstHigh(itemStart));
      }
      items.add(new Item(context.encoding().decode(bytes), context.absolute(itemStart, i)));
      itemStart = i + 1;
      if (value == Separator.RS) {
        subfields.add(new Subfield(items, context.absolute(subfieldStart, i)));
        items = new ArrayList<>();
        subfieldStart = i + 1;
      }
    }
    odd.ifPresent(position -> reportOdd(position, place));
    if (subfields.isEmpty()) {
      subfields.add(
          new Subfield(
              List.of(new Item("", context.absolute(start, start))),
              context.absolute(start, start)));
    }
    return subfields;
  }

  private byte[] bytes(int from, int to) {
    byte[] bytes = new byte[to - from];
    for (int i = from; i < to; i++) {
      bytes[i - from] = (byte) context.source.byteAt(i);
    }
    return bytes;
  }

  /** The first byte that is not ASCII, in an item that has one. */
  private int firstHigh(int from) {
    int i = from;
    while (context.source.byteAt(i) < 0x80) {
      i++;
    }
    return i;
  }

  private static boolean isControl(int value) {
    return value < 0x20 && value != '\t' && value != '\n' && value != '\r' || value == 0x7F;
  }

  private void reportOdd(int position, Location place) {
    context.log.add(
        "RP-STR-019",
        place.at(context.absolute(position, position + 1)),
        Observed.of(String.format(Locale.ROOT, "byte 0x%02X", context.source.byteAt(position))),
        switch (context.encoding()) {
          case ASCII -> "7-bit ASCII characters";
          case LATIN_1 -> "ISO-8859-1 characters";
          case UTF_8 -> "UTF-8 characters";
        });
  }
}
