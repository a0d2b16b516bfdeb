/** The catalogue of rules, their severities, and how each row is known. */
package ridgeproof.spec.rule;
