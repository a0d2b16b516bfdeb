/**
 * Many files with labels, and the commands that write them. In: numbers and seeds. Out: a folder of
 * transactions and a table of what is wrong with each.
 */
package ridgeproof.corpus.batch;
