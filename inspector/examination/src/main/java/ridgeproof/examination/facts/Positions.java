package ridgeproof.examination.facts;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.Code;

/** What the code tables say of friction ridge positions and impression types. */
public final class Positions {

  private static final int FINGERS = 10;
  private static final int BOTH_THUMBS = 15;

  private final SpecTables tables;

  public Positions(SpecTables tables) {
    this.tables = tables;
  }

  /**
   * {@code rolled}, {@code plain}, {@code slap}, ...; empty text for a position that is no finger.
   */
  public String kind(int position) {
    return finger(position).map(code -> code.property("kind")).orElse("");
  }

  /** The single fingers, 1 to 10, that a position shows. */
  public List<Integer> fingers(int position) {
    return finger(position).map(code -> code.property("fingers")).filter(s -> !s.isEmpty()).stream()
        .flatMap(text -> Arrays.stream(text.split(" ")))
        .map(Integer::parseInt)
        .toList();
  }

  /** The codes with commas between. */
  public static String listed(Collection<Integer> positions) {
    return positions.stream().map(String::valueOf).collect(Collectors.joining(", "));
  }

  /** Whether it stands for a finger beyond the five of a hand. */
  public boolean isExtraDigit(int position) {
    return kind(position).equals("extra");
  }

  /** {@code right}, {@code left}, {@code both} or {@code unknown}; empty text for no position. */
  public String hand(int position) {
    for (String table : List.of("finger-positions", "palm-positions", "plantar-positions")) {
      Optional<Code> code = tables.codes(table).find(Integer.toString(position));
      if (code.isPresent()) {
        return code.get().property("hand");
      }
    }
    return "";
  }

  /** Whether these are the two thumbs and nothing else. */
  public boolean isThumbs(Set<Integer> fingers) {
    return fingers.equals(Set.copyOf(fingers(BOTH_THUMBS)));
  }

  /** Whether these are all fingers of one hand, but for those that are declared missing. */
  public boolean isWholeHand(Set<Integer> fingers, IntPredicate declared) {
    String hand = hand(fingers.iterator().next());
    return IntStream.rangeClosed(1, FINGERS)
        .filter(finger -> hand(finger).equals(hand) && !declared.test(finger))
        .allMatch(fingers::contains);
  }

  /** Whether it leaves open neither the hand nor the part of it. */
  public boolean isNamed(int position) {
    return !hand(position).isEmpty() && !hand(position).equals("unknown");
  }

  /** {@code rolled}, {@code plain}, {@code latent}, ...; empty text where it is not known. */
  public String impressionKind(OptionalInt impression) {
    return impression.isEmpty()
        ? ""
        : tables
            .codes("impressions")
            .find(Integer.toString(impression.getAsInt()))
            .map(code -> code.property("kind"))
            .orElse("");
  }

  /** Whether a print was found, and not laid down for the record. */
  public boolean isTrace(OptionalInt impression) {
    return impressionKind(impression).equals("latent");
  }

  private Optional<Code> finger(int position) {
    return tables.codes("finger-positions").find(Integer.toString(position));
  }
}
