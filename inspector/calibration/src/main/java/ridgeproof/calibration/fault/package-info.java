/**
 * Examines every file of the fault catalogue and counts how it fared: named first, flooded by other
 * findings, misattributed to another fault, or missed. What counts as first, new and other is said
 * in {@link ridgeproof.calibration.fault.FaultTrial}.
 */
package ridgeproof.calibration.fault;
