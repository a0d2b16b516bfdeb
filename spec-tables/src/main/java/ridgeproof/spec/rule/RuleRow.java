package ridgeproof.spec.rule;

import ridgeproof.spec.table.Source;

/**
 * One row of the catalogue: what a finding of this rule says.
 *
 * @param id stable, {@code RP-STR-007}
 * @param title a few words
 * @param explanation why it matters
 * @param remedy what to do next, in the imperative
 */
public record RuleRow(
    String id, Severity severity, String title, String explanation, String remedy, Source source) {

  /** How a print was captured, which decides what helps. */
  public enum Capture {
    /** Rolled on a platen. */
    ROLLED,
    /** One finger pressed on a platen. */
    PLAIN,
    /** Several fingers pressed on a platen together. */
    SLAP,
    /** Inked on a card, which was scanned. */
    CARD
  }

  /** The area within the id: {@code STR}, {@code FLD}, ... */
  public String area() {
    return id.substring(3, 6);
  }
}
