/**
 * Rules over codestreams and gray levels. In: headers, pixel statistics and limits. Out: findings.
 */
package ridgeproof.examination.rules.image;
