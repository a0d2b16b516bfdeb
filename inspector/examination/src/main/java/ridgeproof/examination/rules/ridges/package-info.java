/**
 * Rules over ridges, slaps and the sequence of fingers. In: measures and limits. Out: findings on
 * single fingers.
 */
package ridgeproof.examination.rules.ridges;
