package ridgeproof.examination.cause.transport;

import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;

/**
 * What happened to the bytes of a file.
 *
 * @param ruleId the row of the catalogue that reports it
 * @param undone the file as it was before; empty where that cannot be had
 * @param exact whether what was undone is the original byte for byte
 * @param reach which images it touched
 * @param alone the findings that it explains, where that is not shown by what was undone
 */
public record TransportDamage(
    String ruleId,
    Location location,
    Observed observed,
    String required,
    Optional<Reading> undone,
    boolean exact,
    Reach reach,
    Optional<Consequences> alone) {

  /** Which images were touched: all of them, or those of records with these ordinals. */
  public record Reach(boolean all, Set<Integer> records) {

    static final Reach EVERY_IMAGE = new Reach(true, Set.of());
    static final Reach NO_IMAGE = new Reach(false, Set.of());

    static Reach only(Set<Integer> records) {
      return new Reach(false, Set.copyOf(records));
    }

    public boolean touches(int record) {
      return all || records.contains(record);
    }
  }

  /** Damage of the whole file that was undone. */
  static TransportDamage undone(
      String ruleId, String observed, String required, Reading undone, boolean exact) {
    return new TransportDamage(
        ruleId,
        Location.file(),
        Observed.of(observed),
        required,
        Optional.of(undone),
        exact,
        Reach.EVERY_IMAGE,
        Optional.empty());
  }

  /** Damage of the whole file that cannot be undone. */
  static TransportDamage lasting(
      String ruleId, String observed, String required, Consequences alone) {
    return new TransportDamage(
        ruleId,
        Location.file(),
        Observed.of(observed),
        required,
        Optional.empty(),
        false,
        Reach.EVERY_IMAGE,
        Optional.of(alone));
  }

  /** Another file in place of the transaction, or around it: nothing else can be said of it. */
  static TransportDamage instead(String ruleId, String observed, String required) {
    return lasting(ruleId, observed, required, Consequences.all());
  }
}
