package ridgeproof.examination.comparison;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import ridgeproof.spec.layout.FieldNumber;

/**
 * Fields whose differences are told but do not count. The length of a record, {@code LEN}, follows
 * from its other fields, and its number, {@code IDC}, from the order of export: both can be ignored
 * in every record at once.
 */
public record IgnoredFields(boolean lengths, boolean idcs, Set<FieldNumber> fields) {

  /** Lengths, numbers, contents, date and time, control number and control reference. */
  public static final String STANDARD = "LEN,IDC,1.003,1.005,1.009,1.010,1.014";

  private static final String LENGTHS = "LEN";
  private static final String IDCS = "IDC";
  private static final int LENGTH_FIELD = 1;
  private static final int IDC_FIELD = 2;
  private static final int HEADER = 1;

  public IgnoredFields {
    fields = Set.copyOf(fields);
  }

  /**
   * Reads field numbers, {@code LEN} and {@code IDC}, separated by commas; empty text ignores
   * nothing.
   *
   * @throws IllegalArgumentException for anything else
   */
  public static IgnoredFields parse(String text) {
    boolean lengths = false;
    boolean idcs = false;
    Set<FieldNumber> fields = new LinkedHashSet<>();
    for (String word : text.split(",")) {
      String name = word.strip();
      if (name.equals(LENGTHS)) {
        lengths = true;
      } else if (name.equals(IDCS)) {
        idcs = true;
      } else if (!name.isEmpty()) {
        fields.add(FieldNumber.parse(name));
      }
    }
    return new IgnoredFields(lengths, idcs, fields);
  }

  /** As they are asked for: {@code LEN} and {@code IDC} first, then the numbers in their order. */
  public List<String> names() {
    Stream<String> numbers = fields.stream().sorted().map(FieldNumber::toString);
    Stream<String> words =
        Stream.concat(
            lengths ? Stream.of(LENGTHS) : Stream.empty(), idcs ? Stream.of(IDCS) : Stream.empty());
    return Stream.concat(words, numbers).toList();
  }

  public boolean contains(FieldNumber number) {
    return lengths && number.field() == LENGTH_FIELD
        || idcs && number.field() == IDC_FIELD && number.recordType() != HEADER
        || fields.contains(number);
  }
}
