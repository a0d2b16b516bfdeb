/**
 * How natural synthetic prints are. In: clean synthetic cards. Out: distributions beside published
 * figures.
 */
package ridgeproof.calibration.statistics;
