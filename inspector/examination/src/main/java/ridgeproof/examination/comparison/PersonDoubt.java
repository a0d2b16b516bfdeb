package ridgeproof.examination.comparison;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.consistency.IdentityField;
import ridgeproof.spec.layout.FieldNumber;

/**
 * Prints and biographic data that do not go together: the files may be of two people.
 *
 * @param fingers how many fingers it rests on
 * @param changed fields that tell who the subject is and that differ
 */
public record PersonDoubt(Kind kind, int fingers, List<FieldNumber> changed) {

  /** What does not go together. */
  public enum Kind {
    /** The prints are of the same fingers, and the biographic data differs. */
    SAME_PRINTS_OTHER_DATA,
    /** None of the prints match, and the biographic data is the same. */
    OTHER_PRINTS_SAME_DATA,
    /** None of the prints match, and the biographic data differs. */
    OTHER_PRINTS_OTHER_DATA
  }

  private static final String FINGERS_THAT_TELL = "unlike-fingers";

  public PersonDoubt {
    changed = List.copyOf(changed);
  }

  static Optional<PersonDoubt> of(
      FindingsReport first, FindingsReport second, List<RecordPair> pairs) {
    SpecTables tables = first.tables();
    List<FieldNumber> fields = tables.identityFields().stream().map(IdentityField::field).toList();
    List<FieldNumber> told =
        fields.stream()
            .filter(f -> value(first, f).isPresent() && value(second, f).isPresent())
            .toList();
    List<FieldNumber> changed =
        told.stream().filter(f -> !value(first, f).equals(value(second, f))).toList();
    int same = (int) pairs.stream().mapToLong(PersonDoubt::sameFingers).sum();
    int unlike = (int) fingers(pairs, PrintComparison.Reason.NOT_ALIKE).distinct().count();
    if (same > 0) {
      return changed.isEmpty()
          ? Optional.empty()
          : Optional.of(new PersonDoubt(Kind.SAME_PRINTS_OTHER_DATA, same, changed));
    }
    boolean strangers = unlike >= tables.pixelLimits().value(FINGERS_THAT_TELL);
    if (!strangers || told.isEmpty()) {
      return Optional.empty();
    }
    Kind kind = changed.isEmpty() ? Kind.OTHER_PRINTS_SAME_DATA : Kind.OTHER_PRINTS_OTHER_DATA;
    return Optional.of(new PersonDoubt(kind, unlike, changed));
  }

  private static long sameFingers(RecordPair pair) {
    boolean capture = pair.level().filter(ImageLevel::isSameCapture).isPresent();
    return capture && pair.showsFingers()
        ? 1
        : fingers(List.of(pair), PrintComparison.Reason.ALIKE).count();
  }

  private static Stream<Object> fingers(List<RecordPair> pairs, PrintComparison.Reason reason) {
    return pairs.stream()
        .flatMap(pair -> pair.fingers().stream())
        .flatMap(found -> found.prints().stream())
        .filter(print -> print.reason() == reason)
        .map(PrintComparison::finger);
  }

  private static Optional<String> value(FindingsReport report, FieldNumber field) {
    return report.transaction().recordsOfType(field.recordType()).stream()
        .flatMap(record -> record.text(field.field()).stream())
        .map(String::strip)
        .filter(text -> !text.isEmpty())
        .findFirst();
  }
}
