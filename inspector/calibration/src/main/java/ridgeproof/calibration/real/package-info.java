/**
 * Real prints of public sets, alone and put together into cards. In: folders of images outside the
 * project. Out: numbers only; no picture is kept.
 */
package ridgeproof.calibration.real;
