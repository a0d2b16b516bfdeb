package ridgeproof.spec.agency;

/**
 * A rule that a profile made laxer than published.
 *
 * @param published what is published: a severity or a limit, in words
 * @param now what the profile made of it
 */
public record RelaxedRule(String ruleId, String published, String now) {}
