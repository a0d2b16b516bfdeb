/**
 * Synthetic and reference prints with what is measured of them. In: seeds or files. Out: one row of
 * measures for each print.
 */
package ridgeproof.calibration.print;
