/**
 * What the desk keeps while it is open: the files that were dropped, how far each is examined, and
 * how much memory all of them may take.
 *
 * <p>In: names and bytes. Out: rows, each with a number that grows with every change, so that a
 * page can ask what has changed since. Nothing here is written to disk.
 */
package ridgeproof.desk.work;
