package ridgeproof.finding;

/**
 * The cause that a finding is only a consequence of.
 *
 * @param ruleId the rule that reports the cause
 * @param location where the cause is reported
 */
public record CausedBy(String ruleId, Location location) {}
