/**
 * How well defects and exchanged fingers are found on synthetic cards. In: labelled cards and what
 * an examination finds in them. Out: the rates of the detection report.
 */
package ridgeproof.calibration.evaluation;
