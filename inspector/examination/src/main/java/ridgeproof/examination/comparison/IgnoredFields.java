package ridgeproof.examination.comparison;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import ridgeproof.spec.layout.FieldNumber;

/**
 * Fields whose differences are told but do not count. The length of a record, {@code LEN}, follows
 * from its other fields and can be ignored in every record at once.
 */
public record IgnoredFields(boolean lengths, Set<FieldNumber> fields) {

  /** Lengths, contents, date and time, control number and control reference. */
  public static final String STANDARD = "LEN,1.003,1.005,1.009,1.010,1.014";

  private static final String LENGTHS = "LEN";
  private static final int LENGTH_FIELD = 1;

  public IgnoredFields {
    fields = Set.copyOf(fields);
  }

  /**
   * Reads field numbers and {@code LEN}, separated by commas; empty text ignores nothing.
   *
   * @throws IllegalArgumentException for anything else
   */
  public static IgnoredFields parse(String text) {
    boolean lengths = false;
    Set<FieldNumber> fields = new LinkedHashSet<>();
    for (String word : text.split(",")) {
      String name = word.strip();
      if (name.equals(LENGTHS)) {
        lengths = true;
      } else if (!name.isEmpty()) {
        fields.add(FieldNumber.parse(name));
      }
    }
    return new IgnoredFields(lengths, fields);
  }

  /** As they are asked for: {@code LEN} first, then the numbers in their order. */
  public List<String> names() {
    Stream<String> numbers = fields.stream().sorted().map(FieldNumber::toString);
    return Stream.concat(lengths ? Stream.of(LENGTHS) : Stream.empty(), numbers).toList();
  }

  public boolean contains(FieldNumber number) {
    return lengths && number.field() == LENGTH_FIELD || fields.contains(number);
  }
}
