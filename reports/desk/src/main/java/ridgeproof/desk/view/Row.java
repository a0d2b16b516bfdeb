package ridgeproof.desk.view;

import java.util.Optional;

/**
 * A line of the list.
 *
 * @param state in lower case, as the style sheet has it
 * @param verdict in words and as the style sheet has it; empty until it is there
 * @param step what to do first, or what is going on
 * @param facts type of transaction, control number, station
 * @param arrived in UTC, ISO 8601; the page shows it by the clock of the machine
 * @param report whether there is one to open
 */
public record Row(
    String id,
    String name,
    String state,
    Optional<String> verdict,
    String step,
    String facts,
    String arrived,
    boolean report) {}
