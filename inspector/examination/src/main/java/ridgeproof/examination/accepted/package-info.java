/**
 * Deviations that an agency accepts for a while.
 *
 * <p>In: the profile of the agency, the day and the transaction. Out: findings as the agency judges
 * them, and what was accepted in this file, to be listed in every report.
 */
package ridgeproof.examination.accepted;
