package ridgeproof.ledger;

import java.util.OptionalInt;
import ridgeproof.spec.rule.Severity;

/**
 * A finding without its values.
 *
 * @param finger friction ridge position code, where it is about a print
 * @param field such as {@code 2.022}, where it is about a field; else empty text
 */
public record EntryFinding(String rule, Severity severity, OptionalInt finger, String field) {}
