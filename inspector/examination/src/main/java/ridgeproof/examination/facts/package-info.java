/**
 * What is known of a file before rules run: images, pixels, ridges, positions, missing fingers. In:
 * a transaction and the budget. Out: the input of every rule.
 */
package ridgeproof.examination.facts;
