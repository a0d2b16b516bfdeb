/**
 * Fits the limits that ridge measures are held against, and tells how well defects are found with
 * them. Prints are drawn by the corpus, stored and read back as a file would have them; those that
 * limits are fitted on and those that they are judged by never meet ({@link
 * ridgeproof.calibration.print.Split}). Tells also how natural drawn prints are.
 */
package ridgeproof.calibration;
