/**
 * Rules over the type of transaction: what it needs, allows and lacks. In: positions, missing
 * fingers and the needs of the type. Out: findings on the whole set.
 */
package ridgeproof.examination.rules.transaction;
