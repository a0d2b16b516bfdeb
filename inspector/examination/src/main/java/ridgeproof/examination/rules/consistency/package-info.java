/**
 * Rules over what records have to agree in: links, segments, quality fields, features. In: the
 * records and the tables of what belongs together. Out: findings.
 */
package ridgeproof.examination.rules.consistency;
