/**
 * Compares the tables with published lists, row by row and both ways. The lists and messages are
 * read from {@code shared/} beside the project; what differs on purpose is listed in {@code
 * published/differences.csv} with the reason.
 */
package ridgeproof.spec.published;
