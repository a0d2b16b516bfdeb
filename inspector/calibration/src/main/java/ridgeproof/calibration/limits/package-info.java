/**
 * Files that state or hold far more than a transaction does, in no more than two megabytes, and
 * what their examination costs. In: nothing; out: a table of processor time.
 */
package ridgeproof.calibration.limits;
