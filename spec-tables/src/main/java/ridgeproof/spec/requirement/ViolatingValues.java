package ridgeproof.spec.requirement;

import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.CharacterType;
import ridgeproof.spec.layout.FieldRow;

/**
 * Values that break one requirement of a row and none that is checked before it: characters, then
 * length, then the values themselves.
 */
public final class ViolatingValues {

  private static final String PROBES = "09415AZazBmQqY-+. !~";
  private static final String FOREIGN = "!A1-\t\u0001";
  private static final int MAX_TRIED = 24;

  private final SpecTables tables;

  public ViolatingValues(SpecTables tables) {
    this.tables = tables;
  }

  /** A character that the type excludes and that is no separator. */
  public Optional<Character> foreignCharacter(CharacterType type) {
    return FOREIGN
        .chars()
        .mapToObj(c -> (char) c)
        .filter(c -> !type.allows(String.valueOf(c)))
        .findFirst();
  }

  /** A value with allowed characters, one shorter than the row asks. */
  public Optional<String> tooShort(FieldRow row) {
    int length = row.minLength().orElse(0) - 1;
    return length < 1 ? Optional.empty() : Optional.of(filler(row.characters()).repeat(length));
  }

  /** A value with allowed characters, one longer than the row asks. */
  public Optional<String> tooLong(FieldRow row) {
    return row.maxLength().isEmpty()
        ? Optional.empty()
        : Optional.of(filler(row.characters()).repeat(row.maxLength().getAsInt() + 1));
  }

  /** A value with allowed characters and length that is none of the allowed ones. */
  public Optional<String> refused(FieldRow row, int version) {
    return row.values().isEmpty()
        ? Optional.empty()
        : candidates(row)
            .filter(text -> row.characters().allows(text))
            .filter(
                text ->
                    !row.values()
                        .get()
                        .matches(
                            text,
                            (table, code) -> tables.codes(table).find(code, version).isPresent()))
            .findFirst();
  }

  /** A number of so many bytes that the row does not allow. */
  public Optional<Long> refusedNumber(FieldRow row, int version) {
    long most = (1L << 8 * Math.min(4, row.bytes().orElse(1))) - 1;
    return Stream.concat(
            IntStream.rangeClosed(0, 255).mapToObj(Long::valueOf), Stream.of(most - 1, most))
        .filter(
            number ->
                row.values()
                    .filter(
                        rule ->
                            !rule.matches(
                                Long.toString(number),
                                (table, code) ->
                                    tables.codes(table).find(code, version).isPresent()))
                    .isPresent())
        .findFirst();
  }

  private static Stream<String> candidates(FieldRow row) {
    int least = Math.max(1, row.minLength().orElse(1));
    int most = Math.min(row.maxLength().orElse(MAX_TRIED), Math.max(least, MAX_TRIED));
    return IntStream.rangeClosed(least, most)
        .boxed()
        .flatMap(length -> PROBES.chars().mapToObj(c -> String.valueOf((char) c).repeat(length)));
  }

  private static String filler(CharacterType type) {
    return Stream.of("1", "A").filter(type::allows).findFirst().orElse("-");
  }
}
