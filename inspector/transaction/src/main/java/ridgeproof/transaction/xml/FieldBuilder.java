package ridgeproof.transaction.xml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.xml.XmlRow;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.Subfield;

/** A field while its elements come in, in any order. */
final class FieldBuilder {

  private final FieldNumber number;
  private final Map<Integer, SubfieldBuilder> open = new HashMap<>();
  private final List<SubfieldBuilder> subfields = new ArrayList<>();
  private ByteRange range;

  FieldBuilder(FieldNumber number) {
    this.number = number;
  }

  /**
   * Adds a value.
   *
   * @param subfield the element that makes a subfield; negative without one
   * @param repeated the element that makes more items; 0 without one
   * @param value the bytes of the text
   * @param element the bytes from the start of its tag to the end of its end tag
   */
  void add(
      XmlRow row, int subfield, int repeated, String text, ByteRange value, ByteRange element) {
    SubfieldBuilder current = open.computeIfAbsent(subfield, key -> begin());
    if (!current.add(row, repeated, text, value)) {
      current = begin();
      open.put(subfield, current);
      current.add(row, repeated, text, value);
    }
    range = range == null ? element : SubfieldBuilder.spanning(range, element);
  }

  private SubfieldBuilder begin() {
    SubfieldBuilder subfield = new SubfieldBuilder();
    subfields.add(subfield);
    return subfield;
  }

  /**
   * The field; none where it holds nothing but what counts only beside other values.
   *
   * @param tag the number as records of the type write it
   * @param least how many subfields a record of the type has in any case
   * @param filler what fills those that the file leaves out
   */
  Optional<Field> build(String tag, int least, String filler) {
    List<Subfield> built =
        new ArrayList<>(
            subfields.stream()
                .filter(subfield -> !subfield.isOnlyBeside())
                .map(SubfieldBuilder::build)
                .toList());
    if (built.isEmpty()) {
      return Optional.empty();
    }
    ByteRange value =
        SubfieldBuilder.spanning(built.get(0).range(), built.get(built.size() - 1).range());
    while (built.size() < least) {
      ByteRange end = new ByteRange(value.end(), 0);
      built.add(new Subfield(List.of(new Item(filler, end)), end));
    }
    return Optional.of(new Field(number, tag, range, value, built));
  }
}
