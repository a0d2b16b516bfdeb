/**
 * A finding, its place and what was observed. In: what a reader, rule or cause says. Out: findings
 * whose severity and source come from the rule catalogue.
 */
package ridgeproof.finding;
