/**
 * What no file may do, whatever it holds: throw, hang, or take memory beyond the limits. Each class
 * is one target of the coverage-guided fuzzer Jazzer; in the usual build the inputs beside them,
 * seeds and what once failed, are run as plain tests.
 */
package ridgeproof.fuzz;
