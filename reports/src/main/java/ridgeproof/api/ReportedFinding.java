package ridgeproof.api;

import java.util.Optional;

/**
 * One finding.
 *
 * @param id of the rule, such as RP-FLD-008; an id keeps its meaning and is never used again
 * @param title of the rule
 * @param finger the print that it is about or in whose record it is; empty elsewhere
 * @param found what the file has; masked where it is personal data
 * @param required what the source of the rule requires
 * @param text why it matters
 * @param remedy what to do next
 * @param count at how many places the same fault is, at least 1; {@code place} is the first
 */
public record ReportedFinding(
    String id,
    FindingSeverity severity,
    String title,
    FindingPlace place,
    Optional<PrintPosition> finger,
    String found,
    String required,
    String text,
    String remedy,
    int count) {}
