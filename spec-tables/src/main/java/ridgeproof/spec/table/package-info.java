/**
 * Reads CSV resources. In: text. Out: rows that name file, line and column of a cell that cannot be
 * used.
 */
package ridgeproof.spec.table;
