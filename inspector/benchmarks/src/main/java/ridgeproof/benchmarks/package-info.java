/**
 * JMH benchmarks and the steps of one card. In: reference and synthetic files. Out: times and
 * shares in one run; never a part of a test.
 */
package ridgeproof.benchmarks;
